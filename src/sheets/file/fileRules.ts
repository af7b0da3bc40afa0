import type { Workbook, Worksheet } from "exceljs";
import { type Anchor, type Area, areaAddress, cellAddress } from "../../spreadsheet/areas";
import { fileFormula } from "../../spreadsheet/fileFormula";
import type { Plan } from "../plan";
import { warnedStyle } from "./fileLooks";

/** The longest list of choices that a file holds without cells of its own for it; from memory. */
const LONGEST_CHOICES = 255;

/**
 * Adds what a plan asks for beside its cells: warnings, lists to choose from, names.
 *
 * @param references how references to sheets are spelled in the file, where otherwise than in the plan.
 */
export function addRules(
  book: Workbook,
  sheet: Worksheet,
  plan: Plan,
  at: Anchor,
  references: ReadonlyMap<string, string>,
): void {
  plan.warnings.forEach(({ area, when }, index) => {
    const formulae = [fileFormula(when, references)];
    const rule = { type: "expression" as const, priority: index + 1, formulae, style: warnedStyle() };
    sheet.addConditionalFormatting({ ref: areaAddress(placed(area, at)), rules: [rule] });
  });
  for (const { area, names: choices } of plan.choices) {
    const list = choices.join(",");
    if (list.length > LONGEST_CHOICES || choices.some((choice) => choice.includes(","))) continue;
    for (const cell of cellsOf(placed(area, at))) {
      // The cell may also hold what is not in the list, so a choice is offered and not forced.
      sheet.getCell(cell.row + 1, cell.column + 1).dataValidation = {
        type: "list",
        allowBlank: true,
        showErrorMessage: false,
        formulae: [`"${list.replaceAll('"', '""')}"`],
      };
    }
  }
  for (const { name, area } of plan.names ?? []) {
    const fixed = corners(placed(area, at)).map((corner) => cellAddress(corner).replace(/^([A-Z]+)/, "$$$1$$"));
    book.definedNames.add(`'${sheet.name}'!${fixed.join(":")}`, name);
  }
}

/** An area of a plan, on the sheet on which the plan stands. */
export function placed(area: Area, at: Anchor): Area {
  return { ...area, row: area.row + at.row, column: area.column + at.column };
}

/** The first and the last cell of an area. */
export function corners({ row, column, rows, columns }: Area): [Anchor, Anchor] {
  return [
    { row, column },
    { row: row + rows - 1, column: column + columns - 1 },
  ];
}

function* cellsOf({ row, column, rows, columns }: Area): Generator<Anchor> {
  for (let down = row; down < row + rows; down += 1)
    for (let across = column; across < column + columns; across += 1) yield { row: down, column: across };
}
