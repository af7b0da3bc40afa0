import { parse, type Token, toCol, tokenize, translateTokensToR1C1 } from "@borgar/fx";
import { must } from "../../quantities/must";
import { type Reference, readReference } from "./reference";
import { type Tree, walk } from "./tree";

/** A formula as it is when its place is taken away: all cells filled down from one another share it. */
export interface Pattern {
  readonly id: number;
  /** The formula that was read first, with its "=", and the cell it is in. */
  readonly text: string;
  readonly row: number;
  readonly column: number;
  /** The formula in R1C1 notation. */
  readonly relative: string;
  /** The formula with all its references left out, to find formulas that differ in references only. */
  readonly skeleton: string;
  readonly references: readonly Reference[];
  /** Undefined where the formula could not be read. */
  readonly tree: Tree | undefined;
  /** Other workbooks that it reaches into. */
  readonly workbooks: readonly string[];
  /** It works out at run time which cells to read, which cannot be followed here. */
  readonly wanders: boolean;
}

const WANDERERS = new Set(["INDIRECT", "OFFSET"]);
const OTHER_WORKBOOK = /\[([^[\]]+\.xl\w{1,2})\]/gi;

/** Reads formulas, each pattern once. */
export class PatternReader {
  readonly patterns: Pattern[] = [];
  readonly #known = new Map<string, Pattern>();

  /** The pattern of a formula that is in a cell. */
  read(formula: string, row: number, column: number): Pattern {
    const tokens = tokenize(formula, { withLocation: true, mergeRefs: true });
    const relative = writtenPlain(translateTokensToR1C1(tokens, `${toCol(column)}${row + 1}`));
    const known = this.#known.get(relative);
    if (known) return known;
    const pattern = patternOf(this.patterns.length, formula, tokens, relative, row, column);
    this.patterns.push(pattern);
    this.#known.set(relative, pattern);
    return pattern;
  }
}

function patternOf(id: number, text: string, tokens: Token[], relative: string, row: number, column: number): Pattern {
  const tree = treeOf(tokens);
  const references = tree === undefined ? [] : referencesOf(tree, row, column);
  const workbooks = [
    ...[...text.replaceAll(/"[^"]*"/g, "").matchAll(OTHER_WORKBOOK)].map(([, name]) => must(name)),
    ...references.flatMap(({ workbook }) => (workbook === undefined ? [] : [workbook])),
  ];
  return {
    id,
    text,
    row,
    column,
    relative,
    skeleton: writtenPlain(tokens.map((token) => (isReferenceToken(token) ? { ...token, value: "□" } : token))),
    references,
    tree,
    workbooks: [...new Set(workbooks)],
    wanders: tree !== undefined && wanders(tree),
  };
}

/** A formula without what makes no difference to it: blanks, and small letters in names of functions. */
function writtenPlain(tokens: readonly Token[]): string {
  let written = "";
  for (const { type, value } of tokens) {
    if (type === "whitespace" || type === "newline") continue;
    written += type === "func" ? value.toUpperCase() : value;
  }
  return written;
}

const REFERENCE_TOKENS = new Set(["range", "range_beam", "range_ternary", "range_named", "structured"]);
const isReferenceToken = ({ type }: Token) => REFERENCE_TOKENS.has(type);

function treeOf(tokens: Token[]): Tree | undefined {
  try {
    return parse(tokens);
  } catch {
    return undefined;
  }
}

function referencesOf(tree: Tree, row: number, column: number): Reference[] {
  const found: Reference[] = [];
  // Names of LET and LAMBDA look like names of the workbook, and are none.
  const own = new Set<string>();
  for (const { part } of walk(tree)) {
    if (part.type === "LetExpression") for (const { id } of part.declarations) own.add(id.name.toLowerCase());
    if (part.type === "LambdaExpression") for (const { name } of part.params) own.add(name.toLowerCase());
  }
  for (const { part } of walk(tree)) {
    if (part.type !== "ReferenceIdentifier" || own.has(part.value.toLowerCase())) continue;
    found.push(readReference(part.value, part.kind, part.loc?.[0] ?? 0, row, column));
  }
  return found.sort((one, other) => one.start - other.start);
}

function wanders(tree: Tree): boolean {
  for (const { part } of walk(tree)) {
    if (part.type === "CallExpression" && WANDERERS.has(part.callee.name.toUpperCase())) return true;
    // A1:INDEX(...) ends where the function says.
    if (part.type === "BinaryExpression" && part.operator === ":") return true;
  }
  return false;
}
