import { drawPlan } from "../layout/drawing/drawPlan";
import { type Depths, drawSection } from "../layout/drawing/drawSection";
import type { Layout } from "../layout/layout";
import { planOfEstimate } from "../layout/planOfEstimate";
import { type Bed, readForm } from "../quantities/bed/read";
import { inFormWords } from "../quantities/bed/words";
import { edgingKindOf } from "../quantities/edgingKinds";
import { cutsOfBed } from "../quantities/job/cutsOfBed";
import type { JobOrder } from "../quantities/job/order";
import type { BlockForm } from "../workbook/drawing/drawing";
import type { Picture } from "../workbook/drawing/picture";
import { WorkbookFailure } from "../workbook/failure";
import { type Drawn, pngOf } from "./png";

/*
 * This file and what it draws with are fetched when a drawing is first wanted: the add-in's first load stays small.
 */

const PRINT_WIDTH = 720;
/** The long side of a page that is as wide: the pages of the crew's sheet are about 7.3 in by 9.4 in. */
const PRINT_LENGTH = 920;
const POINTS_PER_PIXEL = 72 / 96;

/** Plan and cross-section of a bed, to show in the pane. */
export function paneDrawings(bed: Bed, plan: Layout, name: string, widthPx: number) {
  return {
    plan: drawPlan(plan, { widthPx, title: name || "The bed in plan", id: "pane-plan", canPick: true }),
    section: drawSection(depthsOf(bed), { widthPx, title: "Section at the edge", id: "pane-section" }),
  };
}

/**
 * Plan and cross-section on one sheet, as a picture of print quality.
 *
 * @throws WorkbookFailure where the block's inputs make no bed that can be drawn.
 */
export async function printPicture(form: BlockForm): Promise<Picture> {
  const { bed, problems } = readForm(form);
  if (!bed) throw new WorkbookFailure(`Can't draw this estimate. ${inFormWords(problems[0]?.message ?? "")}`);
  const layout = planOfEstimate(bed);
  if (!layout) throw new WorkbookFailure("Only this bed's area is known, so there's no plan to draw.");
  const options = { widthPx: PRINT_WIDTH, theme: "light" } as const;
  const title = form.name || "The bed in plan";
  const plan = drawPlan(layout, { ...options, title, id: "print-plan" });
  const section = drawSection(depthsOf(bed), { ...options, title: "Section at the edge", id: "print-section" });
  const { png, width, height }: Drawn = await pngOf([plan, section]);
  return {
    png,
    widthPoints: width * POINTS_PER_PIXEL,
    heightPoints: height * POINTS_PER_PIXEL,
    altText: [plan, section].map(descriptionOf).join(" "),
  };
}

/**
 * Each bed in plan, for the crew's sheet, cut as the order of all beds together cuts it; a bed of which only the area is
 * known has no drawing. A long bed is drawn along the long side of the page, where that makes it larger.
 *
 * @param beds by the names that the order has for them.
 */
export async function crewDrawings(
  beds: readonly { readonly name: string; readonly plan: Layout | undefined }[],
  order: JobOrder,
): Promise<{ readonly bed: string; readonly png: string; readonly altText: string }[]> {
  const drawn = beds.flatMap(({ name, plan }, index) => {
    if (!plan) return [];
    const options = { theme: "light", title: name, id: `crew-${index}`, ordered: cutsOfBed(order, name) } as const;
    const draw = (widthPx: number) => drawPlan(plan, { ...options, widthPx });
    const along = draw(PRINT_LENGTH);
    const isLong = heightOf(along) <= PRINT_WIDTH;
    return [{ name, svg: isLong ? along : draw(PRINT_WIDTH), isLong }];
  });
  return Promise.all(
    drawn.map(async ({ name, svg, isLong }) => {
      const { png } = await pngOf([svg], isLong);
      return { bed: name, png, altText: descriptionOf(svg) };
    }),
  );
}

function heightOf(svg: string): number {
  return Number(/^<svg[^>]* height="([\d.]+)"/.exec(svg)?.[1]);
}

function depthsOf({ numbers: n, names }: Bed): Depths {
  return {
    edging: edgingKindOf(names.edgingKind),
    hasFabric: n.fabricLayers > 0,
    sandDepthIn: n.sandDepth,
    scrapeDepthIn: n.scrapeDepth,
    borderHeightIn: n.borderHeight,
    trenchDepthIn: n.trenchDepth,
    trenchWidthIn: n.trenchWidth,
    topGapIn: n.topGap,
    stoneSizeIn: n.stoneSize,
  };
}

/** What a drawing says of itself for those who do not see it. */
function descriptionOf(svg: string): string {
  const parsed = new DOMParser().parseFromString(svg, "image/svg+xml");
  return `${parsed.querySelector("title")?.textContent}: ${parsed.querySelector("desc")?.textContent}`;
}
