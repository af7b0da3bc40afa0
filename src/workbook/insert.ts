import { areaAddress } from "../sheets/address";
import type { Anchor, Area, Plan } from "../sheets/plan";
import { queueBefore, queueRestore } from "./before";
import { queueLooks } from "./look";
import {
  anchorOf,
  describeInTheWay,
  type InTheWay,
  obstaclesAt,
  type Place,
  type PlaceOnSheet,
  queueCheck,
} from "./place";
import { type PlaceBefore, queueReadReceipt, queueReceipt, queueReceiptText } from "./receipt";
import { inWords, inWorkbook, WorkbookTrouble } from "./trouble";

export type Inserted =
  | { readonly done: true; readonly title: string; readonly sheetName: string; readonly address: string }
  | { readonly done: false; readonly inTheWay: InTheWay };

/** Makes the plan for where it will stand. Its size must not depend on the place. */
export type MakePlan = (at: Anchor) => Plan;

/**
 * Writes a plan into the workbook: three syncs where the place is free, none of them over a cell with content,
 * a merged cell or a table. What stands in the way comes back as data; a write that fails is taken back.
 *
 * @throws WorkbookTrouble in words for the person.
 */
export async function insertPlan(makePlan: MakePlan, place: Place): Promise<Inserted> {
  return inWorkbook(async (context) => {
    if (place.kind === "new sheet") return insertOnNewSheet(context, makePlan, place.name);
    return insertOnSheet(context, makePlan, place);
  });
}

async function insertOnSheet(
  context: Excel.RequestContext,
  makePlan: MakePlan,
  place: PlaceOnSheet,
): Promise<Inserted> {
  const size = makePlan({ row: 0, column: 0 });
  const checked = queueCheck(context, place, size);
  const before = queueBefore(checked.target, size.columns);
  const earlier = queueReadReceipt(context);
  await context.sync();

  const obstacles = obstaclesAt(checked);
  if (obstacles.length > 0) {
    return { done: false, inTheWay: await describeInTheWay(context, checked, size, obstacles) };
  }
  const { worksheet } = checked.target;
  const area: Area = { ...anchorOf(checked.target), rows: size.rows, columns: size.columns };
  const sheet = { sheetId: worksheet.id, sheetName: worksheet.name };
  return write(context, makePlan(area), { ...sheet, area, newSheet: false, before: before.read(), earlier });
}

async function insertOnNewSheet(context: Excel.RequestContext, makePlan: MakePlan, wanted: string): Promise<Inserted> {
  const plan = makePlan({ row: 0, column: 0 });
  const area: Area = { row: 0, column: 0, rows: plan.rows, columns: plan.columns };
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  const earlier = queueReadReceipt(context);
  await context.sync();
  const name = freeSheetName(
    wanted,
    worksheets.items.map((sheet) => sheet.name),
  );
  try {
    const worksheet = worksheets.add(name);
    worksheet.load("id");
    const before = queueBefore(worksheet.getRangeByIndexes(0, 0, plan.rows, plan.columns), plan.columns);
    await context.sync();
    const sheet = { sheetId: worksheet.id, sheetName: name };
    return await write(context, plan, { ...sheet, area, newSheet: true, before: before.read(), earlier });
  } catch (error) {
    await takingBack(error, () => deleteSheet(context, name));
    throw error;
  }
}

interface Destination {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly area: Area;
  readonly newSheet: boolean;
  readonly before: PlaceBefore;
  /** The receipt of the insert before this one, which comes back if this one fails. */
  readonly earlier: { readonly text: () => string };
}

async function write(context: Excel.RequestContext, plan: Plan, to: Destination): Promise<Inserted> {
  const { sheetId, sheetName, area, newSheet, before } = to;
  const worksheet = context.workbook.worksheets.getItem(sheetId);
  const target = worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
  try {
    context.application.suspendApiCalculationUntilNextSync();
    context.application.suspendScreenUpdatingUntilNextSync();
    target.numberFormat = plan.formats as string[][];
    target.formulas = plan.formulas as (string | number)[][];
    queueLooks(target, plan);
    widen(target, plan, before);
    worksheet.activate();
    target.getCell(0, 0).select();
    target.load("formulas");
    await context.sync();
    queueReceipt(context, {
      title: plan.title,
      sheetId,
      area,
      formulas: target.formulas,
      before,
      newSheet,
    });
    await context.sync();
    return { done: true, title: plan.title, sheetName, address: areaAddress(area) };
  } catch (error) {
    await takingBack(error, async () => {
      queueReceiptText(context, to.earlier.text());
      if (!newSheet) queueRestore(target, before);
      await context.sync();
    });
    throw error;
  }
}

async function deleteSheet(context: Excel.RequestContext, name: string): Promise<void> {
  const worksheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (worksheet.isNullObject) return;
  worksheet.delete();
  await context.sync();
}

/** Runs what takes a failed write back; if that fails, too, the person has to know. */
async function takingBack(cause: unknown, deed: () => Promise<void>): Promise<void> {
  try {
    await deed();
  } catch {
    throw new WorkbookTrouble(
      `${inWords(cause).message} What was already written could not be taken back. Undo it in the sheet (Ctrl+Z).`,
    );
  }
}

/** Columns only ever get wider, since other things may stand in them. */
function widen(target: Excel.Range, plan: Plan, before: PlaceBefore): void {
  plan.widths.forEach((characters, index) => {
    const width = pointsOf(characters);
    if (before.columnWidths[index]! < width) target.getColumn(index).format.columnWidth = width;
  });
}

/** The host counts column widths in points: 7 px a character and 5 px of padding, at 96 px and 72 pt an inch. */
function pointsOf(characters: number): number {
  return (characters * 7 + 5) * (72 / 96);
}

const SHEET_NAME_LENGTH = 31;

/** A name the host accepts and no sheet has: `Front walk`, `Front walk 2`, … */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const plain =
    wanted
      .replace(/[[\]:*?/\\]/g, " ")
      .replace(/^'+|'+$/g, "")
      .replace(/\s+/g, " ")
      .trim() || "Estimate";
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? "" : ` ${number}`;
    const name = plain.slice(0, SHEET_NAME_LENGTH - ending.length).trim() + ending;
    if (!used.has(name.toLowerCase())) return name;
  }
}
