/** What a template may hold; more is told, and not cut off. */
export const MOST_ROWS = 2000;
export const MOST_COLUMNS = 100;
export const MOST_CELLS = 20_000;
/** Of a template's file, in characters. */
export const MOST_CHARACTERS = 1_000_000;
/** Things outside of it that a template may read. */
export const MOST_OUTSIDE = 100;
/** Templates kept in one workbook, and the characters that all of them take: they are saved with it each time. */
export const MOST_KEPT = 50;
export const MOST_KEPT_CHARACTERS = 1_500_000;
/** Files of the office's folder. */
export const MOST_OFFICE_FILES = 50;
/** The longest list to choose from that spreadsheet programs take, written out. */
export const MOST_LIST_CHARACTERS = 255;
/** A formula's length and depth in every spreadsheet program since 2007. */
export const MOST_FORMULA_CHARACTERS = 8192;
export const MOST_FORMULA_LEVELS = 64;

export const thousands = (count: number): string => count.toLocaleString("en-US");
