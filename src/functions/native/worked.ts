/**
 * Conditions that must hold before a formula may give its answer. Those of one layer are asked together; a later
 * layer is only asked once the earlier ones hold, since it works with what they checked.
 */
export type Layers = readonly (readonly string[])[];

/** How small an answer can be, so that nothing is asked twice: more than 0, 0 or more, or anything. */
export type Least = "over 0" | "0 or more" | "anything";

/** A formula in parts: its arithmetic, and what must hold for it. */
export interface Worked {
  readonly text: string;
  readonly layers: Layers;
  readonly least: Least;
}

/** What a cell shows for a value that cannot be worked with, as the functions show it. */
export const NO_VALUE = "#VALUE!";

/** The layers of several formulas as those of one. */
export function merged(all: readonly Layers[]): Layers {
  const depth = Math.max(0, ...all.map((layers) => layers.length));
  return Array.from({ length: depth }, (_, place) => [...new Set(all.flatMap((layers) => layers[place] ?? []))]);
}

/**
 * The whole formula, without its "=": the arithmetic where every condition holds, else the error.
 *
 * @example closed({ text: "A1*2", layers: [["A1>0"]], least: "over 0" }) // IF(A1>0,A1*2,#VALUE!)
 */
export function closed({ text, layers }: Worked): string {
  return layers.reduceRight((inner, conditions) => guarded(conditions, inner), text);
}

function guarded(conditions: readonly string[], text: string): string {
  if (conditions.length === 0) return text;
  const [only] = conditions;
  return `IF(${conditions.length === 1 ? only : `AND(${conditions.join(",")})`},${text},${NO_VALUE})`;
}
