/**
 * The one catalogue of what the project says about a value it cannot use. A message names the value, quotes
 * what arrived, and says what to give instead. Every entry is a function from the particulars to one or two
 * plain sentences; `argument` is always the name the user sees.
 */
export const messages = {
  missing: (argument: string, example: string) => `${argument} is blank. Type a value, such as ${example}.`,
  missingAt: (argument: string, place: number, example: string) =>
    `${argument} has a blank at place ${place}. Type a value there, such as ${example}.`,
  zero: (argument: string, example: string) => `${argument} is blank or 0. Type more than 0, such as ${example}.`,
  negative: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}, which is less than 0. Type 0 or more.`,
  notANumber: (argument: string, arrived: unknown, example: string) =>
    `${argument} arrived as ${quoted(arrived)}, which is no number. Type a number, such as ${example}.`,
  notALength: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}, which cannot be read as a length. ` +
    `Type a number, or a length such as 18' 6", 32' 6 1/2", 75 mm or 9.8 m.`,
  ambiguousComma: (argument: string, arrived: unknown) =>
    `${argument} arrived as ${quoted(arrived)}, where the comma can be read two ways. ` +
    `Type the number without a thousands comma, and with a point for the decimals.`,
  smallerUnitTooLarge: (argument: string, arrived: unknown, unit: string, limit: number) =>
    `${argument} arrived as ${quoted(arrived)}: ${unit} after a larger unit must be under ${limit}. ` +
    `Carry the rest over, such as 6' 2" for 5' 14".`,
  tooLarge: (argument: string, arrived: unknown, limit: string) =>
    `${argument} arrived as ${quoted(arrived)}, which is too large. Type ${limit} or less.`,
  unknownName: (argument: string, arrived: unknown, nearest: string, instead: string) =>
    `${argument} arrived as ${quoted(arrived)}, which stands in no table. Did you mean “${nearest}”? ` +
    `A number is read as ${instead}.`,
  overflow: () => "The answer is too large to be a quantity. Check the units of what was typed.",
} as const;

/** What arrived, as a message shows it: text between typographic quotes, so that inch marks stay readable. */
export function quoted(arrived: unknown): string {
  switch (typeof arrived) {
    case "string":
      return `“${arrived.length > 40 ? arrived.slice(0, 39) + "…" : arrived}”`;
    case "boolean":
      return arrived ? "TRUE" : "FALSE";
    case "number":
    case "bigint":
      return String(arrived);
    case "undefined":
      return "a blank";
    default:
      return arrived === null ? "a blank" : Array.isArray(arrived) ? "a range of cells" : "no plain value";
  }
}
