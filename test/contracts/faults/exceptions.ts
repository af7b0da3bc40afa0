/** Where a action is done and the workbook is still not as it is after the action alone: what differs, and why. */
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
