import type { CellContent, RegionRead } from "../../sheets/plain/region";
import { charactersOfPoints } from "../../sheets/points";
import { ruleFor } from "../../sheets/templates/carriedRules";
import type { RegionRules } from "../../sheets/templates/rules";
import { type Area, areaOfAddress, areasOfAddresses, common, SHEET_COLUMNS, SHEET_ROWS } from "../../spreadsheet/areas";
import { inWorkbook, WorkbookFailure } from "../failure";
import { areaOf, queueUsed, rangeAt } from "./areas";
import { cellStyleOf, queuePlainFont, STYLE_PROPERTIES } from "./cellStyle";
import { contentsOf } from "./cells";

/** What is to be read. A sheet is named by the host's id, or by its name; the one in front where it is left out. */
export type RegionPlace =
  | { readonly kind: "selection" }
  | { readonly kind: "area"; readonly sheetId: string; readonly area: Area }
  | { readonly kind: "sheet"; readonly sheetId?: string };

/** How many cells are read with their looks at once: the host takes 5 MB a request, and a look is some 100 bytes. */
const MOST_CELLS = 50_000;

/**
 * Reads cells with their looks. Two requests, whatever the size.
 *
 * @param place the selection (whole rows and columns of it as far as the sheet is used), an area, or what is used of a
 *   sheet.
 * @returns what is there. Formulas are as the host gives them: with "=", in English, with commas.
 * @throws WorkbookFailure where the sheet or the selection is blank, or it is more than 50,000 cells.
 */
export async function readRegion(place: RegionPlace): Promise<RegionRead> {
  return inWorkbook(async (context) => {
    const { worksheet, areaWanted } = queueArea(context, place);
    worksheet.load("id,name");
    const plainFont = queuePlainFont(context);
    const { names } = context.workbook;
    names.load("items/name,items/formula");
    await context.sync();

    const area = areaWanted();
    if (area.rows * area.columns > MOST_CELLS) {
      throw new WorkbookFailure(
        `That's more than ${MOST_CELLS.toLocaleString("en-US")} cells, too many to read at once. Select fewer, then try again.`,
      );
    }
    const range = rangeAt(worksheet, area);
    range.load("formulas,values,numberFormat");
    const looks = range.getCellProperties(STYLE_PROPERTIES);
    const columns = range.getColumnProperties({ format: { columnWidth: true } });
    const merged = range.getMergedAreasOrNullObject();
    merged.load("address");
    await context.sync();

    const plain = plainFont();
    return {
      sheetId: worksheet.id,
      sheetName: worksheet.name,
      row: area.row,
      column: area.column,
      // An error of the sheet is copied as the text that it shows, so it doesn't matter which of the two it is.
      formulas: contentsOf({ formulas: range.formulas, values: range.values }),
      values: range.values as CellContent[][],
      formats: range.numberFormat as string[][],
      dress: looks.value.map((row) => row.map((cell) => cellStyleOf(cell, plain))),
      widths: columns.value.map(({ format }) => charactersOfPoints(format?.columnWidth ?? 0)),
      merged: merged.isNullObject ? [] : areasOfAddresses(merged.address).flatMap((one) => within(one, area)),
      names: Object.fromEntries(names.items.map(({ name, formula }) => [name, String(formula).replace(/^=/, "")])),
    };
  });
}

/** The sheet, and the area on it; the area is known after the request. */
function queueArea(
  context: Excel.RequestContext,
  place: RegionPlace,
): { readonly worksheet: Excel.Worksheet; readonly areaWanted: () => Area } {
  const { worksheets } = context.workbook;
  if (place.kind === "area") return { worksheet: worksheets.getItem(place.sheetId), areaWanted: () => place.area };

  const selection = place.kind === "selection" ? context.workbook.getSelectedRange() : undefined;
  selection?.load("rowIndex,columnIndex,rowCount,columnCount");
  const ofSheet = place.kind === "sheet" && place.sheetId !== undefined ? worksheets.getItem(place.sheetId) : undefined;
  const worksheet = selection?.worksheet ?? ofSheet ?? worksheets.getActiveWorksheet();
  // Formats of whole columns make the used range as long as the sheet; then only the cells with contents count.
  const formatted = queueUsed(worksheet, false);
  const filled = queueUsed(worksheet, true);
  return {
    worksheet,
    areaWanted: () => {
      const all = formatted();
      const used = all && all.rows * all.columns <= MOST_CELLS ? all : filled();
      const area = used && selection ? shortened(areaOf(selection), used) : used;
      if (!area) {
        throw new WorkbookFailure(
          selection
            ? "The selected cells are blank. Select the cells you want, then try again."
            : `The sheet “${worksheet.name}” has nothing on it.`,
        );
      }
      return area;
    },
  };
}

