import {
  type Anchor,
  areaAddress,
  areaIn,
  cellAddress,
  common,
  overlap,
  sheetOfAddress,
} from "../../spreadsheet/areas";
import { queueShapes } from "../drawing/picture";
import { type DrawingRecord, drawingAt } from "../drawing/records";
import { areaOf, queueUsed, rangeAt } from "../read/areas";
import { areBlank, contentsAsWritten } from "../read/cells";
import { type OverwrittenContent, queueRestore, queueWidths } from "./overwritten";
import type { ReceiptPart, Written } from "./receipt";

/** A plan that was written, and what was there before: blank cells, or what someone wrote there meanwhile. */
interface WrittenPlan extends Pick<Written, "area" | "names"> {
  readonly before?: Written["before"] | undefined;
  readonly overwritten?: OverwrittenContent | undefined;
}

/** Tells what came with a plan from what was there, or is someone else's. */
export interface Ownership {
  readonly isPicture: (shape: { readonly id: string; readonly name: string }) => boolean;
  /** Whether tables in its place came with it. */
  readonly hasTables: boolean;
  /** Whether its cells were cleared before, so that what is in them by now is someone else's. */
  readonly isCleared?: boolean;
}

/**
 * Looks for what there is of a plan that was written, whole or in part; after the request it can be removed.
 *
 * @param worksheet its sheet, or a null object.
 */
export function queueRemoval(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  { area, names, before, overwritten }: WrittenPlan,
  { isPicture, hasTables, isCleared = false }: Ownership,
) {
  worksheet.load("name");
  worksheet.protection.load("protected");
  const target = rangeAt(worksheet, area);
  const tables = target.getTables(false);
  tables.load("items/name,items/style");
  const widthsNow = before && queueWidths(target, area.columns);
  if (overwritten) target.conditionalFormats.load("items/id");
  const shapes = queueShapes(worksheet);
  const named = names.map((name) => context.workbook.names.getItemOrNullObject(name));
  for (const item of named) item.load("name,formula");
  // Where the sheet is gone, so are the cells of its names.
  const isOurs = ({ formula }: Excel.NamedItem) =>
    String(formula).includes("#REF!") || (!worksheet.isNullObject && isIn(String(formula), worksheet.name, area));
  const ownItems = () => named.filter((item) => !item.isNullObject && isOurs(item));
  const removeNames = () => {
    for (const item of ownItems()) item.delete();
  };
  const restoreCells = () => {
    shapes.remove(isPicture);
    // The place had no table before; its cells are emptied below.
    if (hasTables) for (const table of tables.items) table.convertToRange();
    if (overwritten) overwritten.queueBack(target);
    else if (before) queueRestore(target, before, isCleared, widthsNow?.());
  };
  return {
    target,
    /** The tables in its place. */
    tables: (): readonly Excel.Table[] => (worksheet.isNullObject ? [] : tables.items),
    /** What there is beside its cells, of it and of others, to be compared. */
    seen: (): unknown[] => [shapes.names(), tables.items.map(({ name }) => name), ownItems().map(({ name }) => name)],
    isThere: (): boolean => !worksheet.isNullObject,
    isProtected: (): boolean => !worksheet.isNullObject && worksheet.protection.protected,
    /** Whether someone else's pictures are on its sheet. */
    hasOtherPictures: (): boolean => !worksheet.isNullObject && shapes.has((shape) => !isPicture(shape)),
    /** The names of the workbook for its cells. */
    ownNames: (): string[] => ownItems().map(({ name }) => name),
    removeNames,
    /** Queues its removal, with its sheet or without. Cells first: a sheet that refuses keeps its names. */
    remove: (withSheet: boolean): void => {
      if (!worksheet.isNullObject && withSheet) worksheet.delete();
      else if (!worksheet.isNullObject) restoreCells();
      removeNames();
    },
  };
}

/** Whether a name is for cells of an area; one for other cells came with something else, or was changed. */
function isIn(formula: string, sheetName: string, area: Written["area"]): boolean {
  const address = formula.replace(/^=/, "");
  const cells = areaIn(address);
  return cells !== undefined && sheetOfAddress(address) === sheetName && common(cells, area) !== undefined;
}

/** The looks by which a place is known that has moved. */
const LOOKS_COMPARED: Excel.CellPropertiesLoadOptions = {
  format: { borders: { color: true, style: true }, fill: { color: true }, font: { bold: true, color: true } },
};

