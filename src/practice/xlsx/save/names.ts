import { addressOf, fixedRange, type Rectangle } from "../../../xlsx/addresses";
import type { NewName } from "../../../xlsx/write/book";
import type { NewTable } from "../../../xlsx/write/sheet";
import { sheetColumns, writeAddress } from "../../grid/a1";
import type { PageSetup, SheetTable } from "../../grid/port";
import type { Saving } from "../context";
import { toFile } from "../formulas";

interface KeptName {
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId?: string;
  readonly hidden?: boolean;
}

/** The names that the grid keeps, by their ids. */
export function keptNames({ kept }: Saving): ReadonlyMap<string, KeptName> {
  const data = kept.resources?.find(({ name }) => name === "SHEET_DEFINED_NAME_PLUGIN")?.data;
  return new Map(Object.entries(JSON.parse(data || "{}") as Record<string, KeptName>));
}

/** The names of a workbook for the file, among them print areas and title rows. @param pages by the sheets' places. */
export function namesToFile(saving: Saving, pages: readonly (PageSetup | undefined)[]): NewName[] {
  const { kept, functions } = saving;
  const made = [...keptNames(saving).values()].map(({ name, formulaOrRefString, localSheetId, hidden }): NewName => {
    const formula = formulaOrRefString.startsWith("=") ? formulaOrRefString : `=${formulaOrRefString}`;
    const sheet = kept.sheetOrder.indexOf(localSheetId ?? "");
    return { name, text: toFile(formula, functions), ...(sheet >= 0 && { sheet }), ...(hidden && { hidden }) };
  });
  pages.forEach((page, place) => {
    const { printArea, titleRows } = page ?? {};
    const sheet = kept.sheets[kept.sheetOrder[place] ?? ""]?.name ?? "";
    const add = (name: string, area: Rectangle) =>
      made.push({ name, text: fixedRange(writeAddress(sheet, area)), sheet: place });
    if (printArea) add("_xlnm.Print_Area", printArea);
    if (titleRows) add("_xlnm.Print_Titles", { ...titleRows, column: 0, columnCount: sheetColumns });
  });
  return made;
}

/** The tables of a sheet for the file. One whose headings are not all different texts is none in a file, and stays ordinary cells. */
export function tablesToFile(saving: Saving, id: string): NewTable[] {
  const tables = (saving.kept.custom?.tables ?? []) as readonly SheetTable[];
  return tables.flatMap(({ name, area, style }) => {
    if (area.sheetId !== id) return [];
    const texts = tableHeadings(saving, { area });
    if (!texts) {
      saving.findings.fact(`the table ${name}, saved as ordinary cells`);
      return [];
    }
    return [{ name, area: addressOf(area), columns: texts, style }];
  });
}

/** The headings of a table; undefined where they are not all different texts, as those of a table in a file are. */
export function tableHeadings({ cells }: Saving, { area }: Pick<SheetTable, "area">): readonly string[] | undefined {
  const [headings = []] = cells.read({ ...area, rowCount: 1 });
  const texts = headings.map(({ value, kind, formula }) =>
    kind === "text" && formula === undefined ? String(value) : "",
  );
  const isSound =
    area.rowCount > 1 && !texts.includes("") && new Set(texts.map((one) => one.toLowerCase())).size === texts.length;
  return isSound ? texts : undefined;
}
