import type { Point } from "../plane";
import { type Palette, paletteOf, type Theme } from "./palette";
import { element, escaped, short } from "./svg";

export const FONT_FAMILY = "Arial, Helvetica, 'Liberation Sans', sans-serif";

/** How wide text is, for a typeface of the family above: characters by width, as shares of the font size. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[ijlI.,:;'|!·]/, 0.26],
  [/["()frt\-/ ]/, 0.36],
  [/[mwMW@%]/, 0.87],
  [/[A-Z&]/, 0.7],
];
const USUAL_WIDTH = 0.56;

export const textWidth = (text: string, size: number): number =>
  [...text].reduce((sum, character) => sum + (WIDTHS.find(([kind]) => kind.test(character))?.[1] ?? USUAL_WIDTH), 0) *
  size;

export interface TextStyle {
  readonly size: number;
  readonly color: string;
  readonly anchor?: "start" | "middle" | "end";
  readonly bold?: boolean;
  /** Degrees clockwise, round the place of the text. */
  readonly turn?: number;
  /** A rim in the color of the paper, so that lines below do not run into the letters. */
  readonly halo?: boolean;
}

/** Draws on one sheet: knows its colors, its text sizes, and the id that sets its parts apart from other drawings. */
export class Pen {
  readonly colors: Palette;

  constructor(
    readonly id: string,
    readonly theme: Theme,
    /** Size of ordinary text; second things are a little smaller. */
    readonly size: number,
  ) {
    this.colors = paletteOf(theme);
  }

  /** Text with the middle of its height at the point. */
  text(content: string, at: Point, style: TextStyle): string {
    const { size, color, anchor = "middle", bold, turn, halo } = style;
    return element(
      "text",
      {
        x: at.x,
        y: at.y + size * 0.36,
        "font-size": size,
        fill: color,
        "text-anchor": anchor === "start" ? undefined : anchor,
        "font-weight": bold ? "bold" : undefined,
        transform: turn ? `rotate(${short(turn)} ${short(at.x)} ${short(at.y)})` : undefined,
        ...(halo
          ? { stroke: this.colors.paper, "stroke-width": 3, "stroke-linejoin": "round", "paint-order": "stroke" }
          : {}),
      },
      escaped(content),
    );
  }

  line(from: Point, to: Point, color: string, width: number, dashes?: string): string {
    return element("path", {
      d: `M${short(from.x)} ${short(from.y)}L${short(to.x)} ${short(to.y)}`,
      stroke: color,
      "stroke-width": width,
      "stroke-dasharray": dashes,
    });
  }

  /** The id of a part that others refer to. */
  part(name: string): string {
    return `${this.id}-${name}`;
  }
}

/** Path data through points; closed for a ring. */
export const pathThrough = (points: readonly Point[], closed: boolean): string =>
  points.map(({ x, y }, i) => `${i === 0 ? "M" : "L"}${short(x)} ${short(y)}`).join("") + (closed ? "Z" : "");