/** Looks for what there is of a part of an insert, to undo it; readable after the request. */
export function queueInsertedPart(context: Excel.RequestContext, part: ReceiptPart, records: readonly DrawingRecord[]) {
  const { sheetId, area, newSheet } = part;
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheetId);
  const drawing = drawingAt(records, sheetId, area);
  const pictures = [...part.pictures, ...(drawing ? [drawing.shapeName] : [])];
  const removal = queueRemoval(context, worksheet, part, {
    isPicture: ({ name }) => pictures.includes(name),
    // They go when the cells are cleared.
    hasTables: false,
    isCleared: true,
  });
  const { target } = removal;
  target.load("formulas");
  const usedArea = queueUsed(worksheet, true);
  worksheet.charts.load("items/id");
  worksheet.comments.load("items/id");
  const holdsNothingElse = () => {
    const { charts, comments } = worksheet;
    if (removal.hasOtherPictures() || charts.items.length > 0 || comments.items.length > 0) return false;
    const used = usedArea();
    if (!used) return true;
    const end = { row: used.row + used.rows, column: used.column + used.columns };
    return end.row <= area.row + area.rows && end.column <= area.column + area.columns;
  };
  const changedCells = (formulas: readonly (readonly unknown[])[], withSheet: boolean) =>
    changedSince(part, formulas).map((address) => (withSheet ? `${worksheet.name}!${address}` : address));
  return {
    ...removal,
    part,
    worksheet,
    drawing,
    /** Whether its sheet was made for it, and holds nothing else. */
    isWholeSheet: () => !worksheet.isNullObject && newSheet && holdsNothingElse(),
    holds: (cell: Anchor) => overlap(area, { ...cell, rows: 1, columns: 1 }),
    where: () => `${worksheet.name} ${areaAddress(area)}`,
    /** Whether its cells hold nothing by now. */
    isBlank: () => areBlank(target.formulas),
    /** What there is of it, to be compared; not its looks. */
    seen: () => (worksheet.isNullObject ? [] : [target.formulas, ...removal.seen()]),
    changed: (withSheet: boolean) => changedCells(target.formulas, withSheet),
    /**
     * Queues that its cells are cleared, and before that, in the same request, a read of what they hold: what someone
     * typed into one right before can be restored.
     */
    queueClear: () => {
      const range = rangeAt(worksheet, area);
      const overwritten = range.getResizedRange(0, 0);
      overwritten.load("formulas,values,valueTypes,numberFormat");
      // The host fills the headings of a table that are cleared, so it has to be a plain range by then.
      const tables = removal.tables().map((table) => {
        const place = table.getRange();
        place.load("rowIndex,columnIndex,rowCount,columnCount");
        const { name, style } = table;
        table.convertToRange();
        return { name, style, place };
      });
      range.clear("Contents");
      // The host may leave the looks of a table in its cells, so they are read once it is a plain range.
      const looks = range.getCellProperties(LOOKS_COMPARED);
      const wasBlank = areBlank(target.formulas);
      return {
        /** Whether all of it has left its place since it was looked at. */
        isMoved: () => !wasBlank && areBlank(overwritten.formulas),
        /** Queues a read of the looks of its place before they are removed; tells after the request whether it is another place. */
        queueMissed: (): (() => boolean) => {
          const now = range.getCellProperties(LOOKS_COMPARED);
          return () => JSON.stringify(now.value) !== JSON.stringify(looks.value);
        },
        changed: (withSheet: boolean) => changedCells(overwritten.formulas, withSheet),
        queueBack: () => {
          for (const { name, style, place } of tables) {
            const table = worksheet.tables.add(rangeAt(worksheet, areaOf(place)), true);
            table.name = name;
            table.style = style;
          }
          // Another pane has cleared them, and may have restored the looks that were there before.
          if (areBlank(overwritten.formulas)) return;
          range.formulas = contentsAsWritten(overwritten);
          // A formula written to a plain cell takes the format of what it reads.
          range.numberFormat = overwritten.numberFormat;
        },
      };
    },
  };
}

export type InsertedPart = ReturnType<typeof queueInsertedPart>;

/** The cells with contents else than was written; one that was emptied holds nothing that could be lost. */
function changedSince({ area, formulas }: ReceiptPart, now: readonly (readonly unknown[])[]): string[] {
  return formulas.flatMap((cells, row) =>
    cells.flatMap((formula, column) => {
      const cell = now[row]?.[column];
      const isSame = cell === formula || cell === "";
      return isSame ? [] : [cellAddress({ row: area.row + row, column: area.column + column })];
    }),
  );
}
