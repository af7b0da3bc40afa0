import { stringifyA1Ref } from "@borgar/fx";
import type { PageSetup } from "../../grid/port";
import { toFile } from "../formula/toFile";
import { escaped } from "../package/xml";
import type { Saving } from "./context";

interface KeptName {
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId?: string;
}

/** The part of a workbook's text that holds its names, among them print areas and title rows; "" for none. */
export function namesXml(saving: Saving, pages: readonly (PageSetup | undefined)[]): string {
  const { kept, functions } = saving;
  const data = kept.resources?.find(({ name }) => name === "SHEET_DEFINED_NAME_PLUGIN")?.data;
  const names = Object.values(JSON.parse(data || "{}") as Record<string, KeptName>);
  const made = names.map(({ name, formulaOrRefString, localSheetId }) => {
    const formula = formulaOrRefString.startsWith("=") ? formulaOrRefString : `=${formulaOrRefString}`;
    return nameXml(name, toFile(formula, functions), kept.sheetOrder.indexOf(localSheetId ?? ""));
  });
  pages.forEach((page, place) => {
    const sheet = kept.sheets[kept.sheetOrder[place] ?? ""]?.name ?? "";
    if (page?.printArea) {
      const { row, column, rowCount, columnCount } = page.printArea;
      const range = { top: row, left: column, bottom: row + rowCount - 1, right: column + columnCount - 1 };
      made.push(nameXml("_xlnm.Print_Area", fixed(sheet, range), place));
    }
    if (page?.titleRows) {
      const { row, rowCount } = page.titleRows;
      made.push(
        nameXml(
          "_xlnm.Print_Titles",
          fixed(sheet, { top: row, bottom: row + rowCount - 1, left: null, right: null }),
          place,
        ),
      );
    }
  });
  return made.length > 0 ? `<definedNames>${made.join("")}</definedNames>` : "";
}

function nameXml(name: string, text: string, place: number): string {
  const local = place >= 0 ? ` localSheetId="${place}"` : "";
  return `<definedName name="${escaped(name)}"${local}>${escaped(text)}</definedName>`;
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
