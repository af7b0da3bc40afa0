import type { EdgingKind } from "../../quantities/edgingKinds";
import { workOf } from "../../quantities/edgingWork";
import type { Layout } from "../layout";
import type { Run } from "../runs";
import {
  CUT_DASHES,
  edgeColor,
  edgingOfLayout,
  isWithoutEdging,
  jointsDrawn,
  secondOfLayout,
  spikeMark,
  stakeMark,
} from "./borderPart";
import { edgings } from "./describe";
import type { Block } from "./flow";
import type { Pen } from "./pen";
import { textWidth } from "./pen";
import { element } from "./svg";

const MARK_WIDTH = 26;

interface Entry {
  readonly words: string;
  /** The mark, drawn round a point. */
  readonly mark: (x: number, y: number) => string;
}

/**
 * What the marks mean: only those that the drawing has.
 *
 * @param scale pixels a foot.
 */
export function legend(pen: Pen, layout: Layout, scale: number, left: number, top: number, width: number): Block {
  const entries = entriesOf(pen, layout, scale);
  const cell = Math.max(...entries.map(({ words }) => textWidth(words, pen.size))) + MARK_WIDTH + 12;
  const columns = Math.max(1, Math.floor(width / cell));
  const step = pen.size * 1.6;
  const drawn = entries.map(({ words, mark }, i) => {
    const x = left + (i % columns) * (width / columns);
    const y = top + (Math.floor(i / columns) + 0.5) * step;
    const text = pen.text(words, { x: x + MARK_WIDTH, y }, { size: pen.size, color: pen.colors.ink, anchor: "start" });
    return mark(x + MARK_WIDTH / 2 - 2, y) + text;
  });
  return { svg: element("g", {}, ...drawn), height: Math.ceil(entries.length / columns) * step };
}

function entriesOf(pen: Pen, layout: Layout, scale: number): Entry[] {
  const { ink, paper, soft, fabric, otherFabric } = pen.colors;
  const swatch = (fill: string, dashes?: string) => (x: number, y: number) =>
    element("rect", {
      x: x - 9,
      y: y - 4.5,
      width: 18,
      height: 9,
      fill,
      stroke: soft,
      "stroke-width": 0.8,
      "stroke-dasharray": dashes,
    });
  const twoTones = (x: number, y: number) =>
    swatch(fabric)(x, y) +
    element("rect", { x, y: y - 4.5, width: 9, height: 9, fill: otherFabric, stroke: soft, "stroke-width": 0.8 });
  const number = (x: number, y: number) =>
    element("circle", { cx: x, cy: y, r: pen.size * 0.65, fill: paper, stroke: ink }) +
    pen.text("1", { x, y }, { size: pen.size * 0.92, color: ink, bold: true });
  const edgeMark = (one: Layout) => {
    const color = edgeColor(pen, one.isSecond);
    const band = (x: number, y: number) =>
      pen.line({ x: x - 9, y }, { x: x + 9, y }, color, 4) + pen.line({ x, y: y - 3 }, { x, y: y + 3 }, paper, 2);
    const units = (x: number, y: number) =>
      pen.line({ x: x - 9, y }, { x: x + 9, y }, color, 4) +
      [-4.5, 0, 4.5].map((by) => pen.line({ x: x + by, y: y - 2 }, { x: x + by, y: y + 2 }, paper, 0.8)).join("");
    const cut = (x: number, y: number) =>
      element("path", { d: `M${x - 10} ${y}h20`, stroke: color, "stroke-width": 2, "stroke-dasharray": CUT_DASHES });
    return { band, units, cut, none: band }[edgingOfLayout(one).drawn];
  };
  const drawn = edgings(layout);
  const fastenedSo = (how: EdgingKind["fastened"]) => drawn.filter((one) => edgingOfLayout(one).fastened === how);
  const second = secondOfLayout(layout);
  const isOpen = ({ border }: Run, side: number) => !border && !second?.outline.ring.runs[side]?.border;
  const hasOpenSide =
    isWithoutEdging(layout) && !second ? false : layout.outline.ring.runs.some(isOpen) || drawn.length === 0;
  const all: (Entry | false)[] = [
    layout.cuts.length > 0 && { words: "fabric strips", mark: twoTones },
    layout.cuts.length > 0 && { words: "cut number", mark: number },
    (layout.seams.length > 0 || layout.counts.endLaps > 0) && {
      words: "overlap, pinned down the middle",
      mark: swatch(`url(#${pen.part("overlap")})`, "4 2"),
    },
    layout.pins.length > 0 && {
      words: "pin",
      mark: (x, y) => element("circle", { cx: x, cy: y, r: 1.8, fill: ink }),
    },
    ...drawn.map((one) => ({ words: edgeWords(one, scale), mark: edgeMark(one) })),
    fastenedSo("along").length > 0 && { words: "stake", mark: (x, y) => stakeMark({ x, y }, false, ink, paper) },
    fastenedSo("each").length > 0 && { words: "spike", mark: (x, y) => spikeMark({ x, y }, ink, paper) },
    fastenedSo("along").some(({ border }) => border.some(({ joints }) => joints.length > 0)) && {
      words: "stake through a joint",
      mark: (x, y) => stakeMark({ x, y }, true, ink, paper),
    },
    hasOpenSide && { words: openSideWords(layout), mark: swatch(`url(#${pen.part("wall")})`) },
    layout.outline.cutOuts.length > 0 && { words: "cut-out", mark: swatch(paper) },
  ];
  return all.filter((entry) => entry !== false);
}

/** What the edge is; where the joints of pavers would run together, how many of them are drawn. */
function edgeWords(layout: Layout, scale: number): string {
  const kind = edgingOfLayout(layout);
  const { edge } = workOf(kind);
  if (kind.drawn !== "units") return edge;
  const every = jointsDrawn(layout, scale);
  return every > 1 ? `${edge}, 1 joint of ${every} drawn` : `${edge}, each drawn`;
}

/** What the hatched band stands for. */
function openSideWords({ bed, border }: Layout): string {
  if (border.length === 0) return "bed edge";
  if (bed.borderSides) return "no edging";
  return bed.kind === "rectangle" ? "house side, no edging" : "base line, no edging";
}
