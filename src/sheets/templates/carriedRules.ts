import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { type Area, areaAddress, cellAddress } from "../../spreadsheet/areas";
import { areaOfRegion, piecesOf, type Saved } from "./readsOf";
import { movedBy } from "./reference";
import type { RegionRules } from "./rules";
import type { Template } from "./template";

/** The lists and rules of a region as a template holds them, and what is left behind, in sentences. */
export interface CarriedRules {
  readonly choices: NonNullable<Template["choices"]>;
  readonly warnings: NonNullable<Template["warnings"]>;
  readonly leftOut: readonly string[];
}

export function carriedRules(rules: RegionRules, saved: Saved): CarriedRules {
  const area = areaOfRegion(saved.region);
  const local = (one: Area) => ({ ...one, row: one.row - area.row, column: one.column - area.column });
  const leftOut: string[] = [];
  const choices = rules.lists.flatMap((list) => {
    const names = list.source.startsWith("=")
      ? namesIn(list.source, saved)
      : list.source.split(",").map((s) => s.trim());
    const kept = names.filter((name) => name !== "" && !name.includes(","));
    if (kept.length > 0) return [{ at: areaAddress(local(list.area)), names: kept }];
    leftOut.push(`The list of ${areaAddress(list.area)} (${list.source}) can't be saved.`);
    return [];
  });
  const warnings = rules.warnings.flatMap((rule) => {
    const when = moved(rule.formula, rule.area, saved);
    if (when !== undefined) return [{ at: areaAddress(local(rule.area)), when }];
    leftOut.push(`The color rule of ${areaAddress(rule.area)} reads cells outside it, so it's left out.`);
    return [];
  });
  if (rules.others > 0) leftOut.push(`Color rules without formulas are left out (${rules.others}).`);
  return { choices, warnings, leftOut };
}

/** A rule's formula for another first cell, as a sheet writes it there. */
export function ruleFor(formula: string, from: Area, to: Area): string {
  return translateFormulaToA1(translateFormulaToR1C1(formula, cellAddress(from)), cellAddress(to));
}

/** A rule's formula in the template's own addresses; undefined where it reads anything outside. */
function moved(formula: string, area: Area, saved: Saved): string | undefined {
  const { region } = saved;
  const at = { row: area.row, column: area.column, sheetName: region.sheetName, rows: 1, columns: 1 };
  const pieces = piecesOf(formula, at, saved);
  if (!pieces || pieces.some(({ kind }) => kind === "outside")) return undefined;
  return pieces
    .map((piece) => {
      if (piece.kind === "inside") return movedBy(piece.range, -region.row, -region.column);
      return piece.kind === "text" ? piece.text : piece.reads;
    })
    .join("");
}

/** What the cells show that a list is read from. */
function namesIn(source: string, saved: Saved): string[] {
  const { region, around } = saved;
  const meaning = around.names?.[source.slice(1)];
  const at = { row: region.row, column: region.column, sheetName: region.sheetName, rows: 1, columns: 1 };
  const [, piece] = piecesOf(meaning === undefined ? source : `=${meaning}`, at, saved) ?? [];
  return piece ? listedBy(piece, saved) : [];
}

const MOST_NAMES = 100;

function listedBy(piece: NonNullable<ReturnType<typeof piecesOf>>[number], { region, around }: Saved): string[] {
  if (piece.kind === "text") return [];
  const { range } = piece;
  const sheet = piece.kind === "inside" ? region.sheetName : piece.sheet;
  if (!range || sheet === undefined) return [];
  const { top, left, bottom = top, right = left } = range;
  if (typeof top !== "number" || typeof left !== "number") return [];
  if (typeof bottom !== "number" || typeof right !== "number") return [];
  const names: string[] = [];
  for (let row = top; row <= bottom && names.length < MOST_NAMES; row += 1)
    for (let column = left; column <= right; column += 1)
      names.push(String(around.valueAt?.(sheet, row, column) ?? ""));
  return names.slice(0, MOST_NAMES);
}
