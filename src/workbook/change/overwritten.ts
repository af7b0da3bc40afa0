import type { Plan } from "../../sheets/plan";
import { areasOfAddresses } from "../../spreadsheet/areas";
import { rangeInside } from "../read/areas";
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

/** The number format of a cell after clearing. */
const PLAIN_FORMAT = "General";

/** Asks how a blank place looks; readable after the request. */
export function queueBefore(context: Excel.RequestContext, target: Excel.Range): () => PlaceBefore {
  target.load("numberFormat");
  const plainFont = queuePlainFont(context);
  const properties = target.getCellProperties(RESTORABLE_PROPERTIES);
  const columns = target.getColumnProperties({ format: { columnWidth: true } });
  return () => {
    const numberFormat = target.numberFormat as string[][];
    const plain = plainFont();
    const styles = properties.value.map((cells) => cells.map((cell) => styleBeforeOf(cell, plain)));
    return {
      columnWidths: columns.value.map(({ format }) => format?.columnWidth ?? 0),
      ...(numberFormat.some((cells) => cells.some((format) => format !== PLAIN_FORMAT)) && { numberFormat }),
      ...(styles.some((cells) => cells.some((cell) => cell)) && { looks: distinctLooks(styles) }),
    };
  };
}

/** A plain cell has the index -1. */
function distinctLooks(styles: readonly (readonly (StyleBefore | undefined)[])[]): NonNullable<PlaceBefore["looks"]> {
  const indexes = new Map<string, number>();
  const distinct: StyleBefore[] = [];
  const cells = styles.map((row) =>
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

/**
 * Asks how wide the columns of a place are, in points; readable after the request.
 *
 * @param columns how many it has. Each is asked by itself, which works on a sheet that may be gone.
 */
export function queueWidths(target: Excel.Range, columns: number): () => readonly number[] {
  const formats = Array.from({ length: columns }, (_, index) => target.getColumn(index).format);
  for (const format of formats) format.load("columnWidth");
  return () => formats.map(({ columnWidth }) => columnWidth);
}

/**
 * Queues that a place that was written to is blank, and looks as it did before.
 *
 * @param keepsContents whether only its looks go, for cells that were cleared before.
 * @param widthsNow of its columns: those that someone has set since it was written stay.
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

/** Queues the looks and widths that a place had before it was cleared. */
export function queueLooksBack(target: Excel.Range, before: PlaceBefore, widthsNow?: readonly number[]): void {
  const { numberFormat, looks, columnWidths, widthsWritten } = before;
  if (numberFormat) target.numberFormat = numberFormat as string[][];
  // All cells are plain after clearing, so only those that were not are written.
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

/** What someone else had written where a plan was written. */
export interface OverwrittenContent {
  /** Queues it in the place of what was written over it. The color rules of the range are loaded. */
  readonly queueBack: (target: Excel.Range) => void;
}

/** Asks what is at a place that is written to next; readable after the request, and undefined for a blank place. */
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
    const { dataValidation } = rangeInside(there, area);
    dataValidation.load("type,rule,errorAlert");
    return { area, dataValidation };
  });
  return () => {
    if (areBlank(there.formulas) && merged.isNullObject && tables.items.length === 0) return undefined;
    const rules = there.conditionalFormats.items.map(({ id }) => id);
    return {
      queueBack: (range) => {
        range.unmerge();
        range.clear("Contents");
        for (const rule of range.conditionalFormats.items) if (!rules.includes(rule.id)) rule.delete();
        queuePlainStyle(range, plainFont());
        range.numberFormat = there.formulas.map((cells) => cells.map(() => PLAIN_FORMAT));
        queueLooksBack(range, before());
        range.formulas = contentsAsWritten(there);
        for (const { area, dataValidation: list } of lists) {
          const { dataValidation } = rangeInside(range, area);
          dataValidation.clear();
          if (list.type === "None" || !list.rule) continue;
          dataValidation.rule = list.rule;
          dataValidation.errorAlert = list.errorAlert;
        }
        for (const area of merged.isNullObject ? [] : areasOfAddresses(merged.address)) {
          const place = { ...area, row: area.row - there.rowIndex, column: area.column - there.columnIndex };
          rangeInside(range, place).merge();
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
 * Asks what is in a place by now, so that what someone else has typed there survives an undo; readable after the
 * request.
 *
 * @param wanted what was to be written: the plan's own, where the host has not said how it holds it.
 * @param written the formulas as the host gave them back after the write, where it did.
 */
export function queueTypedSince(target: Excel.Range, wanted: Wanted, written: Cells | undefined) {
  // An object of its own, since what is written to a range counts as read from it.
  const there = target.getResizedRange(0, 0);
  there.load("formulas,values,valueTypes,numberFormat");
  const now = (row: number, column: number): unknown => there.formulas[row]?.[column];
  const planned = (row: number, column: number): unknown => wanted.formulas[row]?.[column];
  const isFilled = (row: number, column: number) => now(row, column) !== "";
  const isKept = (row: number, column: number): boolean =>
    written ? now(row, column) === written[row]?.[column] : holds(now(row, column), planned(row, column));
  /** All cells are written at once, so most of them are there, or none: one of them may be typed alike by chance. */
  const isBegun = (): boolean => {
    if (written) return true;
    const kept = wanted.formulas.flatMap((cells, row) =>
      cells.flatMap((cell, column) => (cell === "" ? [] : [isKept(row, column)])),
    );
    return kept.filter(Boolean).length * 2 > kept.length;
  };
  const isTheirs = (row: number, column: number): boolean => {
    if (!isFilled(row, column) || isKept(row, column)) return false;
    // The host may rephrase a formula of ours.
    const isRephrased = () => isFormula(now(row, column)) && isFormula(planned(row, column)) && isBegun();
    return written !== undefined || !isRephrased();
  };
  const each = <T>(read: (row: number, column: number) => T): T[][] =>
    there.formulas.map((cells, row) => cells.map((_, column) => read(row, column)));
  const formatNow = (row: number, column: number) => String(there.numberFormat[row]?.[column]);
  const isOurFormat = (row: number, column: number) => formatNow(row, column) === wanted.formats[row]?.[column];
  return {
    /** Whether nothing is there. */
    isBlank: (): boolean => areBlank(there.formulas),
    /** Whether the cells were written at all. */
    isBegun,
    /** Queues what others have typed, over a place that was restored. A blank (null) leaves a cell alone. */
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
  return normalized(String(now)) === normalized(planned.replace(/^'/, ""));
}

/** The host writes some names in capitals, and sets spaces its own way. */
const normalized = (text: string) => (isFormula(text) ? text.replace(/[\s@]/g, "").toUpperCase() : text);

const isFormula = (content: unknown): content is string => typeof content === "string" && content.startsWith("=");
