import type { OrderedCuts } from "../../quantities/job/cutsOfBed";
import type { Theme } from "./palette";
import { themeStyle } from "./palette";
import { FONT_FAMILY, type Pen } from "./pen";
import { element, escaped } from "./svg";

export interface DrawingOptions {
  /** Width in pixels at which it will be shown, at least 300: 350 in the pane, 720 on a letter page [350]. */
  readonly widthPx?: number;
  /** "auto" follows the screen, light or dark; a print is "light" [auto]. */
  readonly theme?: Theme;
  /** The bed's name. */
  readonly title?: string;
  /** What the order of the whole job cuts this bed's pieces and strips from [the bed's own rolls and pieces]. */
  readonly ordered?: OrderedCuts;
  /** Has sides and corners that can be clicked, and no heading: what is around it names the bed [false]. */
  readonly canPick?: boolean;
  /** Sets the parts of this drawing apart from those of others on the same page. */
  readonly id?: string;
}

/** Text sizes that stay legible: in a pane, and on paper at 96 pixels an inch, where this is nine points. */
export const textSizeFor = (widthPx: number): number => (widthPx < PAGE_WIDTH_PX ? 11 : 12);

/** From this width on a sheet is laid out as a page. */
export const PAGE_WIDTH_PX = 500;

/** The sheet round the parts of a drawing: size, paper, hatches, and what it shows in words. */
export function sheet(
  pen: Pen,
  about: { readonly width: number; readonly height: number; readonly title: string; readonly description: string },
  parts: readonly string[],
): string {
  const [width, height] = [Math.ceil(about.width), Math.ceil(about.height)];
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      id: pen.id,
      role: "img",
      "aria-labelledby": `${pen.part("title")} ${pen.part("description")}`,
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      "font-family": FONT_FAMILY,
    },
    element("title", { id: pen.part("title") }, escaped(about.title)),
    element("desc", { id: pen.part("description") }, escaped(about.description)),
    themeStyle(pen.theme, pen.id),
    element(
      "defs",
      {},
      hatch(pen.part("overlap"), 45, 4, pen.colors.soft, 1),
      hatch(pen.part("wall"), -45, 4.5, pen.colors.ink, 1.2),
    ),
    element("rect", { width, height, fill: pen.colors.paper }),
    ...parts,
  );
}

function hatch(id: string, degrees: number, step: number, stroke: string, width: number): string {
  return element(
    "pattern",
    { id, width: step, height: step, patternUnits: "userSpaceOnUse", patternTransform: `rotate(${degrees})` },
    element("path", { d: `M0 0V${step}`, stroke, "stroke-width": width }),
  );
}
