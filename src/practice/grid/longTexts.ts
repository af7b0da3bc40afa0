import type { BaseValueObject, FunctionVariantType } from "@univerjs/preset-sheets-node-core";
import { MOST_IN_CELL } from "../../spreadsheet/areas";
import type { OpenGrid } from "./library";

/** What text is made longer by; the first is also the & between two texts. */
const MAKE_TEXT = ["CONCATENATE", "CONCAT", "REPLACE", "REPT", "SUBSTITUTE", "TEXTJOIN"];

/** The grids that have this already. */
const limited = new WeakSet<object>();

/**
 * Makes a text that no cell could hold the error that it is elsewhere, #VALUE!. Without this, a column of cells that
 * each hold the one above twice is worked out until the page is out of memory.
 */
export function refuseLongTexts({ injector, library: { sheets } }: OpenGrid): void {
  const functions = injector.get(sheets.IFunctionService);
  if (limited.has(functions)) return;
  limited.add(functions);
  const refused = (value: BaseValueObject) =>
    value.isString() && String(value.getValue()).length > MOST_IN_CELL
      ? sheets.ErrorValueObject.create(sheets.ErrorType.VALUE)
      : value;
  for (const name of MAKE_TEXT) {
    const known = functions.getExecutor(name);
    if (!known) continue;
    const calculate = known.calculate.bind(known) as (...given: never[]) => FunctionVariantType;
    known.calculate = (...given: never[]) => {
      const made = calculate(...given);
      if (!made.isValueObject()) return made;
      const value = made as BaseValueObject;
      return value.isArray() ? value.mapValue(refused) : refused(value);
    };
  }
}
