import type { Plan } from "../../sheets/plan";
import { cut, withoutUnprintable } from "../../sheets/printable";
import { type Anchor, areaAddress } from "../../spreadsheet/areas";
import { inWorkbook, WorkbookFailure } from "../failure";
import { anchorOf } from "../read/areas";
import { insertParts } from "./insertParts";
import { queueBefore } from "./overwritten";
import {
  describeInTheWay,
  type InTheWay,
  type Obstacle,
  obstaclesAt,
  type Place,
  type PlaceOnSheet,
  queueCheck,
  queueTakenNames,
} from "./place";
import type { Part } from "./writePlan";

export type Inserted =
  | {
      readonly done: true;
      readonly title: string;
      readonly sheetName: string;
      readonly address: string;
      /** By which it can be undone. */
      readonly id: string;
    }
  | { readonly done: false; readonly inTheWay: InTheWay };

/** Makes the plan for a place. Its size must not depend on the place. */
export type MakePlan = (at: Anchor) => Plan;

/** A plan on a sheet of its own. */
export interface NewSheet {
  /** The sheet's name, as wanted; a number is added where it is taken. */
  readonly name: string;
  readonly plan: Plan;
}

/** Several plans on sheets of their own. */
export type InsertedSheets =
  | {
      readonly done: true;
      readonly title: string;
      readonly id: string;
      readonly sheets: readonly { readonly sheetName: string; readonly address: string }[];
    }
  | { readonly done: false; readonly obstacles: readonly Obstacle[] };

const STRUCTURE_PROTECTED =
  "This workbook's structure is protected, so a sheet can't be added. Nothing was changed. Unprotect the workbook, then try again.";
const CORNER: Anchor = { row: 0, column: 0 };

/**
 * Writes a plan into the workbook: three requests where the place is free, and never over a cell with contents, a
 * merged cell, a table or a name. What is in the way is returned; a write that fails is undone.
 *
 * @throws WorkbookFailure.
 */
export async function insertPlan(makePlan: MakePlan, place: Place): Promise<Inserted> {
  return inWorkbook(async (context) => {
    if (place.kind !== "new sheet") return insertOnSheet(context, makePlan, place);
    const plan = makePlan(CORNER);
    const inserted = await insertOnNewSheets(context, plan.title, [{ name: place.name, plan }]);
    // biome-ignore lint/style/noNonNullAssertion: one plan is on one sheet
    if (inserted.done) return { done: true, title: plan.title, id: inserted.id, ...inserted.sheets[0]! };
    const { obstacles } = inserted;
    const address = areaAddress({ ...CORNER, rows: plan.rows, columns: plan.columns });
    return { done: false, inTheWay: { sheetId: "", sheetName: place.name, address, obstacles } };
  });
}

/**
 * Writes several plans, each on a new sheet, all or none of them: three requests, and they are undone together.
 *
 * @param title what they are together, for the person: "papers for Front walk".
 * @param sheets at least one. Their plans are made for the corner of a sheet.
 * @throws WorkbookFailure.
 */
export async function insertPlans(title: string, sheets: readonly NewSheet[]): Promise<InsertedSheets> {
  return inWorkbook((context) => insertOnNewSheets(context, title, sheets));
}

async function insertOnSheet(
  context: Excel.RequestContext,
  makePlan: MakePlan,
  place: PlaceOnSheet,
): Promise<Inserted> {
  const plan = makePlan(CORNER);
  const size = { rows: plan.rows, columns: plan.columns };
  const checked = queueCheck(context, place, size);
  const before = queueBefore(context, checked.target);
  const taken = queueTakenNames(context, [plan]);
  await context.sync();

  const obstacles = [...obstaclesAt(checked), ...taken.obstacles()];
  if (obstacles.length > 0) {
    return { done: false, inTheWay: await describeInTheWay(context, checked, size, obstacles) };
  }
  const { id: sheetId, name: sheetName } = checked.target.worksheet;
  const area = { ...anchorOf(checked.target), ...size };
  const [tableName] = taken.freeTableNames();
  const part: Part = {
    plan: makePlan(area),
    area,
    sheetId,
    sheetName,
    before: before(),
    tableName,
    under: place.kind === "cell" ? place.under : undefined,
  };
  const id = await insertParts(context, plan.title, [part]);
  return { done: true, title: plan.title, sheetName, address: areaAddress(area), id };
}

async function insertOnNewSheets(
  context: Excel.RequestContext,
  title: string,
  sheets: readonly NewSheet[],
): Promise<InsertedSheets> {
  const { worksheets, protection } = context.workbook;
  worksheets.load("items/name");
  protection.load("protected");
  const taken = queueTakenNames(
    context,
    sheets.map(({ plan }) => plan),
  );
  await context.sync();

  if (protection.protected) throw new WorkbookFailure(STRUCTURE_PROTECTED);
  const obstacles = taken.obstacles();
  if (obstacles.length > 0) return { done: false, obstacles };
  const sheetNames = worksheets.items.map(({ name }) => name);
  const tableNames = taken.freeTableNames();
  const parts = sheets.map(({ name, plan }, index): Part => {
    const sheetName = newSheetName(name, sheetNames);
    sheetNames.push(sheetName);
    const area = { ...CORNER, rows: plan.rows, columns: plan.columns };
    return { plan, area, sheetName, tableName: tableNames[index] };
  });
  const id = await insertParts(context, title, parts);
  return {
    done: true,
    title,
    id,
    sheets: parts.map(({ sheetName, area }) => ({ sheetName, address: areaAddress(area) })),
  };
}

const SHEET_NAME_LENGTH = 31;

/** A name the host accepts and no sheet has: `Front walk`, `Front walk 2`, … */
export function newSheetName(wanted: string, taken: readonly string[]): string {
  const plain =
    withoutUnprintable(wanted)
      .replace(/[[\]:*?/\\]/g, " ")
      .replace(/^'+|'+$/g, "")
      .replace(/\s+/g, " ")
      .trim() || "Estimate";
  const used = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? "" : ` ${number}`;
    const name = cut(plain, SHEET_NAME_LENGTH - ending.length) + ending;
    if (!used.has(name.toLowerCase())) return name;
  }
}
