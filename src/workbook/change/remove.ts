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
import { areaOf } from "../read/areas";
import { areBlank, contentsAsWritten } from "../read/cells";
import { type OverwrittenContent, queueRestore, queueWidths } from "./overwritten";
import type { ReceiptPart, Written } from "./receipt";

/** What there was at the place of a plan: blank cells and their looks, or what somebody wrote there meanwhile. */
interface Earlier {
  readonly before?: Written["before"] | undefined;
  readonly stood?: OverwrittenContent | undefined;
}

/** Tells what a plan brought from what was there, or came from somebody else. */
export interface Own {
  readonly isPicture: (shape: { readonly id: string; readonly name: string }) => boolean;
  /** Whether tables in its place are its own; it was not written over one. */
  readonly hasTables: boolean;
  /** Whether its cells were emptied before, so that what stands in them by now is somebody else's. */
  readonly isEmptied?: boolean;
}

/**
 * Looks for what there is of a plan that was written, whole or in part; after a sync it can be taken off.
 *
 * @param worksheet its sheet, or a null object.
 */
export function queueRemoval(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  { area, names, before, stood }: Pick<Written, "area" | "names"> & Earlier,
  { isPicture, hasTables, isEmptied = false }: Own,
) {
  worksheet.load("name");
  worksheet.protection.load("protected");
  const target = worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
  const tables = target.getTables(false);
  tables.load("items/name,items/style");
  const widthsNow = before && queueWidths(target, area.columns);
  if (stood) target.conditionalFormats.load("items/id");
  const shapes = queueShapes(worksheet);
  const named = names.map((name) => context.workbook.names.getItemOrNullObject(name));
  for (const item of named) item.load("name,formula");
  // Where the sheet is gone, so are the cells that its names stood for.
  const isOurs = ({ formula }: Excel.NamedItem) =>
    isGone(String(formula)) || (!worksheet.isNullObject && isIn(String(formula), worksheet.name, area));
  const own = () => named.filter((item) => !item.isNullObject && isOurs(item));
  const takeOffNames = () => {
    for (const item of own()) item.delete();
  };
  const takeOffCells = () => {
    shapes.remove(isPicture);
    // The place had no table before; its cells are emptied below.
    if (hasTables) for (const table of tables.items) table.convertToRange();
    if (stood) stood.queueBack(target);
    else if (before) queueRestore(target, before, isEmptied, widthsNow?.());
  };
  return {
    target,
    /** The tables in its place. */
    tables: (): readonly Excel.Table[] => (worksheet.isNullObject ? [] : tables.items),
    /** What there is of it beside its cells, and of others, to be compared. */
    seen: (): unknown[] => [shapes.names(), tables.items.map(({ name }) => name), own().map(({ name }) => name)],
    isThere: (): boolean => !worksheet.isNullObject,
    isProtected: (): boolean => !worksheet.isNullObject && worksheet.protection.protected,
    /** Whether somebody else's pictures lie on its sheet. */
    hasOtherPictures: (): boolean => !worksheet.isNullObject && shapes.has((shape) => !isPicture(shape)),
    /** Names of the workbook that stand for its cells. */
    ownNames: (): string[] => own().map(({ name }) => name),
    takeOffNames,
    /** Queues its removal: of its sheet, too, or only of itself. Cells first: a sheet that refuses keeps its names. */
    takeOff: (withSheet: boolean): void => {
      if (!worksheet.isNullObject && withSheet) worksheet.delete();
      else if (!worksheet.isNullObject) takeOffCells();
      takeOffNames();
    },
  };
}

const isGone = (formula: string): boolean => formula.includes("#REF!");

/** Whether a name stands for cells of an area; one that stands elsewhere came with something else, or was changed. */
function isIn(formula: string, sheetName: string, area: Written["area"]): boolean {
  const address = formula.replace(/^=/, "");
  const cells = areaIn(address);
  return cells !== undefined && sheetOfAddress(address) === sheetName && common(cells, area) !== undefined;
}

/** The looks by which a place that has moved is told. */
const LOOKS_COMPARED: Excel.CellPropertiesLoadOptions = {
  format: { borders: { color: true, style: true }, fill: { color: true }, font: { bold: true, color: true } },
};

