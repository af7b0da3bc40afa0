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
import { type PlaceBefore, queueReceipt } from "./receipt";
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
  await context.sync();

  const obstacles = obstaclesAt(checked);
  if (obstacles.length > 0) {
    return { done: false, inTheWay: await describeInTheWay(context, checked, size, obstacles) };
  }
  const { worksheet } = checked.target;
  const area: Area = { ...anchorOf(checked.target), rows: size.rows, columns: size.columns };
  const place_ = { sheetId: worksheet.id, sheetName: worksheet.name, area, newSheet: false };
  return write(context, makePlan(area), place_, before.read());
}

async function insertOnNewSheet(context: Excel.RequestContext, makePlan: MakePlan, name: string): Promise<Inserted> {
  const plan = makePlan({ row: 0, column: 0 });
  const { worksheets } = context.workbook;
  worksheets.load("items/name");
  await context.sync();
  const worksheet = worksheets.add(
    freeSheetName(
      name,
      worksheets.items.map((sheet) => sheet.name),
    ),
  );
  worksheet.load("id,name");
  const target = worksheet.getRangeByIndexes(0, 0, plan.rows, plan.columns);
  const before = queueBefore(target, plan.columns);
  await context.sync();
  const area: Area = { row: 0, column: 0, rows: plan.rows, columns: plan.columns };
  const place = { sheetId: worksheet.id, sheetName: worksheet.name, area, newSheet: true };
  return write(context, plan, place, before.read());
}

interface Destination {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly area: Area;
  readonly newSheet: boolean;
}

async function write(
  context: Excel.RequestContext,
  plan: Plan,
  { sheetId, sheetName, area, newSheet }: Destination,
  before: PlaceBefore,
): Promise<Inserted> {
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
    queueReceipt(context, { title: plan.title, sheetId, area, formulas: target.formulas, before, newSheet });
    await context.sync();
    return { done: true, title: plan.title, sheetName, address: areaAddress(area) };
  } catch (error) {
    await undoWrite(target, before, newSheet, error);
    throw error;
  }
}

/** Takes a failed write back in a request of its own, since the failed one can do nothing more. */
async function undoWrite(written: Excel.Range, before: PlaceBefore, newSheet: boolean, cause: unknown): Promise<void> {
  const { context, worksheet } = written;
  try {
    if (newSheet) worksheet.delete();
    else queueRestore(written, before);
    await context.sync();
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
