import { must } from "../../quantities/must";
import type { Block } from "./flow";
import type { Pen } from "./pen";
import { element } from "./svg";

/** Lengths that a scale bar may stand for, in feet. */
const LENGTHS = [1, 2, 4, 10, 20, 40, 100, 200, 400, 1000];
const PARTS = 2;

/** A scale bar of two parts, dark and light, as long as a round number of feet that fits the width. */
export function scaleBar(pen: Pen, scale: number, left: number, top: number, mostWidth: number): Block {
  const feet = LENGTHS.findLast((length) => length * scale <= mostWidth) ?? must(LENGTHS[0]);
  const { ink, paper } = pen.colors;
  const part = (feet * scale) / PARTS;
  const bars = [ink, paper].map((fill, i) =>
    element("rect", { x: left + i * part, y: top, width: part, height: 5, fill, stroke: ink, "stroke-width": 1 }),
  );
  const numbers = [0, feet / PARTS, feet].map((value, i) =>
    pen.text(
      i === PARTS ? `${value} ft` : String(value),
      { x: left + i * part, y: top + 7 + pen.size * 0.6 },
      {
        size: pen.size * 0.92,
        color: ink,
      },
    ),
  );
  return { svg: element("g", {}, ...bars, ...numbers), height: 7 + pen.size * 1.3 };
}
