import { type Look, looks, warned } from "../sheets/looks";
import type { Plan } from "../sheets/plan";

const RULE_SIDES = { ruleAbove: "EdgeTop", ruleBelow: "EdgeBottom" } as const;

/** Queues a plan's looks, warnings and lists onto the range it was written to. */
export function queueLooks(range: Excel.Range, plan: Plan): void {
  for (const { area, look } of plan.looks) dress(part(range, area), looks[look]);
  for (const { area, when } of plan.warnings) {
    const { custom } = part(range, area).conditionalFormats.add(Excel.ConditionalFormatType.custom);
    custom.rule.formula = when;
    custom.format.fill.color = warned.fill!;
    custom.format.font.color = warned.color!;
  }
  for (const { area, names } of plan.choices) {
    // The cell may also hold what is not in the list, such as a density, so a choice is offered and not forced.
    const { dataValidation } = part(range, area);
    dataValidation.rule = { list: { inCellDropDown: true, source: names.join(",") } };
    dataValidation.errorAlert = { showAlert: false, style: "Information", title: "", message: "" };
  }
}

function part(range: Excel.Range, area: { row: number; column: number; rows: number; columns: number }): Excel.Range {
  return range.getCell(area.row, area.column).getResizedRange(area.rows - 1, area.columns - 1);
}

function dress({ format }: Excel.Range, look: Look): void {
  const { fill, color, bold, italic, size, align, indent, wrap, top } = look;
  if (fill) format.fill.color = fill;
  if (color) format.font.color = color;
  if (bold !== undefined) format.font.bold = bold;
  if (italic !== undefined) format.font.italic = italic;
  if (size) format.font.size = size;
  if (align) format.horizontalAlignment = align;
  if (indent) format.indentLevel = indent;
  if (wrap) format.wrapText = true;
  if (wrap || top) format.verticalAlignment = "Top";
  for (const rule of ["ruleAbove", "ruleBelow"] as const) {
    const ruleColor = look[rule];
    if (!ruleColor) continue;
    const border = format.borders.getItem(RULE_SIDES[rule]);
    border.style = "Continuous";
    border.color = ruleColor;
  }
}
