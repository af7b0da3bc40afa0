import { areaAddress } from "../sheets/address";
import { overlap } from "./freePlace";
import type { ReceiptPart } from "./receipt";

/**
 * Looks through all sheets for the cells of a part that have left their place, by all the words in them: numbers may
 * have been typed over, and formulas follow their cells; another of its kind has some word of its own. One sync.
 *
 * @param parts all that was inserted with it: another of them may hold the same words.
 * @returns where they stand, such as "Notes D15:L153"; undefined where they are nowhere.
 */
export async function movedTo(
  context: Excel.RequestContext,
  worksheets: readonly Excel.Worksheet[],
  parts: readonly ReceiptPart[],
  { sheetId, area, formulas }: ReceiptPart,
): Promise<string | undefined> {
  const ownFirst = [...worksheets].sort((one, other) => Number(other.id === sheetId) - Number(one.id === sheetId));
  const used = ownFirst.map((worksheet) => worksheet.getUsedRangeOrNullObject(true));
  for (const range of used) range.load("formulas,rowIndex,columnIndex");
  await context.sync();
  const words = formulas.flatMap((cells, row) =>
    cells.flatMap((content, column) => (isWords(content) ? [{ row, column, content }] : [])),
  );
  const [first] = words;
  if (!first) return undefined;
  for (const [index, range] of used.entries()) {
    if (range.isNullObject) continue;
    const { formulas: there, rowIndex, columnIndex } = range;
    for (const [row, cells] of there.entries()) {
      for (const [column, content] of cells.entries()) {
        if (content !== first.content) continue;
        const [down, across] = [row - first.row, column - first.column];
        if (words.some((one) => there[one.row + down]?.[one.column + across] !== one.content)) continue;
        const place = { ...area, row: rowIndex + down, column: columnIndex + across };
        const { id, name } = ownFirst[index]!;
        const isOther = parts.some((part) => part.sheetId === id && overlap(part.area, place));
        if (!isOther) return `${name} ${areaAddress(place)}`;
      }
    }
  }
  return undefined;
}

const isWords = (content: unknown): boolean =>
  typeof content === "string" && content !== "" && !content.startsWith("=");
