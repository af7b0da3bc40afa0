import type {
  ArrayValueObject,
  BaseReferenceObject,
  BaseValueObject,
  FunctionVariantType,
} from "@univerjs/preset-sheets-node-core";
import { MOST_IN_CELL } from "../../spreadsheet/areas";
import { mostCellsOfFormula } from "../../xlsx/limits";
import type { OpenGrid } from "./library";

/** What text is made longer by; the first is also the & between two texts. */
const MAKE_TEXT = ["CONCATENATE", "CONCAT", "REPLACE", "REPT", "SUBSTITUTE", "TEXTJOIN"];

/** What makes a reference of texts and numbers, so that nothing is known of its size before. */
const MAKE_REFERENCE = ["INDIRECT", "OFFSET"];

/** What makes as many cells as it is told, and which of its arguments tell: rows and columns, or both in one. */
const MAKE_CELLS: Readonly<Record<string, readonly [rows: number, columns: number]>> = {
  SEQUENCE: [0, 1],
  RANDARRAY: [0, 1],
  MAKEARRAY: [0, 1],
  MUNIT: [0, 0],
  EXPAND: [1, 2],
};

/** The grids that have this already. */
const bounded = new WeakSet<object>();

type Calculate = (...given: BaseValueObject[]) => FunctionVariantType;

/**
 * Makes an error of what would be worked out until the page is out of time or memory: #VALUE! of a text that no cell
 * could hold, as it is elsewhere, and #NUM! of more cells than a formula may read or fill here.
 */
export function boundFormulas({ injector, library: { sheets } }: OpenGrid): void {
  const functions = injector.get(sheets.IFunctionService);
  if (bounded.has(functions)) return;
  bounded.add(functions);
  const { ErrorValueObject, ErrorType } = sheets;
  const tooMany = () => ErrorValueObject.create(ErrorType.NUM);
  const change = (name: string, changed: (calculate: Calculate) => Calculate) => {
    const known = functions.getExecutor(name);
    if (known) known.calculate = changed(known.calculate.bind(known) as Calculate) as typeof known.calculate;
  };

  const shortEnough = (value: BaseValueObject) =>
    value.isString() && String(value.getValue()).length > MOST_IN_CELL
      ? ErrorValueObject.create(ErrorType.VALUE)
      : value;
  for (const name of MAKE_TEXT) {
    change(name, (calculate) => (...given) => {
      const made = calculate(...given);
      if (!made.isValueObject()) return made;
      const value = made as BaseValueObject;
      return value.isArray() ? value.mapValue(shortEnough) : shortEnough(value);
    });
  }
  for (const name of MAKE_REFERENCE) {
    change(name, (calculate) => (...given) => {
      const made = calculate(...given);
      if (!made.isReferenceObject()) return made;
      const reference = made as BaseReferenceObject;
      return reference.getRowCount() * reference.getColumnCount() > mostCellsOfFormula ? tooMany() : made;
    });
  }
  for (const [name, [rows, columns]] of Object.entries(MAKE_CELLS)) {
    change(name, (calculate) => (...given) => {
      const cells = countIn(given[rows]) * countIn(given[columns]);
      return cells > mostCellsOfFormula ? tooMany() : calculate(...given);
    });
  }
}

/** The count that an argument gives; 1 where it's left out or none, which the function itself answers for. */
function countIn(given: BaseValueObject | undefined): number {
  const one = given?.isArray() ? (given as ArrayValueObject).getFirstCell() : given;
  const count = Number(one?.getValue());
  return count > 0 ? count : 1;
}
