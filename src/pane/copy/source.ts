import type { WorkbookFacts } from "../../review/facts";
import { blockAt, findBlocks } from "../../sheets/estimate/readBlock";
import type { Region, Surroundings } from "../../sheets/plain/region";
import { sheetRegion } from "../../sheets/plain/sheetRegion";
import { type Anchor, type Area, areaAddress } from "../../spreadsheet/areas";
import { WorkbookFailure } from "../../workbook/failure";
import { readRegion } from "../../workbook/read/region";
import { readWorkbook } from "../../workbook/read/workbook";
import { surroundingsOf } from "./surroundings";

export type What = "sheet" | "block" | "cells";

/** What is to be copied, as it was read. */
export interface Source {
  readonly what: What;
  /** What it is called, for a new sheet or file: the sheet's or the bed's name. */
  readonly name: string;
  /** Where it stands, for the person. */
  readonly where: string;
  readonly region: Region;
  readonly around: Surroundings;
  /** Rows and columns of it that do not show in the original, for the person; they do in a copy. */
  readonly hidden: readonly string[];
  /** They are too many for their looks to be read. */
  readonly isPlain: boolean;
}

/** More cells than this are copied without their looks: the host takes only so much in a request. */
const MOST_DRESSED = 50_000;

type SheetFacts = WorkbookFacts["sheets"][number];
type Used = NonNullable<SheetFacts["used"]>;

/**
 * Reads what the person wants to copy: from the sheet in front, as it is selected.
 *
 * @throws WorkbookFailure where there is nothing to copy there.
 */
export async function readSource(what: What): Promise<Source> {
  const { facts, sheet, selection } = await readWorkbook();
  const found = sheetOf(facts, sheet);
  if (what === "sheet") return sourceOf(facts, found, what, undefined);
  if (what === "block") {
    const block = blockAt(findBlocks(found.used.values, found.used), selection);
    if (!block) throw new WorkbookFailure("Select a cell in an estimate, then preview again.");
    return sourceOf(facts, found, what, block.area, block.form.name.trim() || sheet);
  }
  const area = shared(selection, areaOfUsed(found.used));
  if (!area) throw new WorkbookFailure("The selected cells are blank. Select the cells to copy, then preview again.");
  return sourceOf(facts, found, what, area);
}

/** Reads the same cells once more, as they are by now. */
export async function readAgain({ what, name, region }: Source): Promise<Source> {
  const { facts } = await readWorkbook();
  const found = sheetOf(facts, region.sheetName);
  return sourceOf(facts, found, what, what === "sheet" ? undefined : areaOfRegion(region), name);
}

function sheetOf(facts: WorkbookFacts, sheet: string): SheetFacts & { readonly used: Used } {
  const found = facts.sheets.find(({ name }) => name === sheet);
  if (!found?.used) throw new WorkbookFailure(`${sheet} is blank. Go to the sheet you want to copy.`);
  return { ...found, used: found.used };
}

/** `area` is left out for the whole sheet. */
async function sourceOf(
  facts: WorkbookFacts,
  sheet: SheetFacts & { readonly used: Used },
  what: What,
  area: Area | undefined,
  name: string = sheet.name,
): Promise<Source> {
  const whole = sheetRegion(sheet.name, sheet.used);
  const place = area ?? areaOfRegion(whole);
  const isPlain = place.rows * place.columns > MOST_DRESSED;
  const region = isPlain ? part(whole, place) : await readRegion({ kind: "area", sheetId: sheet.name, area: place });
  return {
    isPlain,
    what,
    name,
    where: `${sheet.name}, ${areaAddress(place)}`,
    region,
    around: surroundingsOf(facts),
    hidden: hiddenIn(sheet, place),
  };
}

/** A part of a sheet's region; what lies beyond the used cells is blank. */
function part(whole: Region, { row, column, rows, columns }: Area): Region {
  const cut = <T>(table: readonly (readonly T[])[], blank: T): T[][] =>
    Array.from({ length: rows }, (_, down) =>
      Array.from({ length: columns }, (_, across) => table[row + down]?.[column + across] ?? blank),
    );
  return {
    sheetName: whole.sheetName,
    row,
    column,
    formulas: cut(whole.formulas, ""),
    values: cut(whole.values, ""),
    formats: cut(whole.formats, "General"),
  };
}

function areaOfRegion({ row, column, formulas }: Region): Area {
  return { row, column, rows: formulas.length, columns: formulas[0]?.length ?? 0 };
}

function areaOfUsed({ row, column, formulas }: Used): Area {
  return { row, column, rows: formulas.length, columns: formulas[0]?.length ?? 0 };
}

function shared(one: Area, other: Area): Area | undefined {
  const first: Anchor = { row: Math.max(one.row, other.row), column: Math.max(one.column, other.column) };
  const rows = Math.min(one.row + one.rows, other.row + other.rows) - first.row;
  const columns = Math.min(one.column + one.columns, other.column + other.columns) - first.column;
  return rows > 0 && columns > 0 ? { ...first, rows, columns } : undefined;
}

function hiddenIn({ hiddenRows, hiddenColumns }: SheetFacts, { row, column, rows, columns }: Area): string[] {
  const inRows = hiddenRows.filter((one) => one >= row && one < row + rows).length;
  const inColumns = hiddenColumns.filter((one) => one >= column && one < column + columns).length;
  return [
    ...(inRows > 0 ? [`${inRows} hidden ${inRows === 1 ? "row" : "rows"}`] : []),
    ...(inColumns > 0 ? [`${inColumns} hidden ${inColumns === 1 ? "column" : "columns"}`] : []),
  ];
}
