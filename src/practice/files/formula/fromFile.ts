import { parse, tokenize } from "@borgar/fx";
import { type FunctionNames, isOfSomeAddIn } from "./functionNames";
import { type FileCell, type FileTable, tableCells } from "./tables";

/** Why a formula of a file cannot be one here. */
export type Unreadable = "outside" | "table" | "unreadable";

/** A formula of a file as it stands in a cell, or why it cannot. */
export type ReadFormula =
  | { readonly formula: string; readonly foreign: readonly string[] }
  | { readonly refused: Unreadable };

/**
 * A formula as it stands in a cell: newer functions and those of add-ins by their own names, references to tables as
 * references to their cells.
 *
 * @param text as the file holds it, without "=".
 * @param cell where it stands.
 * @returns the formula with its "=", and the functions in it that belong to add-ins that are not here.
 */
export function fromFile(
  text: string,
  cell: FileCell,
  { functions, tables }: { readonly functions: FunctionNames; readonly tables: readonly FileTable[] },
): ReadFormula {
  const foreign: string[] = [];
  let isWithoutTable = false;
  const tokens = tokenize(`=${text}`, { mergeRefs: true, negativeNumbers: false });
  if (tokens.some(readsOutside)) return { refused: "outside" };
  const formula = tokens
    .map(({ type, value }) => {
      if (type === "func") {
        const name = functions.inCell(value);
        if (isOfSomeAddIn(name)) foreign.push(name);
        return name;
      }
      if (type === "structured") {
        const cells = tableCells(value, tables, cell);
        isWithoutTable ||= cells === undefined;
        return cells ?? value;
      }
      return type === "range_named" ? value.replace(/^_xl(?:pm|op)\./i, "") : value;
    })
    .join("");
  if (isWithoutTable) return { refused: "table" };
  return isReadable(formula) ? { formula, foreign } : { refused: "unreadable" };
}

/** Other workbooks stand in brackets, and other programs before an upright line; nothing else but tables has either. */
function readsOutside({ type, value }: { readonly type: string; readonly value: string }): boolean {
  return type !== "string" && type !== "structured" && /[[|]/.test(value);
}

function isReadable(formula: string): boolean {
  // A sheet that is gone is no reference to the parser, and an ordinary error to the grid.
  const known = formula.replace(/(?:'(?:[^']|'')*'|[\w.]+)!#REF!/g, "#REF!");
  try {
    parse(tokenize(known, { mergeRefs: true }));
    return true;
  } catch {
    return false;
  }
}
