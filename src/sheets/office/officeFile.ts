import { isoDate } from "../../quantities/calendar/calendarDay";
import { readDate } from "../../quantities/dateText";
import { must } from "../../quantities/must";
import type { PastLine } from "../papers/pastJobs";

/** What every file of office settings says it is. */
export const OFFICE_FORMAT = "bedrow-office-settings";
/**
 * Rises when a file holds what earlier versions of the add-in can't read: 2 with the office's lists, 3 with stone that has a
 * unit, a step, or a minimum, so that no version of before takes a price per cubic yard for one per ton.
 */
export const OFFICE_VERSION = 3;

/** Which settings they are: whose, saved on which day, and which of the office's saves in a row. */
export interface OfficeVersion {
  readonly office: string;
  /** The day, as 2026-11-30. */
  readonly saved: string;
  /** 1 for the first file that the office saves, and one more for each after it. */
  readonly number: number;
}

/** A kind of stone with the office's own price. */
export interface OfficeStone {
  readonly name: string;
  /** Dollars a short ton, where it doesn't say what it is sold by. */
  readonly perTon?: number;
  /** What it is sold by, and dollars for one. */
  readonly soldBy?: string;
  readonly price?: number;
  /** The yard's step and minimum in that unit, where the office has typed them. */
  readonly orderStep?: number;
  readonly orderMinimum?: number;
  /** Short tons a loose cubic yard, where the office weighed it. */
  readonly tonsPerYard?: number;
  /** Whether the price is still a sample. */
  readonly sample?: true;
}

/** The price of a file's stone in its own unit; every stone of a file has one. */
export const stonePrice = ({ perTon, price }: OfficeStone): number => perTon ?? must(price);

/** A row of one of the office's lists. */
export interface OfficeRow {
  readonly name: string;
  /** What its columns hold, by the names of their cells; tape text and days such as 2026-11-30 as text. */
  readonly cells: Readonly<Record<string, number | string>>;
  /** Whether its price is still a sample. */
  readonly sample?: true;
}

/** The office's lists by the names of their columns of names. */
export type OfficeLists = Readonly<Record<string, readonly OfficeRow[]>>;

/** The Rates sheet as a file holds it. */
export interface OfficeRates {
  /** By the names of their cells: shares as fractions, tape text as text. */
  readonly values: Readonly<Record<string, number | string>>;
  /** Names of rates whose price is still a sample. */
  readonly samples: readonly string[];
  readonly stones: readonly OfficeStone[];
  /** A file of before has none. */
  readonly lists?: OfficeLists;
}

/** A line of the list of past jobs; its day as 2026-11-30, or no day where the list has none. */
export type OfficePastLine = Omit<PastLine, "date"> & { readonly date?: string };

/** What an office sets up once for all its workbooks, as its file holds it. */
export interface OfficeFile extends OfficeVersion {
  readonly format: typeof OFFICE_FORMAT;
  readonly version: number;
  readonly rates?: OfficeRates;
  /** Letterhead and terms, by the keys of `officeTexts`. */
  readonly texts?: Readonly<Record<string, string>>;
  readonly pastJobs?: readonly OfficePastLine[];
}

/** A file of some parts; what is undefined is left out. */
export function officeFile(version: OfficeVersion, parts: OfficeParts): OfficeFile {
  const { office, saved, number } = version;
  // Without them, an earlier add-in reads it as well.
  const hasUnits = parts.rates?.stones.some(({ soldBy, orderStep, orderMinimum }) =>
    [soldBy, orderStep, orderMinimum].some((cell) => cell !== undefined),
  );
  const fileVersion = hasUnits ? OFFICE_VERSION : parts.rates?.lists ? 2 : 1;
  return { format: OFFICE_FORMAT, version: fileVersion, office, saved, number, ...parts };
}

export type OfficeParts = Pick<OfficeFile, "rates" | "texts" | "pastJobs">;

/** The text of the file, with a rate or a line of past jobs a line, for people who compare two of them. */
export function officeText(file: OfficeFile): string {
  return `${JSON.stringify(file, undefined, 2).replace(A_LINE, oneLine)}\n`;
}

/** A stone, a row of a list with its cells, or a line of past jobs. */
const A_LINE = /\{[^{}[\]]*"(?:name|measure)":(?:[^{}[\]]|\{[^{}[\]]*\})*\}/g;
const oneLine = (part: string) => JSON.stringify(JSON.parse(part));

/**
 * A file's name for office settings.
 *
 * @example officeFileName({ office: "Fern & Stone", saved: "2026-11-30", number: 3 }) // "Fern Stone office settings 3.json"
 */
export function officeFileName({ office, number }: OfficeVersion): string {
  const plain = office
    .replace(/[^\p{L}\p{N} _-]/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  return `${plain.slice(0, LONGEST_IN_NAME).trim()} office settings ${number}.json`.trim();
}

const LONGEST_IN_NAME = 60;

/** @example versionWords({ office: "Fern & Stone", saved: "2026-11-30", number: 3 }) // "version 2026-11-30, no. 3" */
export function versionWords({ saved, number }: OfficeVersion): string {
  return `version ${saved}, no. ${number}`;
}

/** How the cell begins that says on the Rates sheet which settings were loaded. */
export const VERSION_ROW = "Office settings: ";

export function versionRow(version: OfficeVersion): string {
  return `${VERSION_ROW}${version.office}, ${versionWords(version)}`;
}

export function isSameVersion(one: OfficeVersion, other: OfficeVersion): boolean {
  return one.office === other.office && one.saved === other.saved && one.number === other.number;
}

/** The first day that the workbook's calendar and the real one agree on, and the last day that it has. */
const [FIRST_DAY, LAST_DAY] = [61, 2_958_465];

export const isCalendarDay = (date: number) => Number.isInteger(date) && date >= FIRST_DAY && date <= LAST_DAY;

export function pastLineToFile({ date, ...line }: PastLine): OfficePastLine {
  return isCalendarDay(date) ? { ...line, date: isoDate(date) } : line;
}

/** @throws Problem for a day that isn't in the calendar. */
export function pastLineFromFile({ date, ...line }: OfficePastLine): PastLine {
  return { ...line, date: date === undefined ? 0 : readDate(date, "Date") };
}
