import { placeOf } from "../addresses";
import { damaged, mostCells } from "../limits";
import type { Steps } from "../steps";
import { type XmlElement, xmlSteps } from "./xml";

/** A text of a file. */
export interface FileText {
  readonly text: string;
  /** Whether parts of it have fonts of their own. */
  readonly isRich: boolean;
}

/** What a cell shows; an error by its sign, such as "#N/A". */
export type FileValue = string | number | boolean | { readonly error: string };

/** A cell as a file holds it, counted from 0. */
export interface FileCell {
  readonly row: number;
  readonly column: number;
  /** The number of its style. */
  readonly style: number;
  readonly value?: FileValue;
  /** Whether it is a day that is spelled out, which counts from nowhere. */
  readonly isDay?: boolean;
  /** The number of its text among those that cells share. */
  readonly textNumber?: number;
  readonly isRich?: boolean;
  readonly formula?: FileFormula;
}

export interface FileFormula {
  /** "normal", "array", "shared" or "dataTable": ECMA-376 18.18.6. */
  readonly kind: string;
  /** Without "="; "" where another cell holds it for this one, too. */
  readonly text: string;
  /** The cells for which it holds. */
  readonly area?: string;
  /** What it has in common with the cells that share it. */
  readonly shared?: string;
}

/** A row that is not as high as the others, does not show, is in a group, or has a look of its own. */
export interface FileRow {
  readonly row: number;
  readonly attributes: XmlElement["attributes"];
}

/** What a part with a sheet holds. */
export interface SheetContent {
  /** All but its rows and cells. */
  readonly xml: XmlElement;
  readonly rows: readonly FileRow[];
  readonly cells: readonly FileCell[];
  /** How many there are, also where they are too many to be kept. */
  readonly cellCount: number;
}

/** Reads a sheet. Rows and cells are collected while parsing; only the rest becomes a tree. */
export function* sheetSteps(bytes: Uint8Array, texts: readonly FileText[] | undefined): Steps<SheetContent> {
  const rows: FileRow[] = [];
  const cells: FileCell[] = [];
  let cellCount = 0;
  // A row or cell without an address comes right after the one before it.
  let row = -1;
  let column = -1;
  const xml = yield* xmlSteps(bytes, {
    opened(name, attributes) {
      if (name === "row") {
        row = attributes.r === undefined ? row + 1 : Number(attributes.r) - 1;
        column = -1;
        const { ht, hidden, outlineLevel, s } = attributes;
        if ([ht, hidden, outlineLevel, s].some((one) => one !== undefined)) rows.push({ row, attributes });
      } else if (name === "c") {
        const place = attributes.r === undefined ? { row, column: column + 1 } : placeOf(attributes.r);
        if (!place) throw damaged("its contents don't fit together");
        ({ row, column } = place);
      }
    },
    closed(element) {
      if (element.name !== "c") return element.name === "row";
      cellCount += 1;
      if (cellCount <= mostCells) cells.push({ row, column, ...cellOf(element, texts) });
      return true;
    },
  });
  return { xml, rows, cells, cellCount };
}

function cellOf({ attributes, children }: XmlElement, texts: readonly FileText[] | undefined) {
  const child = (name: string) => children.find((one) => one.name === name);
  const style = Number(attributes.s ?? 0);
  const f = child("f");
  const formula = f && formulaOf(f);
  const held = child("v")?.text;
  if (attributes.t === "s" && held !== undefined) {
    if (!texts) throw damaged("its texts are missing");
    const shared = texts[Number(held)];
    if (!shared) throw damaged("its contents don't fit together");
    return { style, value: shared.text, textNumber: Number(held), isRich: shared.isRich, ...(formula && { formula }) };
  }
  const inline = child("is");
  const { text: value, isRich } = inline
    ? textOf(inline)
    : { text: held === undefined ? undefined : heldValue(attributes.t ?? "n", held), isRich: false };
  const isDay = attributes.t === "d" && { isDay: true };
  return { style, isRich, ...isDay, ...(value !== undefined && { value }), ...(formula && { formula }) };
}

/** @param type of the cell: ECMA-376 18.18.11. */
function heldValue(type: string, held: string): FileValue | undefined {
  if (type === "str") return unmarked(held);
  if (type === "b") return held.trim() === "1" || held.trim() === "true";
  if (type === "e") return { error: held.trim() };
  const number = type === "d" ? dayOf(held.trim()) : Number.parseFloat(held);
  return Number.isFinite(number) ? number : undefined;
}

const millisecondsPerDay = 86_400_000;

/** The day that an ISO 8601 date is, counted as files do. */
function dayOf(date: string): number {
  const inUtc = /T.*(?:Z|[+-]\d\d:?\d\d)$|^[^T]*$/.test(date) ? date : `${date}Z`;
  return (Date.parse(inUtc) - Date.UTC(1899, 11, 30)) / millisecondsPerDay;
}

function formulaOf({ text, attributes }: XmlElement): FileFormula | undefined {
  const { t: kind = "normal", ref, si } = attributes;
  if (kind === "normal" && text === "") return undefined;
  return { kind, text, ...(ref !== undefined && { area: ref }), ...(si !== undefined && { shared: si }) };
}

/** The texts that cells point to by their numbers. */
export function readTexts(strings: XmlElement): FileText[] {
  return strings.children.filter(({ name }) => name === "si").map(textOf);
}

/** A text without its fonts, and without how it is spoken. */
function textOf({ children }: XmlElement): FileText {
  const runs = children.filter(({ name }) => name === "r");
  const texts = [...children, ...runs.flatMap((run) => run.children)].filter(({ name }) => name === "t");
  return { text: unmarked(texts.map(({ text }) => text).join("")), isRich: runs.length > 0 };
}

/** Text without a file's own signs for characters that XML has no place for: ECMA-376 22.9.2.19. */
function unmarked(text: string): string {
  return text.replace(/_x([\dA-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}
