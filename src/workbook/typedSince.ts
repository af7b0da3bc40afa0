import { PLAIN_FORMAT } from "./before";
import { areBlank, contentsAsWritten } from "./contents";
import type { PlaceBefore } from "./receipt";

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
