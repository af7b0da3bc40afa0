import { isObject } from "../../sheets/kept";
import type { Paper } from "../../sheets/papers/paper";
import type { StoredThing } from "../keep/stored";

/** What the estimator types about a job, as typed. Blank text leaves a blank on paper. */
export interface JobDetails {
  readonly job: string;
  /** The letterhead: the office's name, address, phone, and contractor's license or registration number. */
  readonly office: string;
  readonly officeAddress: string;
  readonly officePhone: string;
  readonly officeLicense: string;
  readonly proposalNumber: string;
  readonly customer: string;
  readonly place: string;
  readonly paper: Paper;
  readonly start: string;
  readonly noticeDays: string;
  /** "yes" where the place keeps the federal holidays. */
  readonly federal: "yes" | "no";
  /** One a line: a date, then a name. */
  readonly ownHolidays: string;
  readonly marksDays: string;
  readonly marksCounted: "calendar" | "working";
  readonly byBed: "bed" | "sum";
  readonly validDays: string;
  /** Percent of the total due that is paid on signing; "" for no deposit. */
  readonly depositPercent: string;
  /** One a line. */
  readonly notIncluded: string;
  readonly terms: string;
}

export const startingDetails: JobDetails = {
  job: "",
  office: "",
  officeAddress: "",
  officePhone: "",
  officeLicense: "",
  proposalNumber: "",
  customer: "",
  place: "",
  paper: "letter",
  start: "",
  noticeDays: "2",
  federal: "yes",
  ownHolidays: "",
  marksDays: "",
  marksCounted: "calendar",
  byBed: "bed",
  validDays: "30",
  depositPercent: "",
  notIncluded: [
    "Plants, soil amendments, and sprinkler work",
    "Repair of private lines that weren't marked",
    "Rock, roots, or rubble that can't be dug by hand",
    "Permits, if one is required",
  ].join("\n"),
  terms: "",
};

/** What was typed outlives a closed pane, in the browser's own storage. */
export const storedDetails: StoredThing<JobDetails> = {
  key: () => "Bedrow.papers",
  oldKey: "Bedrow.papers.1",
  version: 1,
  read: detailsOf,
  // Panes of several workbooks share the details: each keeps what was typed into it, and leaves the rest.
  join: (there, before, now) => ({ ...there, ...changed(before, now) }),
};

/** Details that are chosen from a few. */
const CHOICES: Readonly<Partial<Record<string, readonly string[]>>> = {
  paper: ["letter", "a4"],
  federal: ["yes", "no"],
  marksCounted: ["calendar", "working"],
  byBed: ["bed", "sum"],
} satisfies { readonly [Key in keyof JobDetails]?: readonly JobDetails[Key][] };

/** What is not there has its starting value. */
function detailsOf(content: unknown): JobDetails | undefined {
  if (!isObject(content)) return undefined;
  const known = Object.entries(content).filter(([key]) => Object.hasOwn(startingDetails, key));
  const isSound = known.every(
    ([key, text]) =>
      typeof text === "string" && (!Object.hasOwn(CHOICES, key) || CHOICES[key]?.includes(text) === true),
  );
  return isSound ? { ...startingDetails, ...Object.fromEntries(known) } : undefined;
}

function changed(before: JobDetails, now: JobDetails): Partial<JobDetails> {
  const keys = Object.keys(now) as (keyof JobDetails)[];
  return Object.fromEntries(keys.filter((key) => now[key] !== before[key]).map((key) => [key, now[key]]));
}

/** The lines of a text that say something. */
export function linesOf(text: string): string[] {
  return text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
}
