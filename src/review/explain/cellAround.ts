import { unitIn } from "../../headings/heading";
import { Book, type Target } from "../book";
import type { WorkbookFacts } from "../facts";
import { evaluate } from "../formula/evaluate";
import { PatternReader } from "../formula/pattern";
import type { Single, Value } from "../formula/values";
import type { Knowledge } from "../knowledge";
import type { CallFunction } from "../study";
import type { Around } from "./explain";

/** Larger ranges are not handed to a formula that is only explained. */
const MOST_CELLS = 20_000;

/**
 * What explaining a cell needs, from what was read of the workbook, so that the host is asked for nothing more.
 *
 * @param facts the sheets that the formula reads, as far as they were read.
 * @param place the cell that the formula stands in.
 * @param knowledge what is known of the functions.
 * @param call works out the functions of ours.
 */
export function cellAround(
  facts: WorkbookFacts,
  place: { readonly sheet: string; readonly row: number; readonly column: number },
  knowledge: Knowledge,
  call: CallFunction,
): Around {
  const book = Book.unread(facts);
  const cell = { sheet: book.sheetNamed(place.sheet) ?? 0, row: place.row, column: place.column };
  const valueAt = (sheet: number, row: number, column: number): Single => {
    const grid = book.grids[sheet]!;
    const kind = grid.kind(row, column);
    if (kind === "blank") return null;
    const value = grid.value(row, column);
    return kind === "error" ? { error: String(value) } : value;
  };
  const valuesAt = ({ sheet, row, column, rows, columns }: Target): Value | undefined => {
    if (rows * columns > MOST_CELLS) return undefined;
    if (rows === 1 && columns === 1) return valueAt(sheet, row, column);
    return Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (__, c) => valueAt(sheet, row + r, column + c)),
    );
  };
  const evaluateHere = (text: string) => {
    const pattern = new PatternReader().read(text.startsWith("=") ? text : `=${text}`, cell.row, cell.column);
    if (pattern.tree === undefined) return undefined;
    const targetAt = (start: number) => {
      const reference = pattern.references.find((one) => one.start === start);
      return reference && book.targetOf(reference, cell);
    };
    return evaluate(pattern.tree, {
      reach: (_, start) => {
        const target = targetAt(start);
        return target && valuesAt(target);
      },
      isFormula: (_, start) => {
        const target = targetAt(start);
        return target !== undefined && book.grids[target.sheet]!.formula(target.row, target.column) !== undefined;
      },
      call,
    });
  };
  const nameOf = (reference: string) => {
    const { references } = new PatternReader().read(`=${reference}`, cell.row, cell.column);
    const target = references[0] && book.targetOf(references[0], cell);
    if (!target) return "";
    const places = book.places[target.sheet]!;
    const [label, heading] = [places.labelOf(target.row, target.column), places.headingOf(target.row, target.column)];
    // A heading such as “Typed” says nothing that the label does not.
    const tells = label === "" || places.roleIn(heading) !== undefined || unitIn(heading) !== undefined;
    return [label, tells ? heading : ""].filter(Boolean).join(", ");
  };
  return { evaluate: evaluateHere, knowledge, nameOf };
}
