import type { Paper } from "../../sheets/papers/paper";

/** What the estimator types about a job, as typed. Blank text leaves a blank on paper. */
export interface JobDetails {
  readonly job: string;
  readonly office: string;
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
  /** One a line. */
  readonly notIncluded: string;
  readonly terms: string;
}

export const startingDetails: JobDetails = {
  job: "",
  office: "",
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
  notIncluded: [
    "Plants, soil improvement and sprinkler work",
    "Private lines that the locators do not mark",
    "Rock, roots or rubble in the ground that hand tools do not move",
    "Permits, where the place asks for one",
  ].join("\n"),
  terms: "",
};

/** What was typed outlives a closed pane, in the browser's own storage. */
const KEY = "Bedrow.papers.1";

export function loadDetails(): JobDetails {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? "null");
    if (typeof kept !== "object" || kept === null) return startingDetails;
    const texts = Object.entries(kept).filter(([key, text]) => key in startingDetails && typeof text === "string");
    return { ...startingDetails, ...Object.fromEntries(texts) };
  } catch {
    // Storage that is off, or text that is no JSON: the starting values serve.
    return startingDetails;
  }
}

export function saveDetails(details: JobDetails): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(details));
  } catch {
    // What cannot be kept costs retyping at most.
  }
}

/** The lines of a text that say something. */
export function linesOf(text: string): string[] {
  return text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
}
