import type { BlockUpdate } from "../sheets/blockUpdate";
import { someOf } from "../sheets/someOf";
import { type Area, areaIn, cellAddress, overlap } from "../spreadsheet/areas";
import { readWorkbook } from "../workbook/read/workbook";

const MOST_NAMED = 3;
const INSTEAD = "Nothing was changed. Insert it again, then delete the old one.";

/**
 * Why rows of a block can't come and go where it is: something else would move, or formulas would lose what they read.
 * Two requests.
 *
 * @param place the sheet, and the block's area on it.
 * @param movable areas below it that may move along.
 * @returns one line for the person; undefined where nothing is in the way.
 */
export async function whyRowsStay(
  { sheetName, area }: { readonly sheetName: string; readonly area: Area },
  update: BlockUpdate,
  movable: readonly Area[] = [],
): Promise<string | undefined> {
  const block = { ...area, rows: update.rows };
  const { facts } = await readWorkbook();
  const others: string[] = [];
  const readers: string[] = [];
  const going = update.removed.map(({ row }) => row);
  for (const { name, used } of facts.sheets) {
    used?.formulas.forEach((cells, down) => {
      cells.forEach((content, right) => {
        if (content === "") return;
        const cell = { row: used.row + down, column: used.column + right };
        const isHere = name === sheetName;
        const isOwn = isHere && overlap(block, { ...cell, rows: 1, columns: 1 });
        const address = isHere ? cellAddress(cell) : `${name}!${cellAddress(cell)}`;
        const moves =
          cell.row >= block.row + block.rows && movable.some((one) => overlap(one, { ...cell, rows: 1, columns: 1 }));
        if (isHere && !isOwn && !moves && cell.row >= block.row) others.push(address);
        const isRewritten = isOwn && (going.includes(cell.row) || isChanged(update, cell.row, cell.column));
        if (!isRewritten && readsOnly(content, isHere, sheetName, block, going)) readers.push(address);
      });
    });
  }
  const named = facts.names.filter(({ formula }) => readsOnly(formula, false, sheetName, block, going));
  if (others.length > 0) {
    return `This adds or removes rows, and cells below or beside them would move (${someOf(others, MOST_NAMED)}). ${INSTEAD}`;
  }
  const all = [...readers, ...named.map(({ name }) => name)];
  if (all.length === 0) return undefined;
  return `This removes rows that formulas read (${someOf(all, MOST_NAMED)}). ${INSTEAD}`;
}

function isChanged({ changes }: BlockUpdate, row: number, column: number): boolean {
  return changes.some((cell) => cell.rowBefore === row && cell.column === column);
}

const TEXTS = /"(?:[^"]|"")*"/g;
/** A reference with its sheet, where it has one. */
const REFERENCES =
  /(?:('(?:[^']|'')*'|[\p{L}_][\p{L}\d_.]*)!)?(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?)(?![\w(.])/gu;

/** Whether a formula reads cells that go all together, so that it would lose them. */
function readsOnly(
  content: unknown,
  isHere: boolean,
  sheetName: string,
  block: Area,
  going: readonly number[],
): boolean {
  if (typeof content !== "string" || !content.startsWith("=") || going.length === 0) return false;
  for (const [, sheet, reference = ""] of content.replace(TEXTS, '""').matchAll(REFERENCES)) {
    const named = sheet?.replace(/^'|'$/g, "").replaceAll("''", "'");
    if (named === undefined ? !isHere : named.toLowerCase() !== sheetName.toLowerCase()) continue;
    const area = areaIn(reference);
    if (!area || !overlap(area, block)) continue;
    const rows = Array.from({ length: Math.min(area.rows, block.rows + 1) }, (_, index) => area.row + index);
    if (rows.every((row) => going.includes(row))) return true;
  }
  return false;
}
