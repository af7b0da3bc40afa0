import { stringifyA1Ref } from "@borgar/fx";
import { addressOf } from "../../../xlsx/addresses";
import type { NewName } from "../../../xlsx/write/book";
import type { NewTable } from "../../../xlsx/write/sheet";
import type { PageSetup, SheetTable } from "../../grid/port";
import type { Saving } from "../context";
import { toFile } from "../formulas";

interface KeptName {
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId?: string;
}

/** The names of a workbook for the file, among them print areas and title rows. @param pages by the sheets' places. */
export function namesToFile(saving: Saving, pages: readonly (PageSetup | undefined)[]): NewName[] {
  const { kept, functions } = saving;
  const data = kept.resources?.find(({ name }) => name === "SHEET_DEFINED_NAME_PLUGIN")?.data;
  const names = Object.values(JSON.parse(data || "{}") as Record<string, KeptName>);
  const made = names.map(({ name, formulaOrRefString, localSheetId }): NewName => {
    const formula = formulaOrRefString.startsWith("=") ? formulaOrRefString : `=${formulaOrRefString}`;
    const sheet = kept.sheetOrder.indexOf(localSheetId ?? "");
    return { name, text: toFile(formula, functions), ...(sheet >= 0 && { sheet }) };
  });
  pages.forEach((page, place) => {
    const sheet = kept.sheets[kept.sheetOrder[place] ?? ""]?.name ?? "";
    if (page?.printArea) {
      const { row, column, rowCount, columnCount } = page.printArea;
      const range = { top: row, left: column, bottom: row + rowCount - 1, right: column + columnCount - 1 };
      made.push({ name: "_xlnm.Print_Area", text: fixed(sheet, range), sheet: place });
    }
    if (page?.titleRows) {
      const { row, rowCount } = page.titleRows;
      const rows = { top: row, bottom: row + rowCount - 1, left: null, right: null };
      made.push({ name: "_xlnm.Print_Titles", text: fixed(sheet, rows), sheet: place });
    }
  });
  return made;
}

interface Bounds {
  readonly top: number;
  readonly bottom: number;
  readonly left: number | null;
  readonly right: number | null;
}

function fixed(sheet: string, range: Bounds): string {
  return stringifyA1Ref({
    context: [sheet],
    range: { ...range, $top: true, $bottom: true, $left: true, $right: true },
  });
}

/** The tables of a sheet for the file. One whose headings are not all different texts is none in a file, and stays ordinary cells. */
export function tablesToFile(saving: Saving, id: string): NewTable[] {
  const tables = (saving.kept.custom?.tables ?? []) as readonly SheetTable[];
  return tables.flatMap(({ name, area, style }) => {
    if (area.sheetId !== id) return [];
    const [headings = []] = saving.cells.read({ ...area, rowCount: 1 });
    const texts = headings.map(({ value, kind, formula }) =>
      kind === "text" && formula === undefined ? String(value) : "",
    );
    const isSound =
      area.rowCount > 1 && !texts.includes("") && new Set(texts.map((one) => one.toLowerCase())).size === texts.length;
    if (!isSound) {
      saving.findings.fact(`the table ${name}, whose cells are ordinary ones there`);
      return [];
    }
    return [{ name, area: addressOf(area), columns: texts, style }];
  });
}
