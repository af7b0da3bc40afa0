import { type FieldKey, fields } from "../../quantities/bed/fields";
import { type BedForm, textOf } from "../../quantities/bed/form";
import { readNumber, readShare } from "../../quantities/numberText";
import { type DraftCell, type DraftRow, TYPED_OVER } from "../compose";
import type { FormatName } from "../plan";
import { typed } from "../typed";

/**
 * What to write for a field: a length as it was taped, since the functions read tape text; any other number as a
 * number, since plain arithmetic does not.
 */
export function fieldContent(form: BedForm, key: FieldKey): string | number {
  const text = textOf(form, key);
  const { reads } = fields[key];
  if (text.trim() === "") return "";
  if (reads === "share") return readShare(text, key);
  return reads === "number" || reads === "whole" ? readNumber(text, key) : typed(text);
}

/** Headings of columns that hold numbers, which stand at the right of their cells. */
const NUMBER_HEADINGS = ["Taped", "Typed", "Reads as", "Quantity", "Unit cost", "Cost", "Markup", "Price"];

/** A heading across the block, with what its columns hold. */
export function sectionRow(heading: string, ...columns: readonly string[]): DraftRow {
  const cells = columns.map(
    (content): DraftCell => ({ content, look: NUMBER_HEADINGS.includes(content) ? "numberHeading" : "textHeading" }),
  );
  return { look: "section", cells: [{ content: heading }, ...cells] };
}

/** A row that is one piece of text in a look of its own. */
export function textRow(content: string, look: "note" | "caution", lead = ""): DraftRow {
  return {
    cells: [
      { content: lead, look: "label" },
      { content, look },
    ],
  };
}

/** An input: its label, what was typed, its unit, and for a length what the tape text reads as. */
export function fieldRow(form: BedForm, key: FieldKey, choices?: readonly string[]): DraftRow {
  const { label, unit, reads, note } = { note: "", ...fields[key] };
  const format: FormatName = reads === "share" ? "share" : "general";
  return inputRow(label, { content: fieldContent(form, key), key, format, ...(choices && { choices }) }, unit, {
    ...(reads === "feet" && { readsAs: "BED.FEET" }),
    ...(reads === "inches" && { readsAs: "BED.INCHES" }),
    note,
  });
}

export function inputRow(
  label: string,
  cell: DraftCell,
  unit: string,
  { readsAs, note }: { readonly readsAs?: string; readonly note?: string } = {},
): DraftRow {
  return {
    cells: [
      { content: label, look: "label" },
      { ...cell, look: "input" },
      { content: unit, look: "note" },
      readsAs && cell.key ? readsAsCell(cell.key, readsAs) : undefined,
      note ? { content: note, look: "note" } : undefined,
    ],
  };
}

/** The decimal that a taped cell reads as, under the key `length.decimal` beside `length`. */
export function readsAsCell(key: string, reader: string): DraftCell {
  return {
    content: `=IF(OR({${key}}="",{${key}}=0),0,${reader}({${key}}))`,
    key: `${key}.decimal`,
    format: "two",
    look: "aside",
  };
}

/** Something the block works out: its label, formula and unit, and how it comes about in words. */
export function resultRow(
  label: string,
  cell: DraftCell,
  unit: string,
  how = "",
  format: FormatName = "two",
): DraftRow {
  return {
    cells: [
      { content: label, look: "label" },
      { format, warnWhen: TYPED_OVER, look: "result", ...cell },
      { content: unit, look: "note" },
      undefined,
      how ? { content: how, look: "note" } : undefined,
    ],
  };
}

export const blankRow: DraftRow = { cells: [] };
