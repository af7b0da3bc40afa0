import { fields } from "./fields";

/** Invented prices of common stone by the ton; no one sells at them. */
export const exampleStonePrices: readonly { readonly stone: string; readonly perTon: string }[] = [
  { stone: "river rock", perTon: "62" },
  { stone: "pea gravel", perTon: "48" },
  { stone: "crushed limestone", perTon: "39" },
  { stone: "crushed granite", perTon: "58" },
  { stone: "lava rock", perTon: "140" },
];

/** The example price of a stone by the ton: its own where it has one, else that of any stone. */
export function exampleStonePrice(stone: string): string {
  const name = stone.trim().toLowerCase();
  return exampleStonePrices.find((one) => one.stone === name)?.perTon ?? fields.stoneCost.initial;
}
