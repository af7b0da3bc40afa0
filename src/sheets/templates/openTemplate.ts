import { must } from "../../quantities/must";
import type { Anchor } from "../../spreadsheet/areas";
import { written } from "../plain/written";
import type { CellStyle, Plan } from "../plan";
import { areaOf, cellsOf } from "./area";
import { literal } from "./literal";
import { canonical, movedBy, referenceOf } from "./reference";
import type { Template, TemplateCell } from "./template";
import { tokensOf } from "./tokens";

/** What stands in for something outside that a template reads, where it is opened. */
export type Choice =
  | { readonly kind: "keep" }
  | { readonly kind: "value"; readonly value: string | number | boolean }
  /** Other cells, as they are listed: `Rates!$B$5`. */
  | { readonly kind: "cells"; readonly reads: string };

export type Choices = ReadonlyMap<string, Choice>;

/** What of a template is still to be asked; a template can be opened where nothing is. */
export function unanswered({ outside = [] }: Template, choices: Choices, isThere: (reads: string) => boolean) {
  return outside.filter(({ reads, opened }) => !choices.has(reads) && (opened === "ask" || !isThere(reads)));
}

/**
 * The plan of a template for one place. What it reads outside without an answer is read as it is listed.
 *
 * @param template one that was read without faults.
 * @param choices answers, by what the template reads.
 * @param at where its first cell will stand.
 */
export function templatePlan(template: Template, choices: Choices, at: Anchor): Plan {
  const { name, rows, columns, widths, looks = [], merged = [] } = template;
  const table = <T>(value: T): T[][] => Array.from({ length: rows }, () => Array<T>(columns).fill(value));
  const formulas = table<string | number>("");
  const formats = table("General");
  const dress = table<CellStyle | undefined>(undefined);
  const answers = new Map([...choices].map(([reads, choice]) => [reads.toLowerCase(), choice]));
  for (const { at: places, numberFormat = "General", ...look } of looks) {
    for (const { row, column } of places.flatMap((place) => [...cellsOf(must(areaOf(place)))])) {
      must(formats[row])[column] = numberFormat;
      if (Object.keys(look).length > 0) must(dress[row])[column] = look;
    }
  }
  for (const cell of template.cells) {
    const { row, column } = must(areaOf(cell.at));
    must(formulas[row])[column] = contentOf(cell, answers, at);
    // In a cell for text a formula would stay the text that it is written as.
    if (cell.formula !== undefined && must(formats[row])[column] === "@") must(formats[row])[column] = "General";
  }
  return {
    title: `template ${name}`,
    rows,
    columns,
    formulas,
    formats,
    looks: [],
    widths,
    warnings: (template.warnings ?? []).map((rule) => ({
      area: must(areaOf(rule.at)),
      when: moved(rule.when, answers, at),
    })),
    choices: (template.choices ?? []).map((list) => ({ area: must(areaOf(list.at)), names: list.names })),
    dress,
    ...(merged.length > 0 && { merged: merged.map((place) => must(areaOf(place))) }),
  };
}

function contentOf({ formula, text, number, truth }: TemplateCell, answers: Choices, at: Anchor): string | number {
  if (formula !== undefined) return moved(formula, answers, at);
  return written(number ?? truth ?? text ?? "");
}

/** A formula of a template as it is in a sheet. */
function moved(formula: string, answers: Choices, at: Anchor): string {
  return tokensOf(formula)
    .map(({ type, value }) => {
      if (type !== "range" && type !== "range_beam" && type !== "range_named") return value;
      const reference = type === "range_named" ? undefined : referenceOf(value);
      if (reference?.kind === "cells" && reference.sheet === undefined) {
        return movedBy(reference.range, at.row, at.column);
      }
      const choice = answers.get((canonical(value) ?? value).toLowerCase());
      if (choice?.kind === "value") return literal(choice.value);
      return choice?.kind === "cells" ? choice.reads : value;
    })
    .join("");
}
