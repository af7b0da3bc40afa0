import { must } from "../../quantities/must";
import type { OutlineCutOut } from "../outline";
import { boundsOf, type Point } from "../plane";
import { pathThrough, textWidth } from "./pen";
import { element } from "./svg";
import type { PlanView } from "./view";
import { coordinate, taped } from "./words";

/** What stays free: bare paper in a strong line. */
export function cutOutPart({ layout, pen, at }: PlanView): string {
  const { paper, ink } = pen.colors;
  return element(
    "g",
    { fill: paper, stroke: ink, "stroke-width": 1.3 },
    ...layout.outline.cutOuts.map(({ ring }) => element("path", { d: pathThrough(ring.points.map(at), true) })),
  );
}

/**
 * The name of each cut-out in it, where it fits in one line or word by word; otherwise its letter.
 *
 * @returns the drawing, and for each cut-out the letter it got, if any.
 */
export function cutOutNames(view: PlanView): { svg: string; letters: readonly (string | undefined)[] } {
  const { layout, pen, at, labels } = view;
  const size = pen.size * 0.92;
  const step = size * 1.15;
  const letters: (string | undefined)[] = [];
  const drawn = layout.outline.cutOuts.map(({ name, ring }) => {
    const { minX, maxX, minY, maxY } = boundsOf(ring.points.map(at));
    const center = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
    // A circle has less room across than its box.
    const room = { width: (maxX - minX) * (isRound(ring.runs) ? 0.8 : 0.96), height: (maxY - minY) * 0.9 };
    const rows = [[name], name.split(/\s+/)]
      .map((lines) =>
        lines.map((line, k) => {
          const y = center.y + (k - (lines.length - 1) / 2) * step;
          return { line, center: { x: center.x, y }, width: textWidth(line, size), height: size };
        }),
      )
      .find(
        (lines) =>
          lines.length * step <= room.height &&
          lines.every((line) => line.width <= room.width && labels.isFree(line, false)),
      );
    if (!rows) {
      const letter = letterOf(letters.filter((taken) => taken !== undefined).length);
      letters.push(letter);
      return letterBeside(view, letter, center, Math.max(maxX - minX, maxY - minY) / 2);
    }
    letters.push(undefined);
    for (const row of rows) labels.take(row);
    return rows.map(({ line, center }) => pen.text(line, center, { size, color: pen.colors.ink })).join("");
  });
  return { svg: drawn.join(""), letters };
}

/** "A" for the first cut-out, and so on; after "Z" it is "A2". */
const letterOf = (index: number): string => {
  const round = Math.floor(index / 26);
  return String.fromCharCode(65 + (index % 26)) + (round > 0 ? String(round + 1) : "");
};

function letterBeside({ pen, labels }: PlanView, text: string, center: Point, reach: number): string {
  const box = (x: number, y: number) => ({
    center: { x: center.x + x, y: center.y + y },
    width: textWidth(text, pen.size) + 3,
    height: pen.size,
  });
  const beside = reach + pen.size * 0.7;
  const inside = reach > pen.size * 0.6 ? [box(0, 0)] : [];
  const spot = labels.place([...inside, box(beside, 0), box(-beside, 0), box(0, -beside), box(0, beside)]);
  const style = { size: pen.size, color: pen.colors.ink, bold: true, halo: true };
  return spot ? pen.text(text, spot.center, style) : "";
}

/** What a crew needs to set a cut-out: its size, and where it is from x 0, y 0. */
export function cutOutInWords({ name, ring }: OutlineCutOut, letter: string | undefined): string {
  const { minX, maxX, minY, maxY } = boundsOf(ring.points);
  const label = letter ? `${letter} ${name}` : name;
  const place = (x: number, y: number) => `x\u00a0${coordinate(x)}, y\u00a0${coordinate(y)}`;
  if (isRound(ring.runs))
    return `${label}: ${taped(maxX - minX)} across, center at ${place((minX + maxX) / 2, (minY + maxY) / 2)}`;
  const isUpright =
    ring.points.length === 4 && ring.points.every(({ x, y }) => isEnd(x, minX, maxX) && isEnd(y, minY, maxY));
  if (isUpright) {
    const size = `${taped(maxX - minX)} along x by ${taped(maxY - minY)}`;
    return `${label}: ${size}, near corner at ${place(minX, minY)}`;
  }
  return `${label}: corners at ${ring.points.map(({ x, y }) => place(x, y)).join("; ")}`;
}

const isEnd = (value: number, ...ends: number[]): boolean => ends.some((end) => Math.abs(end - value) < 1e-6);

const isRound = (runs: OutlineCutOut["ring"]["runs"]): boolean => runs.length === 1 && must(runs[0]).kind === "arc";
