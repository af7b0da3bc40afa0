import { parseA1Ref, parseStructRef } from "@borgar/fx";

/** One edge of a reference: fixed by a "$", or counted from the cell that the formula stands in. */
export interface Edge {
  readonly at: number;
  readonly fixed: boolean;
}

/** A reference as it is written, with its relative edges counted from the formula's own cell. */
export interface Reference {
  /** As written in the formula that was read first. */
  readonly text: string;
  /** Where it stands in the text of that formula. */
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
 * @param text as it stands in the formula: `$B$2`, `Rates!B2:B9`, `CrewRate`, `Jobs[@Depth]`.
 * @param kind what the parser took it for.
 * @param start where it stands in the formula's text.
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
