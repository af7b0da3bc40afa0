import type { Plan } from "../../sheets/plan";
import { areasOfAddresses } from "../../spreadsheet/areas";
import {
  queueCellStyles,
  queuePlainFont,
  queuePlainStyle,
  RESTORABLE_PROPERTIES,
  type StyleBefore,
  styleBeforeOf,
} from "../read/cellStyle";
import { areBlank, contentsAsWritten } from "../read/cells";
import type { PlaceBefore } from "./receipt";

/** What a cell's number format is after a clearing. */
export const PLAIN_FORMAT = "General";

/** Asks how a blank place looks; readable after a sync. */
export function queueBefore(context: Excel.RequestContext, target: Excel.Range): { read: () => PlaceBefore } {
  target.load("numberFormat");
  const plainFont = queuePlainFont(context);
  const properties = target.getCellProperties(RESTORABLE_PROPERTIES);
  const columns = target.getColumnProperties({ format: { columnWidth: true } });
  return {
    read: () => {
      const numberFormat = target.numberFormat as string[][];
      const plain = plainFont();
      const dress = properties.value.map((cells) => cells.map((cell) => styleBeforeOf(cell, plain)));
      return {
        columnWidths: columns.value.map(({ format }) => format?.columnWidth ?? 0),
        ...(numberFormat.some((cells) => cells.some((format) => format !== PLAIN_FORMAT)) && { numberFormat }),
        ...(dress.some((cells) => cells.some((cell) => cell)) && { looks: distinctLooks(dress) }),
      };
    },
  };
}

/**
 * Asks how wide the columns of a place are, in points; readable after a sync.
 *
 * @param columns how many it has. It is asked of each, which can be done on a sheet that may be gone.
 */
export function queueWidths(target: Excel.Range, columns: number): () => readonly number[] {
  const formats = Array.from({ length: columns }, (_, index) => target.getColumn(index).format);
  for (const format of formats) format.load("columnWidth");
  return () => formats.map(({ columnWidth }) => columnWidth);
}

/**
 * Queues everything that makes a written place as blank, and as it looked, as before.
 *
 * @param keepsContents whether only its looks go, for cells that were emptied before.
 * @param widthsNow of its columns: those that somebody has set since it was written stay as they are.
 */
export function queueRestore(
  target: Excel.Range,
  before: PlaceBefore,
  keepsContents = false,
  widthsNow?: readonly number[],
): void {
  target.unmerge();
  target.conditionalFormats.clearAll();
  target.dataValidation.clear();
  target.clear(keepsContents ? "Formats" : "All");
  queueLooksBack(target, before, widthsNow);
}

/** Queues the looks of a place that was cleared, and its widths, as they were. */
export function queueLooksBack(target: Excel.Range, before: PlaceBefore, widthsNow?: readonly number[]): void {
  const { numberFormat, looks, columnWidths, widthsWritten } = before;
  if (numberFormat) target.numberFormat = numberFormat as string[][];
  // After the clearing all cells are plain, so that only those that were not plain are written.
  if (looks) {
    queueCellStyles(
      target,
      looks.cells.map((row) => row.map((index) => looks.distinct[index])),
    );
  }
  columnWidths.forEach((width, index) => {
    if (widthsNow && widthsWritten && widthsNow[index] !== widthsWritten[index]) return;
    target.getColumn(index).format.columnWidth = width;
  });
}

/** A plain cell has the index -1. */
function distinctLooks(dress: readonly (readonly (StyleBefore | undefined)[])[]): NonNullable<PlaceBefore["looks"]> {
  const indexes = new Map<string, number>();
  const distinct: StyleBefore[] = [];
  const cells = dress.map((row) =>
    row.map((cell) => {
      if (!cell) return -1;
      const text = JSON.stringify(cell);
      const known = indexes.get(text);
      if (known !== undefined) return known;
      indexes.set(text, distinct.length);
      return distinct.push(cell) - 1;
    }),
  );
  return { distinct, cells };
}

/*
 * Between the look at a place and the write to it, another pane or another person can have written there. The host has
 * no way of holding a place, so the write reads once more what stands there right before it writes, in the same
 * request: what it has covered can be told, and put back.
 */

/** What somebody else had written where a plan was written. */
export interface OverwrittenContent {
  /** Queues what stood there in the place of what was written over it. Its colour rules are loaded. */
  readonly queueBack: (target: Excel.Range) => void;
}

