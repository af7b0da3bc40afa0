import { stoneYards } from "../../quantities/stoneAmounts";
import { area, stoneDepthIn, waste } from "../arguments";
import { declare } from "../declare";
import { type Operand, withShare } from "../native/arithmetic";
import { shareShown, shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const STONE_YARDS = worksheetFunction(stoneYards, area, stoneDepthIn, waste);

export const stoneYardsDeclared = /* @__PURE__ */ declare(STONE_YARDS, {
  name: "STONE_YARDS",
  purpose: "Order stone",
  about: "Stone for a bed, in cubic yards.",
  gives: "stone by volume",
  returns: "Loose cubic yards.",
  kind: "cu yd",
  rule: "Area times depth over 324 (a cubic yard covers 324 sq ft an inch deep), plus waste.",
  example: "=BED.STONE_YARDS(108, 3) gives 1",
  source: "A cubic yard covers 324 sq ft an inch deep (27 × 12, exact).",
  related: ["STONE_TONS", "STONE_BAGS", "ORDER_UP"],
  native: (area, depth, waste) => ({
    text: yardsFormula(area, depth, waste),
  }),
  working: (_, area, depth, waste) => yardLines(area, depth, waste),
});

/** How a bed's stone comes to its cubic yards. */
export function yardLines(area: number, depth: number, waste: number): string[] {
  const bare = stoneYards(area, depth);
  const line = `${shown(area)} × ${shown(depth)} ÷ 324 = ${shown(bare)} cu yd`;
  return [line, ...wasteLines(bare, waste)];
}

/** What waste adds to cubic yards; no line where there is none. */
export function wasteLines(bareYards: number, waste: number): string[] {
  if (waste === 0) return [];
  const more = `${shown(bareYards)} × ${shown(1 + waste)} = ${shown(bareYards * (1 + waste))} cu yd`;
  return [`plus ${shareShown(waste)} waste: ${more}`];
}

/** Cubic yards of a bed's stone in an ordinary formula. */
export function yardsFormula(area: Operand, depth: Operand, waste: Operand): string {
  return withShare(`${area.text}*${depth.text}/324`, waste);
}
