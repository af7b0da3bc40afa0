import { areaAddress } from "../../spreadsheet/areas";
import { companion, type Measure } from "../sheet/measures";
import type { Study } from "../study";
import { nameOf, short } from "../words";
import { eachMeasure } from "./each";
import type { Observation, Rule } from "./rule";

/** Common practice: under 1.5 in the fabric shows, over 6 in tons lie where nobody sees them. */
const [SHALLOW_IN, DEEP_IN] = [1.5, 6];
/** Stone larger than this share of the depth lets the fabric show (common practice). */
const LARGEST_STONE = 2 / 3;
const SLACK = 1.001;

export const depthSense: Rule = {
  id: "depth-sense",
  title: "A depth that does not suit the stone or the border",
  level: "odd",
  rank: 25,
  matters: "Fabric shows, stone spills over the border, or tons are wasted.",
  look: (study) =>
    eachMeasure(study, (measure) =>
      measure.role === "depth" && measure.amount > 0 ? observe(study, measure) : undefined,
    ),
};

function* observe(study: Study, depth: Measure): Generator<Observation> {
  const { cell, amount } = depth;
  const name = () => `${areaAddress(cell)} (${nameOf(study.book, cell)})`;
  const seen = (what: string, words: string, todo: string, more?: Measure): Observation => ({
    cell,
    ...(more && { more: [more.cell] }),
    group: `${cell.sheet}:${cell.column}:${what}`,
    about: `${what} ${amount}`,
    seen: words,
    todo,
  });
  const size = companion(study, depth, "stone size");
  const border = companion(study, depth, "border height");
  if (amount < SHALLOW_IN) {
    yield seen(
      "shallow",
      `${name()} is ${short(amount)} in of stone: fabric will show through.`,
      "Make it 1.5 in or more.",
    );
  } else if (amount > DEEP_IN) {
    yield seen(
      "deep",
      `${name()} is ${short(amount)} in of stone: more than anybody sees.`,
      "Make it 6 in or less, or dismiss this with the reason.",
    );
  }
  if (size && size.amount > amount * LARGEST_STONE * SLACK) {
    yield seen(
      "stone",
      `${name()} is ${short(amount)} in deep for stone up to ${short(size.amount)} in (${areaAddress(size.cell)}), over two thirds of it.`,
      "Take smaller stone, or a higher border and more depth.",
      size,
    );
  }
  if (border && amount > border.amount * SLACK) {
    yield seen(
      "border",
      `${name()} is ${short(amount)} in deep behind a border of ${short(border.amount)} in (${areaAddress(border.cell)}): it spills over.`,
      "Take a higher border or less depth.",
      border,
    );
  }
}
