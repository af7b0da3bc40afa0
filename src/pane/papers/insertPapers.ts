import type { DigNotice } from "../../quantities/calendar/digNotice";
import { insertPlans, newSheetName } from "../../workbook/change/insert";
import { WorkbookFailure } from "../../workbook/failure";
import type { JobDetails } from "./details";
import { crewPaper, type Job, noticePaper, orderPaper, type PaperSheet } from "./makePapers";

/** The papers that go onto sheets of this workbook. The proposal goes into a workbook of its own. */
export type PaperKind = "order" | "crew" | "notice";

/** Documents that are to be made. */
export interface Wanted {
  readonly title: string;
  readonly sheets: readonly PaperSheet[];
}

/** Documents that were made, with what it takes to make them again. */
export interface MadeSheets extends Wanted {
  readonly id: string;
  /** The names of their sheets. */
  readonly names: readonly string[];
  /** The ones that they replaced. */
  readonly before?: MadeSheets;
  /** Shows the earlier sheets again that were hidden for them. */
  readonly showOld?: () => Promise<void>;
}

/** What is asked where the workbook has such documents already. */
export interface Question {
  readonly wanted: Wanted;
  /** Names of sheets that are there. */
  readonly taken: readonly string[];
  /** What is removed where it is replaced: what this pane made last, which it can make again. Other sheets get hidden. */
  readonly replaces: MadeSheets | undefined;
}

export async function insertSheets({ title, sheets }: Wanted): Promise<MadeSheets> {
  const inserted = await insertPlans(title, sheets);
  if (!inserted.done)
    throw new WorkbookFailure(
      "The documents' sheet names are taken. Nothing was written. Rename those sheets, then try again.",
    );
  return { title, sheets, id: inserted.id, names: inserted.sheets.map(({ sheetName }) => sheetName) };
}

/** The names of documents that sheets of the workbook have, as they would be given to them. */
export function takenNames(wanted: readonly PaperSheet[], there: readonly string[]): string[] {
  return wanted.map(({ name }) => newSheetName(name, [])).filter((name) => there.some((one) => isSameName(one, name)));
}

const isSameName = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

/** Whether what was made last is replaced as a whole: nothing else would go with it. */
export function isReplaced({ names }: MadeSheets, taken: readonly string[], wanted: readonly PaperSheet[]): boolean {
  const coming = wanted.map(({ name }) => newSheetName(name, []));
  return (
    names.every((name) => coming.some((one) => isSameName(one, name))) &&
    taken.every((name) => names.some((one) => isSameName(one, name)))
  );
}

export async function papersOf(
  kinds: readonly PaperKind[],
  job: Job,
  details: JobDetails,
  notice: DigNotice | undefined,
): Promise<PaperSheet[]> {
  const made: PaperSheet[] = [];
  for (const kind of kinds) {
    if (kind === "order") made.push(orderPaper(job, details, notice));
    else if (kind === "crew") made.push(await crewPaper(job, details, notice));
    else if (notice) made.push(noticePaper(job, details, notice));
    else throw new WorkbookFailure("The dig notice needs a start date. Type the day you want to dig.");
  }
  return made;
}

export function titleOf(kinds: readonly PaperKind[], { job }: JobDetails): string {
  const what =
    kinds.length > 1 ? "documents" : kinds[0] === "order" ? "order" : kinds[0] === "crew" ? "crew sheet" : "dig notice";
  return job.trim() ? `${what} for ${job.trim()}` : what;
}
