import type { OrderedCuts } from "../../quantities/job/cutsOfBed";
import type { Layout } from "../layout";
import { fabricShapes } from "../shapes";
import { borderMarks, borderPart, borderRound, pieceNames, secondOfLayout } from "./borderPart";
import { cutOutNames, cutOutPart } from "./cutOutPart";
import { describePlan } from "./describe";
import { cutNumbers, fabricPart, pinPart } from "./fabricPart";
import { type Block, paragraphs } from "./flow";
import { LabelBoard } from "./labels";
import { legend } from "./legend";
import { marginsFor, measures } from "./measures";
import { notesBelow } from "./notesBelow";
import type { Theme } from "./palette";
import { Pen, pathThrough } from "./pen";
import { picks } from "./picks";
import { scaleBar } from "./scaleBar";
import { type DrawingOptions, PAGE_WIDTH_PX, sheet, textSizeFor } from "./sheet";
import { element, short } from "./svg";
import { type PlanView, projection } from "./view";

/** The plan is at most this many times as high as the sheet is wide: on a page the lists below have to fit too. */
const MOST_HEIGHT = { pane: 1.1, page: 0.75 };
const EDGE = 8;

/**
 * The plan of a bed that was laid out, to scale: outline with its measurements, strips with overlaps hatched and the
 * numbers of the cuts, pins, border pieces with joints and stakes, cut-outs, a scale bar, a legend, and below it the
 * lengths to cut.
 *
 * @param given from `layOutBed`.
 * @param options width in pixels to be shown at (350 in the pane, 720 for a page), theme, title, and an id.
 * @returns SVG as text: self-contained, with a title and a description for those who do not see it.
 * @example drawPlan(layOutBed(bed, roll), { widthPx: 720, theme: "light", title: "Front bed" })
 */
export function drawPlan(given: Layout, options: DrawingOptions = {}): string {
  const {
    widthPx = 350,
    theme = "auto" satisfies Theme,
    title = "Bed in plan",
    id = "bed-plan",
    ordered,
    canPick = false,
  } = options;
  // Which piece off the order's rolls lies in which layer is up to the crew.
  const layout = ordered && given.layers === undefined ? offRollsOf(given, ordered) : given;
  const pen = new Pen(id, theme, textSizeFor(widthPx));
  const mostHeight = widthPx < PAGE_WIDTH_PX ? MOST_HEIGHT.pane : MOST_HEIGHT.page;
  const placed = projection(layout, widthPx, marginsFor(layout, pen, widthPx), widthPx * mostHeight);
  const labels = new LabelBoard({ width: widthPx, height: placed.height });
  const view = { layout, pen, labels, ...placed };
  const { svg: plan, letters } = planOf(view);

  const width = widthPx - 2 * EDGE;
  const parts: string[] = [];
  let top = EDGE;
  const add = ({ svg, height }: Block, gap: number) => {
    parts.push(svg);
    top += height + gap;
  };
  const { sqFt = 0 } = layout.notDrawn ?? {};
  const less = sqFt > 0 ? `, ${sqFt.toFixed(1)} of it other areas, which aren't drawn` : "";
  const area = `${layout.areaSqFt.toFixed(1)} sq ft${less}`;
  if (!canPick) add(paragraphs(pen, [{ heading: title, items: [area] }], EDGE, top, width), 0);
  const picked = canPick ? picks(view) : "";
  add(
    { svg: element("g", { transform: `translate(0 ${short(top)})` }, plan, picked), height: placed.height },
    pen.size * 0.6,
  );
  add(scaleBar(pen, placed.scale, EDGE + 4, top, width / 3), pen.size * 0.8);
  add(legend(pen, layout, placed.scale, EDGE, top, width), pen.size * 0.8);
  add(paragraphs(pen, notesBelow(layout, letters, ordered), EDGE, top, width), EDGE);
  return sheet(pen, { width: widthPx, height: top, title, description: describePlan(layout) }, parts);
}

/** The same bed with its strips cut from the rolls that the order shares among beds, so with its laps where those end. */
function offRollsOf(layout: Layout, { fabric }: OrderedCuts): Layout {
  const cuts = layout.cuts.map((cut) => {
    const own = fabric.filter(({ part }) => part === cut.number);
    let startsAtFt = 0;
    const pieces = own.map(({ stock = 0, lengthFt }) => {
      const piece = { roll: stock, startsAtFt, lengthFt };
      startsAtFt += lengthFt - layout.rules.endLapFt;
      return piece;
    });
    return own.length > 0 ? { ...cut, pieces } : cut;
  });
  const endLaps = cuts.reduce((sum, { pieces }) => sum + pieces.length - 1, 0);
  return { ...layout, cuts, counts: { ...layout.counts, endLaps } };
}

/** The drawing proper. Words are placed after the marks, where the marks leave room for them; the bed is drawn over its border. */
function planOf(view: PlanView): { svg: string; letters: readonly (string | undefined)[] } {
  const { layout, pen, at, labels, scale } = view;
  const shapes = fabricShapes(layout);
  const radius = Math.min(2, Math.max(0.9, scale * 0.11));
  for (const pin of layout.pins) labels.avoid({ center: at(pin), width: 2 * radius, height: 2 * radius });
  const outline = element("path", {
    d: pathThrough(layout.outline.ring.points.map(at), true),
    stroke: pen.colors.ink,
    "stroke-width": 1.3,
  });
  const border = borderPart(view);
  const second = secondOfLayout(layout);
  const marks = borderMarks(view) + (second ? borderMarks({ ...view, layout: second }) : "");
  const measured = measures(view);
  const names = cutOutNames(view);
  const numbers = cutNumbers(view, shapes);
  const parts = [
    border,
    fabricPart(view, shapes),
    measured,
    cutOutPart(view),
    borderRound(view),
    outline,
    marks,
    names.svg,
    numbers,
    pieceNames(view),
    // Over every word, so that each can be counted where there was no room beside them.
    pinPart(view, radius),
  ];
  return { svg: element("g", { fill: "none" }, ...parts), letters: names.letters };
}
