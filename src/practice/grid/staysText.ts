/**
 * Whether a text that the grid's number parser takes for a number stays text in the spreadsheet program: the parser
 * drops an apostrophe or a comma between digits, so that 4'6 would be 46, and takes 12 6 for the sixth of December.
 *
 * @example staysText("4'6") // true
 */
export function staysText(text: string): boolean {
  return /\d\s*['’]/.test(text) || /^\s*\d+[ ,]\d{1,2}\s*$/.test(text);
}
