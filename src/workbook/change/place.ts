import type { Plan } from "../../sheets/plan";
import { type Anchor, type Area, areaAddress, isOnSheet, overlap, withoutSheets } from "../../spreadsheet/areas";
import { WorkbookFailure } from "../failure";
import { anchorOf, areaOf, filledAreas, nearestFreePlace, rangeAt } from "../read/areas";

/** Where something is to be put. A sheet is named by the host's id, which outlives a new name. */
export type Place =
  | { readonly kind: "selection" }
  | { readonly kind: "cell"; readonly sheetId: string; readonly at: Anchor; readonly under?: Heading }
  | { readonly kind: "new sheet"; readonly name: string };

/** The headings that a place was found by. Once they have moved, it is no longer the right place. */
export interface Heading extends Anchor {
  readonly words: readonly string[];
}

export type PlaceOnSheet = Exclude<Place, { kind: "new sheet" }>;

/** What is in the way where something was to be put. */
export interface Obstacle {
  readonly what: "cells with contents" | "merged cells" | "table" | "list or color rule" | "name";
  /** Addresses or names, for the person. */
  readonly where: string;
}

/** Why a plan was not written, and where it could go instead. */
export interface InTheWay {
  /** "" where the sheet would have been a new one. */
  readonly sheetId: string;
  readonly sheetName: string;
  readonly address: string;
  readonly obstacles: readonly Obstacle[];
  /** Set where the sheet has room elsewhere; a name is in the way anywhere. */
  readonly nearestFree?: { readonly at: Anchor; readonly address: string };
}

export type Size = Pick<Area, "rows" | "columns">;

/**
 * The range of a place with all that has to be known before it is written to; readable after the request.
 *
 * @throws WorkbookFailure where the sheet ends before.
 */
export function queueCheck(context: Excel.RequestContext, place: PlaceOnSheet, { rows, columns }: Size) {
  if (place.kind === "cell" && !isOnSheet({ ...place.at, rows, columns })) {
    throw new WorkbookFailure(
      `It needs ${rows} rows and ${columns} columns, and the sheet ends before that. Nothing was changed. Select a cell farther up or left, or choose another sheet.`,
    );
  }
  const corner =
    place.kind === "selection"
      ? context.workbook.getSelectedRange().getCell(0, 0)
      : context.workbook.worksheets.getItem(place.sheetId).getCell(place.at.row, place.at.column);
  const target = corner.getResizedRange(rows - 1, columns - 1);
  target.load("rowIndex,columnIndex,formulas");
  target.worksheet.load("id,name");
  target.worksheet.protection.load("protected");
  const merged = target.getMergedAreasOrNullObject();
  merged.load("address");
  const tables = target.getTables(false);
  tables.load("items/name");
  target.conditionalFormats.load("items/id");
  target.dataValidation.load("type");
  const isUnder = place.kind === "cell" ? queueUnder(target.worksheet, place.under, place.at.row) : () => true;
  return { target, merged, tables, isUnder };
}

/**
 * Asks whether a heading is still there, and a list reaches from it down to a place; readable after the request.
 *
 * @param below the row of the place.
 */
export function queueUnder(worksheet: Excel.Worksheet, heading: Heading | undefined, below: number): () => boolean {
  if (!heading) return () => true;
  const { row, column, words } = heading;
  const cells = rangeAt(worksheet, { row, column, rows: below - row, columns: words.length });
  cells.load("values");
  return () => {
    const isThere = words.every((word, index) => cells.values[0]?.[index] === word);
    return isThere && cells.values.every((line) => line.some((cell) => cell !== ""));
  };
}

/** What is said where a heading or its list has moved. */
export function headingMoved(sheetName: string): WorkbookFailure {
  return new WorkbookFailure(
    `The list on ${sheetName} was changed at the same time, so nothing was written. Check it, then try again.`,
  );
}

export type Checked = ReturnType<typeof queueCheck>;

/**
 * What is in the way at a checked place; nothing where it is free.
 *
 * @throws WorkbookFailure for a protected sheet, and where the heading that it goes under has moved.
 */
