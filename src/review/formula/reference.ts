import { parseA1Ref, parseStructRef, stringifyA1Ref, tokenize } from "@borgar/fx";
import { must } from "../../quantities/must";

/** One edge of a reference: fixed by a "$", or counted from the cell that the formula is in. */
export interface Edge {
  readonly at: number;
  readonly fixed: boolean;
}

/** A reference as it is written, with its relative edges counted from the formula's own cell. */
export interface Reference {
  /** As written in the formula that was read first. */
  readonly text: string;
  /** Where it is in the text of that formula. */
  readonly start: number;
  readonly end: number;
  /** The name of another workbook that it reaches into. */
  readonly workbook?: string;
  /** The sheet, where one is named. */
  readonly sheet?: string;
  /** Absent where it is a name, or a part of a table. An edge that is absent runs to the end of the sheet. */
  readonly edges?: { readonly top?: Edge; readonly bottom?: Edge; readonly left?: Edge; readonly right?: Edge };
  readonly name?: string;
  readonly table?: { readonly name: string; readonly columns: readonly string[]; readonly sections: readonly string[] };
}

type Kind = "name" | "range" | "beam" | "table";

/**
 * Reads one reference of a formula.
 *
 * @param text as it is in the formula: `$B$2`, `Rates!B2:B9`, `CrewRate`, `Jobs[@Depth]`.
 * @param kind what the parser took it for.
 * @param start where it is in the formula's text.
 * @param row the formula's own cell, to count relative edges from; likewise `column`.
 */
export function readReference(text: string, kind: Kind, start: number, row: number, column: number): Reference {
  const end = start + text.length;
  const base = { text, start, end };
  if (kind === "table") {
    const read = parseStructRef(text);
    const table = { name: read?.table ?? "", columns: read?.columns ?? [], sections: read?.sections ?? [] };
    return { ...base, ...contextOf(read?.context), table };
  }
  const read = parseA1Ref(text, { allowNamed: true, allowTernary: true });
  if (!read) return { ...base, name: text };
  const context = contextOf(read.context);
  if (!("range" in read)) return { ...base, ...context, name: read.name };
  const { top, left, bottom, right, $top, $left, $bottom, $right } = read.range;
  const edge = (name: string, at: number | null | undefined, fixed: boolean | null | undefined, own: number) =>
    at === null || at === undefined ? {} : { [name]: { at: fixed ? at : at - own, fixed: Boolean(fixed) } };
  return {
    ...base,
    ...context,
    edges: {
      ...edge("top", top, $top, row),
      ...edge("bottom", bottom ?? (kind === "beam" ? undefined : top), $bottom ?? $top, row),
      ...edge("left", left, $left, column),
      ...edge("right", right ?? (kind === "beam" ? undefined : left), $right ?? $left, column),
    },
  };
}

/** `[Old prices.xlsx]Rates` is a workbook and a sheet; a single part is a sheet, unless it is a file's name. */
function contextOf(context: readonly string[] = []): { workbook?: string; sheet?: string } {
  const [first, second] = context;
  if (first === undefined) return {};
  if (second !== undefined) return { workbook: first, sheet: second };
  return /\.xl\w{1,2}$|^\[?\d+\]?$/i.test(first) ? { workbook: first } : { sheet: first };
}

/** How far each edge of one reference moves. */
export interface Shift {
  /** Fix the reference with "$", too. */
  readonly fixed?: boolean;
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

const REFERENCES = new Set(["range", "range_beam", "range_ternary", "range_named", "structured"]);

/**
 * A formula with its references moved.
 *
 * @param formula with its "=".
 * @param references of that formula, in the order in which they are written.
 * @param shiftOf how far the edges of one reference move; undefined leaves it as it is.
 * @returns undefined where the formula cannot be rewritten: a reference would leave the sheet.
 */
export function shifted(
  formula: string,
  references: readonly Reference[],
  shiftOf: (reference: Reference, place: number) => Shift | undefined,
): string | undefined {
  const tokens = tokenize(formula, { withLocation: true, mergeRefs: true });
  const inText = tokens.filter(({ type }) => REFERENCES.has(type));
  // Names of LET are no references, and then the places do not match.
  if (inText.length !== references.length) return undefined;
  const written: string[] = [];
  let place = 0;
  for (const token of tokens) {
    if (!REFERENCES.has(token.type)) {
      written.push(token.value);
      continue;
    }
    const shift = shiftOf(must(references[place]), place);
    const moved = shift === undefined ? token.value : move(token.value, shift);
    if (moved === undefined) return undefined;
    written.push(moved);
    place++;
  }
  return written.join("");
}

function move(text: string, shift: Shift): string | undefined {
  const read = parseA1Ref(text, { allowNamed: false });
  if (!read || !("range" in read)) return text;
  const { range } = read;
  const by = (at: number | null | undefined, distance: number) =>
    at === null || at === undefined ? at : at + distance;
  const held = shift.fixed ? { $top: true, $left: true, $bottom: true, $right: true } : {};
  const moved = {
    ...range,
    ...held,
    top: by(range.top, shift.top) ?? null,
    left: by(range.left, shift.left) ?? null,
    bottom: by(range.bottom ?? range.top, shift.bottom) ?? null,
    right: by(range.right ?? range.left, shift.right) ?? null,
  };
  if ([moved.top, moved.left, moved.bottom, moved.right].some((at) => typeof at === "number" && at < 0))
    return undefined;
  return stringifyA1Ref({ ...read, range: moved });
}
