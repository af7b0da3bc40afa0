/** Where a deed is done and the workbook is still not as it is after the deed alone: what differs, and why. */
export const exceptions: readonly {
  readonly troubles: readonly string[];
  readonly what: RegExp;
  readonly why: string;
}[] = [
  {
    troubles: ["fault", "faultTwice", "faultUnknown"],
    what: /^\/(front|selection)\b/,
    why: "Last of all what was inserted is brought to the front; where only that fails, all of it stands.",
  },
  {
    troubles: ["rows"],
    what: /^\/(kept\/Bedrow\.lastInsert|selection)\b/,
    why: "How the place looked is noted from the look at it, before the rows came.",
  },
];

const NEW_SHEETS = [
  "Insert an estimate on a new sheet",
  "Insert the sheet of rates",
  "Start a list of beds on a new sheet",
  "Start from a template on a new sheet",
  "Copy a sheet for others onto a new sheet",
  "Make the papers of a job, with drawings, on new sheets",
  "Start the list of past jobs on a new sheet",
  "Put the report of a check on a new sheet",
] as const;
const TAKEN_BACK = [
  "Take an estimate back, with its drawing",
  "Take the sheet of rates back",
  "Take the papers of a job back",
  "Take a started list back, with its table",
  "Take a template back",
  "Take a copy for others back",
  "Take a past job back",
] as const;
const BY_OTHERS = ["protectedMeanwhile", "structureMeanwhile", "typed", "rows"] as const;

/** Operations in troubles whose mend is being written: nothing is asked of them until then. */
export const awaiting: readonly (readonly [operation: string, trouble: string])[] = [
  // A sheet that is left is to be named.
  ...NEW_SHEETS.flatMap((title) =>
    (["faultForGood", "structureMeanwhile"] as const).map((key) => [title, key] as const),
  ),
  ["Draw the bed of an estimate", "deleted"],
  ["Draw it anew in place of the drawing before", "deleted"],
  // Its table is laid over the cells where they stood before the rows came.
  ["Start a list of beds at the selected cell", "rows"],
  // It goes below the list as that stood before the rows came.
  ["Add a job to the list of past jobs", "rows"],
  // What somebody does between the last look and the taking back is to be seen.
  ...TAKEN_BACK.flatMap((title) => BY_OTHERS.map((key) => [title, key] as const)),
];
