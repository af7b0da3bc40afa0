import { messages } from "../messages";
import { Problem } from "../problem";
import { soldByNamed } from "../soldBy";
import { MOST_TONS_PER_YARD } from "../stone";
import { type Field, type FieldKey, fields } from "./fields";
import { type Rate, type RateKey, rateLabel, rateNames } from "./rates";
import { readField } from "./readField";

const WEIGHT: Field = { label: "Tons per cubic yard", unit: "tons/cu yd", reads: "number", initial: "1.35" };

/**
 * A rate from the cell that has its name. A cell that could give a wrong price gives none.
 *
 * @param cell what the cell shows; undefined where no cell is named.
 * @param isExample whether the price is marked as an example.
 * @returns text that reads like a typed field, or in words what is wrong and what to type.
 * @example readRate("waste", 0.08, false) // { text: "8%", isExample: false }
 */
export function readRate(key: RateKey, cell: unknown, isExample: boolean): Rate {
  const label = `${rateLabel(key)} (Rates)`;
  if (cell === undefined) {
    return {
      problem: `${label} is missing: no cell is named ${rateNames[key]}. Put it back from the Rates screen.`,
    };
  }
  return readCell({ ...fields[key], label }, cell, isExample);
}

/** What a row of one of the office's lists has for a field; undefined where its cell is blank. */
export function readListed(key: FieldKey, name: string, cell: unknown, isExample: boolean): Rate | undefined {
  if (cell === "" || cell === null || cell === undefined) return undefined;
  return readCell({ ...fields[key], label: `${fields[key].label} of ${name} (Rates)` }, cell, isExample);
}

/** What a listed stone is sold by; undefined where its cell is blank. */
export function readStoneUnit(name: string, cell: unknown): Rate | undefined {
  const text = String(cell ?? "");
  if (text.trim() === "") return undefined;
  try {
    return { text: soldByNamed(text, `The unit of ${name} (Rates)`).name, isExample: false };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { problem: error.message };
  }
}

/** The price of a listed stone, per what it is sold by. */
export function readStonePrice(name: string, cell: unknown, isExample: boolean): Rate {
  return readCell({ ...fields.stoneCost, label: `The price of ${name} (Rates)` }, cell, isExample);
}

/** The weight of a listed stone in short tons a loose cubic yard; undefined where none was typed. */
export function readStoneWeight(name: string, cell: unknown): Rate | undefined {
  if (cell === "" || cell === null || cell === undefined) return undefined;
  const label = `The weight of ${name} (Rates)`;
  const rate = readCell({ ...WEIGHT, label }, cell, false);
  const isTooHeavy = rate.problem === undefined && Number(rate.text) > MOST_TONS_PER_YARD;
  return isTooHeavy ? { problem: messages.tooHeavy(label, cell, MOST_TONS_PER_YARD) } : rate;
}

function readCell(field: Field, cell: unknown, isExample: boolean): Rate {
  const { label, reads, initial } = field;
  try {
    if (cell === "" || cell === null) throw new Problem("value", messages.missing(label, initial), label);
    const isLength = reads === "feet" || reads === "inches";
    // Plain arithmetic on the sheet reads no text, so a number that was typed as text is none.
    if (typeof cell !== "number" && !(isLength && typeof cell === "string")) {
      throw new Problem("value", messages.notANumber(label, cell, initial), label);
    }
    const text = typeof cell === "number" ? textOfNumber(cell, reads) : cell;
    readField(field, text);
    return { text, isExample };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    return { problem: error.message };
  }
}

/** Twelve digits, so that 7 % does not show as 7.000000000000001 %. */
const SHARE_DIGITS = 12;

function textOfNumber(value: number, reads: Field["reads"]): string {
  return reads === "share" ? `${Number((value * 100).toPrecision(SHARE_DIGITS))}%` : String(value);
}
