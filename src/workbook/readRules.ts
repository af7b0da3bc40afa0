import type { Area } from "../sheets/plan";
import { ruleFor } from "../sheets/templates/carriedRules";
import type { RegionRules } from "../sheets/templates/rules";
import { areaOfAddress } from "./areaOfAddress";
import { common } from "./freePlace";
import { inWorkbook } from "./trouble";

/**
 * The lists to choose from and the rules by which cells stand out, in some cells of a sheet. Three syncs at most: the
 * host tells a list only of cells that all have the same one, so rows are asked first, then the cells of those with
 * lists.
 *
 * @param sheet its id or name.
 * @param area at most some thousand rows.
 */
export async function readRules(sheet: string, area: Area): Promise<RegionRules> {
  return inWorkbook(async (context) => {
    const range = context.workbook.worksheets
      .getItem(sheet)
      .getRangeByIndexes(area.row, area.column, area.rows, area.columns);
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

/** A rule's formula is written for the first cell of its first range; each part that lies in the area gets its own. */
function warningsOf(formula: string, address: string, area: Area): { area: Area; formula: string }[] {
  const ranges = address.split(",").map(areaOfAddress);
  return ranges.flatMap((range) => {
    const shared = common(range, area);
    return shared ? [{ area: shared, formula: ruleFor(formula, ranges[0]!, shared) }] : [];
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
