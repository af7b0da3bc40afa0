import type { Meaning } from "../../headings/meaning";
import type { UnitName } from "../../headings/units";
import { type ColumnFacts, middle } from "./columnFacts";
import { isResult, measureOf, type Role } from "./roles";

/** A heading as it is read, with what stands below it. */
export interface Reading {
  readonly column: number;
  readonly heading: string;
  readonly unit: UnitName | undefined;
  readonly saysT: boolean;
  readonly meaning: Meaning;
  readonly facts: ColumnFacts;
}

function isMetric(unit: UnitName | undefined): boolean {
  return unit !== undefined && ["m", "cm", "mm", "sq m", "cu m", "kg"].includes(unit);
}

export const DEEPEST_IN = 18;
export const LONGEST_FT = 600;

/** Why a column cannot be what its heading says, without asking; undefined where it can. */
export function doubt({ facts, unit, saysT }: Reading, role: Role, all: readonly Reading[]): string | undefined {
  if (saysT && all.some((other) => isMetric(other.unit))) return "t may be short tons or metric tonnes: which unit?";
  const { numbers, tape, formulas, otherTexts } = facts;
  const isLength = measureOf(role) === "length" && !isResult(role);
  if (isLength && otherTexts.length > 0 && numbers.length + tape + formulas === 0) {
    return `holds text such as “${otherTexts[0]!.slice(0, 20)}”, which is no length`;
  }
  if (unit !== undefined) return undefined;
  const typical = middle(numbers);
  if ((role === "depth" || role === "scrape") && typical > DEEPEST_IN)
    return `${typical} is deep for inches: which unit?`;
  if ((role === "length" || role === "width") && typical > LONGEST_FT)
    return `${typical} is long for feet: which unit?`;
  return undefined;
}