/** What there is by now of a part that was inserted; readable after a sync. */
export function queueInsertedPart(context: Excel.RequestContext, part: ReceiptPart, records: readonly DrawingRecord[]) {
  const { sheetId, area, newSheet } = part;
  const worksheet = context.workbook.worksheets.getItemOrNullObject(sheetId);
  const drawing = drawingAt(records, sheetId, area);
  const pictures = [...part.pictures, ...(drawing ? [drawing.shapeName] : [])];
  const found = queueRemoval(context, worksheet, part, {
    isPicture: ({ name }) => pictures.includes(name),
    // They go when the cells are emptied.
    hasTables: false,
    isEmptied: true,
  });
  const { target, isProtected, takeOff, ownNames } = found;
  target.load("formulas");
  const used = worksheet.getUsedRangeOrNullObject(true);
  used.load("rowIndex,columnIndex,rowCount,columnCount");
  worksheet.charts.load("items/id");
  worksheet.comments.load("items/id");
  const holdsNothingElse = () => {
    if (found.hasOtherPictures() || worksheet.charts.items.length > 0 || worksheet.comments.items.length > 0)
      return false;
    if (used.isNullObject) return true;
    const { row, column, rows, columns } = areaOf(used);
    return row + rows <= area.row + area.rows && column + columns <= area.column + area.columns;
  };
  const named = (cells: readonly string[], withSheet: boolean) =>
    cells.map((address) => (withSheet ? `${worksheet.name}!${address}` : address));
  return {
    part,
    worksheet,
    drawing,
    isProtected,
    takeOff,
    ownNames,
    isThere: found.isThere,
    /** Whether its sheet was made for it, and holds nothing but it. */
    isWholeSheet: () => !worksheet.isNullObject && newSheet && holdsNothingElse(),
    holds: (cell: Anchor) => overlap(area, { ...cell, rows: 1, columns: 1 }),
    where: () => `${worksheet.name} ${areaAddress(area)}`,
    /** Whether its cells hold nothing by now. */
    isBlank: () => areBlank(target.formulas),
    /** What there is of it, to be compared; looks are not looked at. */
    seen: () => (worksheet.isNullObject ? [] : [target.formulas, ...found.seen()]),
    changed: (withSheet: boolean) => named(changedCells(part, target.formulas), withSheet),
    /**
     * Queues that its cells are emptied, and first, in the same request, what they hold: whoever typed into one right
     * before is not overwritten, since all of it can stand again.
     */
    queueEmptied: () => {
      const range = worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
      const covered = range.getResizedRange(0, 0);
      covered.load("formulas,values,valueTypes,numberFormat");
      // The host fills the headings of a table that are emptied, so it is none by then.
      const tables = found.tables().map((table) => {
        const place = table.getRange();
        place.load("rowIndex,columnIndex,rowCount,columnCount");
        const { name, style } = table;
        table.convertToRange();
        return { name, style, place };
      });
      range.clear("Contents");
      // The host may leave the looks of a table in its cells, so that they are looked at once it is none.
      const looks = range.getCellProperties(LOOKS_COMPARED);
      const wasBlank = areBlank(target.formulas);
      return {
        /** Whether all of it has left its place since it was looked at. */
        isMoved: () => !wasBlank && areBlank(covered.formulas),
        /** Queues how its place looks before that is taken off; after a sync it tells whether that is another place. */
        queueMissed: (): (() => boolean) => {
          const now = range.getCellProperties(LOOKS_COMPARED);
          return () => JSON.stringify(now.value) !== JSON.stringify(looks.value);
        },
        changed: (withSheet: boolean) => named(changedCells(part, covered.formulas), withSheet),
        queueBack: () => {
          for (const { name, style, place } of tables) {
            const { row, column, rows, columns } = areaOf(place);
            const table = worksheet.tables.add(worksheet.getRangeByIndexes(row, column, rows, columns), true);
            table.name = name;
            table.style = style;
          }
          // Another pane has emptied them, and may have put back the looks that were there before.
          if (areBlank(covered.formulas)) return;
          range.formulas = contentsAsWritten(covered);
          // A formula written to a plain cell takes the format of what it reads.
          range.numberFormat = covered.numberFormat;
        },
      };
    },
  };
}

export type InsertedPart = ReturnType<typeof queueInsertedPart>;

function changedCells({ area, formulas }: ReceiptPart, now: readonly (readonly unknown[])[]): string[] {
  const changed: string[] = [];
  formulas.forEach((cells, row) => {
    cells.forEach((formula, column) => {
      const cell = now[row]?.[column];
      // A cell that was emptied since holds nothing that could be lost.
      if (cell !== formula && cell !== "") {
        changed.push(cellAddress({ row: area.row + row, column: area.column + column }));
      }
    });
  });
  return changed;
}
