import type { FieldKey } from "./fields";

/**
 * Ready choices that fill several fields at once. Sizes are common in the trade; prices are invented examples.
 * Each leaves every field open to change.
 */
export interface Choice {
  readonly name: string;
  readonly fills: Readonly<Partial<Record<FieldKey, string>>>;
}

export const stoneChoices: readonly Choice[] = [
  { name: "River rock, to 1 1/4 in", fills: { stone: "river rock", stoneSize: "1.25" } },
  { name: "Pea gravel, to 3/8 in", fills: { stone: "pea gravel", stoneSize: "0.375" } },
  { name: "Crushed limestone, to 3/4 in", fills: { stone: "crushed limestone", stoneSize: "0.75" } },
  { name: "Crushed granite, to 1 in", fills: { stone: "crushed granite", stoneSize: "1" } },
  { name: "Lava rock, to 1 in", fills: { stone: "lava rock", stoneSize: "1" } },
];

export const borderChoices: readonly Choice[] = [
  {
    name: "Steel, 4 in, 8 ft pieces",
    fills: { borderHeight: "4", trenchDepth: "1.5", pieceLength: "8", stakesPerPiece: "3", pieceCost: "24" },
  },
  {
    name: "Steel, 6 in, 10 ft pieces",
    fills: { borderHeight: "6", trenchDepth: "2.5", pieceLength: "10", stakesPerPiece: "4", pieceCost: "41" },
  },
  {
    name: "Aluminum, 4 in, 8 ft pieces",
    fills: { borderHeight: "4", trenchDepth: "1.5", pieceLength: "8", stakesPerPiece: "3", pieceCost: "19" },
  },
  {
    name: "Aluminum, 5 1/2 in, 16 ft pieces",
    fills: { borderHeight: "5.5", trenchDepth: "2", pieceLength: "16", stakesPerPiece: "5", pieceCost: "47" },
  },
];

/**
 * What picking a choice changes: what the one before it filled goes with it, and what was typed stays.
 *
 * @param before the choice that the fields still have; none where some of them were typed.
 */
export const fillsAfter = (before: Choice | undefined, fills: Fills): Fills => ({
  ...Object.fromEntries(Object.keys(before?.fills ?? {}).map((key) => [key, undefined])),
  ...fills,
});

type Fills = Readonly<Partial<Record<FieldKey, string | undefined>>>;

export const fabricChoices: readonly Choice[] = [
  { name: "6 ft × 50 ft", fills: { rollWidth: "6", rollLength: "50", rollCost: "64" } },
  { name: "4 ft × 50 ft", fills: { rollWidth: "4", rollLength: "50", rollCost: "44" } },
  { name: "4 ft × 100 ft", fills: { rollWidth: "4", rollLength: "100", rollCost: "80" } },
  { name: "3 ft × 100 ft", fills: { rollWidth: "3", rollLength: "100", rollCost: "62" } },
];
