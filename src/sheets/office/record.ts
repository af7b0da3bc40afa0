import { isObject } from "../kept";
import { OFFICE_FORMAT, OFFICE_VERSION, type OfficeRates, type OfficeVersion } from "./officeFile";
import { officeOf } from "./readOffice";

/** Which office settings a workbook uses, and the rates that it got from them. */
export interface OfficeRecord extends OfficeVersion {
  /** Left out where the settings had no rates. */
  readonly rates?: OfficeRates;
}

/** The record, of what JSON gave; undefined where it is damaged. */
export function officeRecordOf(content: unknown): OfficeRecord | undefined {
  if (!isObject(content)) return undefined;
  const { office, saved, number, rates } = content;
  const file = {
    format: OFFICE_FORMAT,
    version: OFFICE_VERSION,
    office,
    saved,
    number,
    ...(rates !== undefined && { rates }),
  };
  const read = officeOf(file);
  return read.ok ? recordOf(read.file, read.file.rates) : undefined;
}

/** What a workbook keeps of settings that it uses. */
export function recordOf({ office, saved, number }: OfficeVersion, rates: OfficeRates | undefined): OfficeRecord {
  return { office, saved, number, ...(rates && { rates }) };
}