/** Asks what stands at a place that is written to next; readable after a sync. */
export function queueOverwritten(
  context: Excel.RequestContext,
  target: Excel.Range,
  { choices }: Pick<Plan, "choices">,
): () => OverwrittenContent | undefined {
  // An object of its own, since what is written to a range counts as read from it.
  const there = target.getResizedRange(0, 0);
  there.load("rowIndex,columnIndex,formulas,values,valueTypes");
  there.conditionalFormats.load("items/id");
  const tables = there.getTables(false);
  tables.load("items/name");
  const merged = there.getMergedAreasOrNullObject();
  merged.load("address");
  const before = queueBefore(context, there);
  const plainFont = queuePlainFont(context);
  const lists = choices.map(({ area }) => {
    const cells = there.getCell(area.row, area.column).getResizedRange(area.rows - 1, area.columns - 1);
    cells.dataValidation.load("type,rule,errorAlert");
    return { area, validation: cells.dataValidation };
  });
  return () => {
    const isBlank = areBlank(there.formulas);
    if (isBlank && merged.isNullObject && tables.items.length === 0) return undefined;
    const rules = there.conditionalFormats.items.map(({ id }) => id);
    return {
      queueBack: (range) => {
        range.unmerge();
        range.clear("Contents");
        for (const rule of range.conditionalFormats.items) if (!rules.includes(rule.id)) rule.delete();
        queuePlainStyle(range, plainFont());
        range.numberFormat = there.formulas.map((cells) => cells.map(() => PLAIN_FORMAT));
        queueLooksBack(range, before.read());
        range.formulas = contentsAsWritten(there);
        for (const { area, validation } of lists) {
          const cells = range.getCell(area.row, area.column).getResizedRange(area.rows - 1, area.columns - 1);
          cells.dataValidation.clear();
          if (validation.type === "None" || !validation.rule) continue;
          cells.dataValidation.rule = validation.rule;
          cells.dataValidation.errorAlert = validation.errorAlert;
        }
        for (const { row, column, rows, columns } of merged.isNullObject ? [] : areasOfAddresses(merged.address)) {
          range
            .getCell(row - there.rowIndex, column - there.columnIndex)
            .getResizedRange(rows - 1, columns - 1)
            .merge();
        }
      },
    };
  };
}

type Cells = readonly (readonly unknown[])[];

/** What was written to a place, or was to be. */
interface Wanted {
  readonly formulas: Cells;
  readonly formats: Cells;
}

/**
 * Looks what stands in a place by now, so that what somebody else has typed there outlives what is taken off; readable
 * after a sync.
 *
 * @param wanted what was to be written: the plan's own, where the host has not said how it holds it.
 * @param written the formulas as the host gave them back after the write, where it did.
 */
export function queueTypedSince(target: Excel.Range, wanted: Wanted, written: Cells | undefined) {
  // An object of its own, since what is written to a range counts as read from it.
  const there = target.getResizedRange(0, 0);
  there.load("formulas,values,valueTypes,numberFormat");
  const isKept = (row: number, column: number): boolean => {
    const now = there.formulas[row]?.[column];
    return written ? now === written[row]?.[column] : holds(now, wanted.formulas[row]?.[column]);
  };
  const isFilled = (row: number, column: number) => there.formulas[row]?.[column] !== "";
  /** All cells are written at once, so that most of them stand, or none: one of them may be typed alike by chance. */
  const isBegun = (): boolean => {
    if (written) return true;
    const planned = wanted.formulas.flatMap((cells, row) =>
      cells.flatMap((cell, column) => (cell === "" ? [] : [isKept(row, column)])),
    );
    return planned.filter((kept) => kept).length * 2 > planned.length;
  };
  const isTheirs = (row: number, column: number): boolean => {
    if (!isFilled(row, column) || isKept(row, column)) return false;
    // The host may put a formula of ours into other words.
    return written !== undefined || !(isBegun() && areFormulas(there.formulas[row]?.[column], wanted, row, column));
  };
  const each = <T>(read: (row: number, column: number) => T): T[][] =>
    there.formulas.map((cells, row) => cells.map((_, column) => read(row, column)));
  const formatNow = (row: number, column: number) => String(there.numberFormat[row]?.[column]);
  const isOurFormat = (row: number, column: number) => formatNow(row, column) === wanted.formats[row]?.[column];
  return {
    /** Whether nothing stands there. */
    isBlank: (): boolean => areBlank(there.formulas),
    /** Whether the cells were written at all. */
    isBegun,
    /** Queues what others have typed over a place that was made as it was before. A blank (null) leaves a cell alone. */
    queueTheirs: (range: Excel.Range): void => {
      const theirs = each(isTheirs);
      if (!theirs.some((cells) => cells.includes(true))) return;
      const contents = contentsAsWritten(there);
      const ifTheirs = <T>(read: (row: number, column: number) => T) =>
        each((row, column) => (theirs[row]?.[column] ? read(row, column) : null));
      range.numberFormat = ifTheirs((row, column) =>
        isOurFormat(row, column) ? null : formatNow(row, column),
      ) as string[][];
      range.formulas = ifTheirs((row, column) => contents[row]?.[column] ?? "") as string[][];
    },
    /** Queues the number formats alone, which are written before the cells; a format that came with typing stays. */
    queueFormatsBack: (range: Excel.Range, { numberFormat }: PlaceBefore): void => {
      range.numberFormat = each((row, column) => {
        if (isFilled(row, column) && !isOurFormat(row, column)) return null;
        return numberFormat?.[row]?.[column] ?? PLAIN_FORMAT;
      }) as string[][];
    },
  };
}

/** Whether a cell holds what a plan has for it; the host leaves the text mark out. */
function holds(now: unknown, planned: unknown): boolean {
  if (typeof planned !== "string") return now === planned;
  return plain(String(now)) === plain(planned.replace(/^'/, ""));
}

/** The host writes some names in capitals, and sets spaces its own way. */
const plain = (text: string) => (text.startsWith("=") ? text.replace(/[\s@]/g, "").toUpperCase() : text);

const areFormulas = (now: unknown, { formulas }: Wanted, row: number, column: number): boolean =>
  [now, formulas[row]?.[column]].every((content) => typeof content === "string" && content.startsWith("="));
