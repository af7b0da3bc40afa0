import { readAddress, sheetRows } from "./a1";
import { difference, fromRange, intersection, toRange } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area, CellsChanged, ListRule, RulesPort, Shading } from "./port";
import { heldPart, heldRange, makeRoom, rangeOf, sheetOf } from "./sheetOf";
import { shiftedArea } from "./shift";

type Sheet = ReturnType<typeof sheetOf>;
type GridShading = ReturnType<Sheet["getConditionalFormattingRules"]>[number];
type GridList = ReturnType<Sheet["getDataValidations"]>[number];

/** Rules that dress cells by a formula, and lists to choose from. */
export class GridRules implements RulesPort {
  constructor(private readonly grid: OpenGrid) {}

  putShading({ id, area, rule }: Shading): void {
    makeRoom(this.grid, area);
    const held = heldPart(this.grid, area);
    if (!held) return;
    const sheet = sheetOf(this.grid, area.sheetId);
    const builder = sheet
      .newConditionalFormattingRule()
      .whenFormulaSatisfied(rule.formula)
      .setRanges([toRange(held)]);
    if (rule.fill !== undefined) builder.setBackground(rule.fill);
    if (rule.fontColor !== undefined) builder.setFontColor(rule.fontColor);
    if (rule.bold !== undefined) builder.setBold(rule.bold);
    const made = { ...builder.build(), cfId: id };
    const isKnown = sheet.getConditionalFormattingRules().some(({ cfId }) => cfId === id);
    if (isKnown) sheet.setConditionalFormattingRule(id, made);
    else sheet.addConditionalFormattingRule(made);
  }

  shadings(area: Area): Shading[] {
    return sheetOf(this.grid, area.sheetId)
      .getConditionalFormattingRules()
      .flatMap((made) => {
        const areas = made.ranges.map((range) => fromRange(area.sheetId, range));
        const first = areas.find((one) => intersection(one, area));
        return first ? [{ id: made.cfId, area: first, rule: shadingRule(made) }] : [];
      });
  }

  removeShading(sheetId: string, id: string): void {
    sheetOf(this.grid, sheetId).deleteConditionalFormattingRule(id);
  }

  followRows(before: readonly Shading[], change: CellsChanged): void {
    const { injector, library } = this.grid;
    const lexer = injector.get(library.sheets.LexerTreeBuilder);
    const { sheetId } = change.area;
    // In the browser the grid splits a rule into which rows come, and shifts the second part's formula wrongly.
    for (const { id } of this.shadings({ ...change.area, row: 0, rowCount: sheetRows })) {
      if (!before.some((one) => one.id === id)) this.removeShading(sheetId, id);
    }
    for (const { id, area, rule } of before) {
      const after = shiftedArea(area, change);
      if (!after) this.removeShading(sheetId, id);
      else {
        const formula = lexer.moveFormulaRefOffset(rule.formula, 0, after.row - area.row);
        this.putShading({ id, area: after, rule: { ...rule, formula } });
      }
    }
  }

  clearShadings(area: Area): void {
    const sheet = sheetOf(this.grid, area.sheetId);
    for (const made of sheet.getConditionalFormattingRules()) {
      const areas = made.ranges.map((range) => fromRange(area.sheetId, range));
      if (!areas.some((one) => intersection(one, area))) continue;
      const ranges = areas.flatMap((one) => difference(one, area)).map(toRange);
      if (ranges.length === 0) sheet.deleteConditionalFormattingRule(made.cfId);
      else sheet.setConditionalFormattingRule(made.cfId, { ...made, ranges });
    }
  }

  putList(area: Area, { source, dropDown, ignoreBlanks, strict }: ListRule): void {
    makeRoom(this.grid, area);
    const builder = this.grid.api.newDataValidation();
    const from = source.startsWith("=") ? this.sourceRange(area, source) : undefined;
    if (from) builder.requireValueInRange(from, false, dropDown);
    else builder.requireValueInList(listOf(source), false, dropDown);
    const { ARROW } = this.grid.library.core.DataValidationRenderMode;
    builder.setAllowBlank(ignoreBlanks).setAllowInvalid(!strict).setOptions({ renderMode: ARROW });
    heldRange(this.grid, area)?.setDataValidation(builder.build());
  }

  private sourceRange(area: Area, source: string) {
    const read = readAddress(source.slice(1));
    const { workbook } = this.grid;
    const sheet =
      read?.sheetName === undefined ? sheetOf(this.grid, area.sheetId) : workbook.getSheetByName(read.sheetName);
    if (!read || !sheet) throw new Error(`${source} refers to no cells.`);
    return rangeOf(this.grid, { sheetId: sheet.getSheetId(), ...read.rectangle });
  }

  lists(area: Area): { area: Area; rule: ListRule }[] {
    return sheetOf(this.grid, area.sheetId)
      .getDataValidations()
      .flatMap((made) =>
        made.getRanges().flatMap((range) => {
          const shared = intersection(fromRange(area.sheetId, range.getRange()), area);
          return shared ? [{ area: shared, rule: listRule(this.grid.library, made) }] : [];
        }),
      );
  }

  clearLists(area: Area): void {
    if (this.lists(area).length > 0) heldRange(this.grid, area)?.setDataValidation(null);
  }
}

function shadingRule({ rule }: GridShading): Shading["rule"] {
  const style = "style" in rule ? rule.style : {};
  return {
    formula: "value" in rule ? String(rule.value) : "",
    fill: style.bg?.rgb ?? undefined,
    fontColor: style.cl?.rgb ?? undefined,
    bold: style.bl === undefined ? undefined : style.bl === 1,
  };
}

function listRule({ sheets }: OpenGrid["library"], made: GridList): ListRule {
  const { formula1 = "", showDropDown, allowBlank } = made.rule;
  return {
    // The grid puts its own id of the workbook before the sheet; the host names no workbook there.
    source: formula1.startsWith("=")
      ? formula1.replace(/^='\[[^\]]*\]/, "='")
      : sheets.deserializeListOptions(formula1).join(","),
    dropDown: showDropDown ?? true,
    ignoreBlanks: allowBlank ?? true,
    strict: !made.getAllowInvalid(),
  };
}

function listOf(source: string): string[] {
  return source.split(",").map((one) => one.trim());
}
