import { withKeys } from "../estimate/printed";
import { OWN_AFTER } from "./jobHeadings";
import { jobColumns, type SheetBed } from "./sheetBed";

/** The range of one row of the working, from the first bed to the last column. */
export const across = (key: string, beds: readonly SheetBed[]) => `{${key}.1}:{${key}.${jobColumns(beds).length}}`;

/** Keys that stand for a row of the working. */
const BED_LIST = /^(?:beds|kinds)\.\w+$|^(?:edging|fabric)\d+\.(?:open|has|strips)$/;
const CLOSED = /^(edging\d+)\.closed$/;

/** An expression of the job as a cell's formula. */
export function printedJob(is: string, beds: readonly SheetBed[]): string {
  const last = jobColumns(beds).length;
  return withKeys(is, (key) => {
    const closed = CLOSED.exec(key);
    if (closed) return `{${closed[1]}.closed.1}:{${closed[1]}.inner.${last}}`;
    if (BED_LIST.test(key)) return across(key, beds);
    const column = /^lines\.(\w+)$/.exec(key)?.[1];
    return column && `{before1.${column}}:{after${OWN_AFTER}.${column}}`;
  });
}
