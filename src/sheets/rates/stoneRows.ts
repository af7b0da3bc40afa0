import { quoted } from "../../quantities/bed/evaluate";
import { exampleStonePrices } from "../../quantities/bed/examples";
import { fields } from "../../quantities/bed/fields";
import { EXAMPLE } from "../../quantities/bed/rates";
import { stoneNamed } from "../../quantities/stone";
import type { DraftRow } from "../compose";
import { startKey, whoseCell, whoseOrWrong } from "./rows";

/** Rows for kinds of the office's own, below those that are there from the start. */
const BLANK_ROWS = 8;
const COUNT = exampleStonePrices.length + BLANK_ROWS;

const OWN_KINDS =
  "rows for your own kinds, named as you will type them for a bed; with their weight, unless it is common stone";

export const FIRST_STONE = "stone1";
export const LAST_STONE = `stone${COUNT}`;
export const STONE_PARTS = { kinds: "kind", prices: "price", weights: "weight", whose: "price.whose" } as const;

/** Stone by kind: its name, price and, where it was weighed, its weight. */
export function stoneRows(): DraftRow[] {
  return Array.from({ length: COUNT }, (_, index) => stoneRow(index));
}

function stoneRow(index: number): DraftRow {
  const example = exampleStonePrices[index];
  const key = `stone${index + 1}`;
  const price = `${key}.price`;
  const start = example ? Number(example.perTon) : "";
  const note = example
    ? `without a weight here: common stone, ${stoneNamed(example.stone).tonsPerYard} tons a cu yd`
    : index === exampleStonePrices.length
      ? OWN_KINDS
      : "";
  return {
    cells: [
      { content: example?.stone ?? "", key: `${key}.kind`, look: "inputWords" },
      { content: start, key: price, format: "money", look: "input" },
      { content: fields.stoneCost.unit, look: "note" },
      whoseCell(price, whoseFormula(key)),
      { content: start, key: startKey(price), format: "money", look: "aside" },
      { content: "", key: `${key}.weight`, look: "input" },
      { content: note, look: "note" },
    ],
  };
}

function whoseFormula(key: string): string {
  const [kind, price, start] = [`{${key}.kind}`, `{${key}.price}`, `{${startKey(`${key}.price`)}}`];
  const kinds = `{${FIRST_STONE}.kind}:{${LAST_STONE}.kind}`;
  const isStart = `IF(LEN(${start})=0,FALSE,${price}=${start})`;
  const known = `IF(${isStart},${quoted(EXAMPLE)},"own")`;
  return (
    `=IF(LEN(${kind})=0,IF(LEN(${price})=0,"","rate has no kind beside it"),` +
    `IF(EXACT(${kind},TRIM(${kind})),IF(COUNTIF(${kinds},${kind})>1,"rate stands twice, first counts",` +
    `${whoseOrWrong(fields.stoneCost, `${key}.price`, known)}),"rate's name has spaces around it"))`
  );
}
