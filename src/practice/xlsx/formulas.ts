import { parse, tokenize, translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { fileFormula } from "../../xlsx/contents";
import { type FileCellPlace, type FileTable, tableCells } from "./tableReferences";

/** Why a formula of a file cannot be one here. */
export type Unreadable = "outside" | "table" | "unreadable";

/** A file's formula as a cell holds it, or why a cell can't. */
export type ReadFormula =
  | { readonly formula: string; readonly foreign: readonly string[] }
  | { readonly refused: Unreadable };

/**
 * A formula as a cell holds it: newer functions and those of add-ins by their own names, references to tables as
 * references to their cells.
 *
 * @param text as the file holds it, without "=".
 * @param cell its cell.
 * @returns the formula with its "=", and the functions in it that belong to add-ins that are not here.
 */
export function fromFile(
  text: string,
  cell: FileCellPlace,
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

/** Other workbooks are in brackets, and other programs before a vertical bar; besides tables, nothing else has either. */
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

/**
 * A formula that several cells share, moved from one of them to another.
 *
 * @param formula without "=", as its first cell has it.
 * @param from the address of the first cell.
 * @param to the address of the other one.
 * @example movedFormula("A1*$B$1", "C1", "C3") // "A3*$B$1"
 */
export function movedFormula(formula: string, from: string, to: string): string {
  return translateFormulaToA1(translateFormulaToR1C1(`=${formula}`, from), to).slice(1);
}

/** The prefix of a name that a formula makes for itself, with LET or LAMBDA: [MS-XLSX], from memory. */
const OWN = "_xlpm.";

/**
 * A formula as a file holds it: without its "=", functions of the add-in and newer ones under the names that files have
 * for them.
 *
 * @param formula with its "=".
 * @example toFile("=MY.SUM_UP(IFNA(A1,0))", names) // "_xldudf_MY_SUM_UP(_xlfn.IFNA(A1,0))"
 */
export function toFile(formula: string, functions: FunctionNames): string {
  const tokens = tokenize(formula, { mergeRefs: true, negativeNumbers: false });
  const own = ownNames(tokens);
  const text = tokens
    .map(({ type, value }) => {
      if (type === "func") return functions.inFile(value);
      return type === "range_named" && own.has(value.toLowerCase()) ? OWN + value : value;
    })
    .join("");
  return fileFormula(text);
}

interface Token {
  readonly type: string;
  readonly value: string;
}

/** The names that LET and LAMBDA define: a name alone before a comma, in any place for LAMBDA, in every other for LET. */
function ownNames(tokens: readonly Token[]): ReadonlySet<string> {
  const own = new Set<string>();
  const calls: { name: string; argument: number }[] = [];
  const solid = tokens.filter(({ type }) => type !== "whitespace");
  solid.forEach(({ type, value }, place) => {
    if (type === "operator" && value === "(") {
      const before = solid[place - 1];
      calls.push({ name: before?.type === "func" ? before.value.toUpperCase() : "", argument: 0 });
    } else if (type === "operator" && value === ")") calls.pop();
    else if (type === "operator" && value === ",") {
      const call = calls.at(-1);
      if (call) call.argument += 1;
    } else if (type === "range_named" && solid[place + 1]?.value === ",") {
      const call = calls.at(-1);
      const opens = /^[(,]$/.test(solid[place - 1]?.value ?? "");
      const makes = call?.name === "LAMBDA" || (call?.name === "LET" && call.argument % 2 === 0);
      if (opens && makes) own.add(value.toLowerCase());
    }
  });
  return own;
}

/**
 * How a host stores the functions of add-ins in a file: with this prefix, and underscores in the place of dots. From
 * memory of files that were seen; the published format does not name it.
 */
const PREFIX = "_xldudf_";

/** The names of the add-in's functions, in cells and in files. */
export class FunctionNames {
  private readonly inCells: ReadonlyMap<string, string>;

  /** @param names as cells have them: `MY.FUNCTION`. */
  constructor(names: readonly string[]) {
    this.inCells = new Map(names.map((name) => [stored(name), name.toUpperCase()]));
  }

  /**
   * A function's name as a file holds it; names of anyone else's functions come back as they are.
   *
   * @example new FunctionNames(["MY.SUM_UP"]).inFile("my.sum_up") // "_xldudf_MY_SUM_UP"
   */
  inFile(name: string): string {
    const form = stored(name);
    return this.inCells.get(form) === name.toUpperCase() ? PREFIX + form : name;
  }

  /**
   * A function's name as cells have it: without the prefixes that files put before newer functions and those of
   * add-ins.
   *
   * @example new FunctionNames(["MY.SUM_UP"]).inCell("_xldudf_MY_SUM_UP") // "MY.SUM_UP"
   */
  inCell(name: string): string {
    const plain = name.replace(/^_xlfn\./i, "").replace(/^_xlws\./i, "");
    if (!isOfSomeAddIn(plain)) return plain;
    return this.inCells.get(plain.slice(PREFIX.length).toUpperCase()) ?? plain;
  }
}

/** Whether a name in a file is that of an add-in's function. */
function isOfSomeAddIn(name: string): boolean {
  return name.toLowerCase().startsWith(PREFIX);
}

function stored(name: string): string {
  return name.toUpperCase().replaceAll(".", "_");
}
