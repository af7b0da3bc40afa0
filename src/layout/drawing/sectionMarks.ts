import type { EdgingKind } from "../../quantities/edgingKinds";
import { workOf } from "../../quantities/edgingWork";
import { must } from "../../quantities/must";
import type { Point } from "../plane";
import type { SectionView } from "./drawSection";
import { textWidth } from "./pen";
import { element } from "./svg";
import { depthTaped } from "./words";

/** What the edge is, in the word that there is room for: edging, pavers, timber, edge. */
const shortly = (edging: EdgingKind) => must(workOf(edging).called.toLowerCase().split(" ").at(-1));

interface Depth {
  readonly words: string;
  readonly from: number;
  readonly to: number;
}

/** Names of the layers, and the depths: border and scrape on the left, what is in the bed on the right. */
export function depthMarks(view: SectionView): string {
  const { levels, left, right, pen, depths } = view;
  const { edging } = depths;
  const called = shortly(edging);
  const edge: Depth[] = edging.lines.edging
    ? [
        { words: called, from: levels.top, to: levels.base },
        { words: "sand", from: levels.base, to: levels.foot },
      ]
    : [];
  const inBed: Depth[] = [
    { words: "gap", from: levels.top, to: levels.stone },
    { words: "stone", from: levels.stone, to: levels.floor },
    { words: edging.drawn === "cut" ? "cut" : "trench", from: levels.floor, to: levels.foot },
  ];
  return element(
    "g",
    {},
    column(view, edge, left - pen.size * 0.9, "end", left),
    scrape(view),
    column(view, inBed, right + pen.size * 0.9, "start", right),
    names(view),
  );
}

/** The scrape: measured in the lawn, named below it, where there is room. */
function scrape({ pen, levels, left, y, bottom, depths }: SectionView): string {
  if (depths.scrapeDepthIn === 0) return "";
  const { ink, soft } = pen.colors;
  const x = left + pen.size * 0.9;
  const [top, floor] = [y(0), y(levels.floor)];
  const tick = (at: number) => pen.line({ x: x - 3, y: at + 3 }, { x: x + 3, y: at - 3 }, ink, 1.2);
  const level = bottom + pen.size;
  return (
    pen.line({ x: left, y: floor }, { x: x + 4, y: floor }, soft, 0.8) +
    pen.line({ x, y: top }, { x, y: level - pen.size * 0.6 }, ink, 0.9) +
    tick(top) +
    tick(floor) +
    pen.text(
      wordsOf({ words: "scrape", from: 0, to: levels.floor }),
      { x: left, y: level },
      {
        size: pen.size,
        color: ink,
        anchor: "start",
      },
    )
  );
}

const wordsOf = ({ words, from, to }: Depth): string => `${words} ${depthTaped(Math.abs(from - to))}`;

/** Depths under one another, each with its words beside it, moved apart where they would touch. */
function column(view: SectionView, depths: readonly Depth[], x: number, anchor: "start" | "end", from: number): string {
  const { pen, y } = view;
  const { soft, ink } = pen.colors;
  const away = anchor === "start" ? 1 : -1;
  let lowest = Number.NEGATIVE_INFINITY;
  return depths
    .filter((depth) => Math.abs(depth.from - depth.to) > 1e-9)
    .map((depth) => {
      const [top, bottom] = [y(depth.from), y(depth.to)];
      const middle = (top + bottom) / 2;
      const level = Math.max(middle, lowest + pen.size * 1.25);
      lowest = level;
      const tick = (at: number) => pen.line({ x: x - 3, y: at + 3 }, { x: x + 3, y: at - 3 }, ink, 1.2);
      const text = wordsOf(depth);
      return element(
        "g",
        {},
        pen.line({ x: from, y: top }, { x: x + 4 * away, y: top }, soft, 0.5),
        pen.line({ x: from, y: bottom }, { x: x + 4 * away, y: bottom }, soft, 0.5),
        pen.line({ x, y: top }, { x, y: bottom }, ink, 0.9),
        tick(top),
        tick(bottom),
        level === middle ? "" : pen.line({ x, y: middle }, { x: x + 7 * away, y: level }, soft, 0.6),
        pen.text(text, { x: x + 9 * away, y: level }, { size: pen.size, color: ink, anchor, halo: true }),
      );
    })
    .join("");
}

/** The layers by name, each with a line to it. */
function names(view: SectionView): string {
  const { pen, levels, left, right, borderX, borderWide, y, bottom, depths, scale } = view;
  const { ink } = pen.colors;
  const { edging } = depths;
  const called = shortly(edging);
  // Clear of the word over the lawn.
  const besideLawn = (left + borderX + textWidth("lawn", pen.size) + textWidth(called, pen.size)) / 2 + 4;
  const over = pen.size * 0.8;
  const named = (words: string, at: Point, to: Point) =>
    pen.line(at, to, ink, 0.7) +
    element("circle", { cx: to.x, cy: to.y, r: 1.6, fill: ink }) +
    pen.text(words, at, { size: pen.size, color: ink, halo: true });
  const inBed = right - (right - borderX) * 0.35;
  return (
    pen.text("lawn", { x: (left + borderX) / 2, y: y(0) - pen.size * 1.4 }, { size: pen.size, color: ink }) +
    (edging.drawn === "none"
      ? ""
      : named(
          called,
          { x: Math.max(borderX + scale, besideLawn), y: over },
          { x: borderX + borderWide / 2, y: y(levels.top) + 5 },
        )) +
    named("stone", { x: inBed, y: over }, { x: inBed, y: (y(levels.stone) + y(levels.floor)) / 2 }) +
    (depths.hasFabric ? named("fabric", { x: inBed, y: bottom + pen.size }, { x: inBed, y: y(levels.floor) }) : "")
  );
}
