import { borderChoices, fabricChoices } from "./choices";
import { type FieldKey, fields } from "./fields";

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

/** Whether a price is one of the invented ones that fields and ready choices start with. */
export function isExamplePrice(key: FieldKey, text: string): boolean {
  const others =
    key === "stoneCost"
      ? exampleStonePrices.map(({ perTon }) => perTon)
      : [...borderChoices, ...fabricChoices].flatMap(({ fills }) => fills[key] ?? []);
  return [fields[key].initial, ...others].includes(text.trim());
}