export function obstaclesAt({ target, merged, tables, isUnder }: Checked): Obstacle[] {
  const { worksheet } = target;
  if (worksheet.protection.protected) {
    throw new WorkbookFailure(
      `The sheet “${worksheet.name}” is protected. Nothing was changed. Unprotect it, or choose another sheet.`,
    );
  }
  if (!isUnder()) throw headingMoved(worksheet.name);
  const obstacles: Obstacle[] = tables.items.map(({ name }) => ({ what: "table", where: name }));
  const filled = filledAreas(target.formulas, anchorOf(target));
  if (filled.length > 0 && tables.items.length === 0) {
    obstacles.push({ what: "cells with contents", where: filled.map(areaAddress).join(", ") });
  }
  if (!merged.isNullObject) obstacles.push({ what: "merged cells", where: withoutSheets(merged.address) });
  if (target.conditionalFormats.items.length > 0 || target.dataValidation.type !== "None") {
    obstacles.push({ what: "list or color rule", where: "in these cells" });
  }
  return obstacles;
}

/** How many places are checked before none is offered. */
const MOST_CHECKED = 4;

/** Where on its sheet a plan that is blocked could go: one more request, and one for each place that is checked. */
export async function describeInTheWay(
  context: Excel.RequestContext,
  { target }: Checked,
  size: Size,
  obstacles: readonly Obstacle[],
): Promise<InTheWay> {
  const { worksheet } = target;
  const used = worksheet.getUsedRangeOrNullObject(false);
  used.load("rowIndex,columnIndex,rowCount,columnCount,formulas");
  await context.sync();

  const wanted: Area = { ...anchorOf(target), ...size };
  const filled = used.isNullObject ? [] : filledAreas(used.formulas, anchorOf(used));
  const blockedOnlyByFilled = obstacles.every(({ what }) => what === "cells with contents");
  // A table, merged cells or a rule reach past what they fill, so then the whole used part of the sheet counts.
  const taken = blockedOnlyByFilled || used.isNullObject ? filled : [areaOf(used)];
  const isElsewhereFree = obstacles.every(({ what }) => what !== "name");
  const at = isElsewhereFree ? await freePlace(context, worksheet.id, taken, wanted) : undefined;
  return {
    sheetId: worksheet.id,
    sheetName: worksheet.name,
    address: areaAddress(wanted),
    obstacles,
    ...(at && { nearestFree: { at, address: areaAddress({ ...at, ...size }) } }),
  };
}

/** The nearest place that was checked and is free: blank cells may have lists, rules, or be merged. */
async function freePlace(
  context: Excel.RequestContext,
  sheetId: string,
  filled: readonly Area[],
  wanted: Area,
): Promise<Anchor | undefined> {
  const { rows, columns } = wanted;
  let taken = filled.some((area) => overlap(area, wanted)) ? filled : [...filled, wanted];
  for (let checks = 0; checks < MOST_CHECKED; checks += 1) {
    const at = nearestFreePlace(taken, wanted);
    if (!at) return undefined;
    const checked = queueCheck(context, { kind: "cell", sheetId, at }, { rows, columns });
    await context.sync();
    if (obstaclesAt(checked).length === 0) return at;
    taken = [...taken, { ...at, rows, columns }];
  }
  return undefined;
}

/** The names of the workbook and of its tables, which share one list; readable after the request. */
export function queueTakenNames(context: Excel.RequestContext, plans: readonly Plan[]) {
  const bringsNames = plans.some(({ names: brought = [], table }) => brought.length > 0 || table !== undefined);
  if (!bringsNames) return { obstacles: (): Obstacle[] => [], freeTableNames: (): undefined[] => [] };
  const { names, tables } = context.workbook;
  names.load("items/name,items/formula");
  tables.load("items/name");
  const existing = () => [
    ...names.items.map(({ name, formula }) => ({ name, where: `${name} (${String(formula).replace(/^=/, "")})` })),
    ...tables.items.map(({ name }) => ({ name, where: `${name} (a table)` })),
  ];
  return {
    /** The names of the plans that are taken already. */
    obstacles: (): Obstacle[] => {
      const there = new Map(existing().map(({ name, where }) => [name.toLowerCase(), where]));
      return plans.flatMap(({ names: wanted = [] }) =>
        wanted.flatMap(({ name }) => {
          const where = there.get(name.toLowerCase());
          return where ? [{ what: "name" as const, where }] : [];
        }),
      );
    },
    /** For each plan with a table a name that nothing has: `Job_rows`, `Job_rows2`, … */
    freeTableNames: (): (string | undefined)[] => {
      const taken = new Set(existing().map(({ name }) => name.toLowerCase()));
      for (const { names: wanted = [] } of plans) for (const { name } of wanted) taken.add(name.toLowerCase());
      return plans.map(({ table }) => {
        if (!table) return undefined;
        let name = table.name;
        for (let number = 2; taken.has(name.toLowerCase()); number += 1) name = `${table.name}${number}`;
        taken.add(name.toLowerCase());
        return name;
      });
    },
  };
}
