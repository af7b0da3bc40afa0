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

/** Operations in troubles that they do not withstand yet: a part can end up where it should not, and the help says so. */
export const awaiting: readonly (readonly [operation: string, trouble: string])[] = [
  // Its table is laid over the cells where they stood before the rows came.
  ["Start a list of beds at the selected cell", "rows"],
  // It goes below the list as that stood before the rows came.
  ["Add a job to the list of past jobs", "rows"],
  // Its cells are emptied; then its looks are taken off where it stood before the rows came.
  ["Take an estimate back, with its drawing", "rows"],
  ["Take a started list back, with its table", "rows"],
  ["Take a template back", "rows"],
  ["Take a job back that was added to past jobs", "rows"],
];