/** A selection with its whole rows and columns cut to what is used; undefined where nothing used is in it. */
function shortened(selected: Area, used: Area): Area | undefined {
  const shared = common(selected, used);
  if (!shared) return undefined;
  const { row, rows } = selected.rows === SHEET_ROWS ? shared : selected;
  const { column, columns } = selected.columns === SHEET_COLUMNS ? shared : selected;
  return { row, column, rows, columns };
}

/** The part of a merged area that is in an area, counted from its first cell. */
function within(merged: Area, area: Area): Area[] {
  const shared = common(merged, area);
  if (!shared || shared.rows * shared.columns === 1) return [];
  return [{ ...shared, row: shared.row - area.row, column: shared.column - area.column }];
}

/**
 * The lists to choose from and the rules by which cells stand out, in some cells of a sheet. Three requests at most: the
 * host tells a list only of cells that all have the same one, so rows are asked first, then the cells of those with
 * lists.
 *
 * @param sheet its id or name.
 * @param area at most some thousand rows.
 */
export async function readRules(sheet: string, area: Area): Promise<RegionRules> {
  return inWorkbook(async (context) => {
    const range = rangeAt(context.workbook.worksheets.getItem(sheet), area);
    const { conditionalFormats } = range;
    conditionalFormats.load("items/id,items/type");
    const rows = Array.from({ length: area.rows }, (_, row) => range.getRow(row));
    for (const row of rows) row.dataValidation.load("type");
    await context.sync();

    const isFormula = ({ type }: Excel.ConditionalFormat) => type === "Custom";
    const formulas = conditionalFormats.items.filter(isFormula).map((format) => {
      const { rule } = format.custom;
      rule.load("formula");
      const ranges = format.getRanges();
      ranges.load("address");
      return { rule, ranges };
    });
    const cells = rows.flatMap((row, down) => {
      if (row.dataValidation.type === "None") return [];
      return Array.from({ length: area.columns }, (_, across) => {
        const cell = row.getCell(0, across);
        cell.dataValidation.load("type,rule");
        return { cell, place: { row: area.row + down, column: area.column + across } };
      });
    });
    if (formulas.length > 0 || cells.length > 0) await context.sync();

    return {
      lists: joinedDown(
        cells.flatMap(({ cell: { dataValidation }, place }) => {
          const { list } = dataValidation.type === "List" ? dataValidation.rule : {};
          return typeof list?.source === "string"
            ? [{ area: { ...place, rows: 1, columns: 1 }, source: list.source }]
            : [];
        }),
      ),
      warnings: formulas.flatMap(({ rule, ranges }) => warningsOf(rule.formula, ranges.address, area)),
      others: conditionalFormats.items.filter((format) => !isFormula(format)).length,
    };
  });
}

/** A rule's formula is written for the first cell of its first range; each part that is in the area gets its own. */
function warningsOf(formula: string, address: string, area: Area): { area: Area; formula: string }[] {
  const ranges = address.split(",").map(areaOfAddress);
  const [first] = ranges;
  return ranges.flatMap((range) => {
    const shared = common(range, area);
    return shared && first ? [{ area: shared, formula: ruleFor(formula, first, shared) }] : [];
  });
}

type ListOf = RegionRules["lists"][number];

function joinedDown(lists: readonly ListOf[]): ListOf[] {
  const joined: ListOf[] = [];
  for (const list of lists) {
    const index = joined.findIndex(
      ({ area, source }) =>
        source === list.source && area.column === list.area.column && area.row + area.rows === list.area.row,
    );
    const above = joined[index];
    if (above) joined[index] = { ...above, area: { ...above.area, rows: above.area.rows + 1 } };
    else joined.push(list);
  }
  return joined;
}
