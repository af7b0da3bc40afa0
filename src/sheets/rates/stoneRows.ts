import { quoted } from "../../quantities/bed/evaluate";
import { exampleStonePrices } from "../../quantities/bed/examples";
import { fields } from "../../quantities/bed/fields";
import type { stoneListNames } from "../../quantities/bed/rates";
import { SOLD_BY, TON } from "../../quantities/soldBy";
import { stoneNamed } from "../../quantities/stone";
import type { DraftRow } from "../compose";
import { isUnit, WRONG_UNIT } from "../estimate/rateFormulas";
import { type OfficeStone, stonePrice } from "../office/officeFile";
import { sentence } from "../typed";
import { ifFilledWrong, markOf, namedOrWrong, startKey, whoseCell, whoseInList, whoseOrWrong } from "./rows";

/** Rows for kinds of the office's own, below those that are there from the start. */
const BLANK_ROWS = 8;

/** The heading of the list. */
export const STONE_HEADING = "Stone by kind";

/** What its columns hold, beside the names. */
export const STONE_COLUMNS = [
  "Price",
  "Unit",
  "Source",
  "Sample",
  "Tons/cu yd",
  "Sold by",
  "Increment",
  "Minimum",
  "Note",
] as const;

const OWN_KINDS =
  "rows for your own stone, named the way you'll type it; add the weight unless it's common stone; blank under Sold by is tons";

const FIRST_STONE = "stone1";
export const STONE_PARTS = {
  kinds: "kind",
  prices: "price",
  weights: "weight",
  whose: "price.whose",
  units: "unit",
  steps: "step",
  minimums: "minimum",
} as const satisfies Record<keyof typeof stoneListNames, string>;
const UNITS = SOLD_BY.map(({ name }) => name);

/**
 * Stone by kind: its name, price and, where it was weighed, its weight; what it is sold by, and the yard's step and
 * minimum.
 *
 * @param loaded the office's own list; without one, the sheet starts with sample prices.
 */
export function stoneRows(loaded?: readonly OfficeStone[]): DraftRow[] {
  const count = (loaded ?? exampleStonePrices).length + BLANK_ROWS;
  return Array.from({ length: count }, (_, index) => stoneRow(index, count, loaded));
}

/** The keys of the first and the last cell of a column of the list. */
export function stoneEnds(part: keyof typeof STONE_PARTS, rows: readonly DraftRow[]): [first: string, last: string] {
  return [`${FIRST_STONE}.${STONE_PARTS[part]}`, `stone${rows.length}.${STONE_PARTS[part]}`];
}

function stoneRow(index: number, count: number, loaded: readonly OfficeStone[] | undefined): DraftRow {
  const own = loaded?.[index];
  const name = own ? own.name.toLowerCase() : undefined;
  const example = loaded ? exampleStonePrices.find(({ stone }) => stone === name) : exampleStonePrices[index];
  const key = `stone${index + 1}`;
  const price = `${key}.price`;
  const start = example ? Number(example.perTon) : "";
  const note = example
    ? `no weight here: common stone, ${stoneNamed(example.stone).tonsPerYard} tons/cu yd`
    : index === count - BLANK_ROWS
      ? OWN_KINDS
      : "";
  const mark = own && markOf(stonePrice(own), start, own.sample);
  return {
    cells: [
      { content: own ? sentence(own.name) : (example?.stone ?? ""), key: `${key}.kind`, look: "inputWords" },
      { content: (own ? stonePrice(own) : undefined) ?? start, key: price, format: "money", look: "input" },
      { content: `="per "&IF(LEN(TRIM({${key}.unit}))=0,${quoted(TON.name)},TRIM({${key}.unit}))`, look: "note" },
      whoseCell(price, mark || whoseFormula(key, `stone${count}`)),
      { content: start, key: startKey(price), format: "money", look: "aside" },
      { content: own?.tonsPerYard ?? "", key: `${key}.weight`, look: "input" },
      { content: own?.soldBy ?? "", key: `${key}.unit`, look: "inputWords", choices: UNITS },
      { content: own?.orderStep ?? "", key: `${key}.step`, look: "input" },
      { content: own?.orderMinimum ?? "", key: `${key}.minimum`, look: "input" },
      { content: note, look: "note" },
    ],
  };
}

function whoseFormula(key: string, last: string): string {
  const [kind, price, start] = [`{${key}.kind}`, `{${key}.price}`, `{${startKey(`${key}.price`)}}`];
  const kinds = `{${FIRST_STONE}.kind}:{${last}.kind}`;
  const priced = whoseOrWrong(fields.stoneCost, `${key}.price`, whoseInList(price, start));
  const ordered = (["orderStep", "orderMinimum"] as const).reduceRight(
    (rest, field) => ifFilledWrong(fields[field], `{${key}.${field === "orderStep" ? "step" : "minimum"}}`, rest),
    priced,
  );
  const known = `IF(IFERROR(${isUnit(`{${key}.unit}`)},FALSE),${ordered},${quoted(WRONG_UNIT)})`;
  return `=${namedOrWrong({ name: kind, names: kinds, price, lacks: "kind" }, known)}`;
}
