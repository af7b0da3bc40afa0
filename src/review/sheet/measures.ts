import { type Role, usualUnit } from "../../headings/roles";
import { sizeOf, type UnitName, units } from "../../headings/units";
import { must } from "../../quantities/must";
import { INCHES_PER_FOOT } from "../../quantities/units";
import type { Cell } from "../book";
import { fullName } from "../knowledge";
import { asNumber, type Study } from "../study";

/** A number of the sheet that says what it measures. */
export interface Measure {
  readonly cell: Cell;
  readonly role: Role;
  /** As it is in the cell. */
  readonly number: number;
  /** The unit that the sheet names; undefined where it names none. */
  readonly unit: UnitName | undefined;
  /** In the base of what the role measures: inches for small lengths, else feet, square feet, tons, cubic yards. */
  readonly amount: number;
  readonly isTyped: boolean;
  /** What belongs to one bed: a row where headings tell, else a column. */
  readonly record: string;
}

/** All numbers of a workbook with a role; a step between is a place to pause. */
export function* findMeasures(study: Study): Generator<undefined, Measure[]> {
  const found: Measure[] = [];
  for (const grid of study.book.grids) {
    if (!study.isChecked(grid.index)) continue;
    for (let column = grid.left; column <= grid.right; column++) {
      for (let row = grid.top; row <= grid.bottom; row++) {
        if (row % 1000 === 0) yield undefined;
        const kind = grid.kind(row, column);
        if (kind !== "number" && kind !== "text") continue;
        const measure = measureAt(study, { sheet: grid.index, row, column }, kind);
        if (measure) found.push(measure);
      }
    }
  }
  return found;
}

function measureAt(study: Study, cell: Cell, kind: "number" | "text"): Measure | undefined {
  const { sheet, row, column } = cell;
  const [grid, places] = [must(study.book.grids[sheet]), must(study.book.places[sheet])];
  const { role, roleFrom } = places.roleAt(row, column);
  if (role === undefined || (roleFrom === "heading" && places.isTotalRow(row, column))) return undefined;
  const unit = places.unitOf(row, column);
  const number = kind === "number" ? must(grid.number(row, column)) : taped(study, cell, role, unit);
  if (number === undefined) return undefined;
  return {
    cell,
    role,
    number,
    unit,
    amount: number * sizeFor(role, unit),
    isTyped: kind === "number" && grid.formula(row, column) === undefined,
    record: roleFrom === "heading" ? `${sheet}:row ${row}` : `${sheet}:column ${column}`,
  };
}

/** Tape text, by our own reader; other text is no measure. */
function taped(study: Study, cell: Cell, role: Role, unit: UnitName | undefined): number | undefined {
  const taken = unit ?? usualUnit(role);
  const isLength = taken !== undefined && units[taken].measures === "length";
  const text = study.valueAt(cell);
  if (!isLength || typeof text !== "string" || !/^\s*'?[\d.]/.test(text)) return undefined;
  return asNumber(study.call(fullName(study.knowledge, taken === "in" ? "INCHES" : "FEET"), [text]));
}

/** Lengths that are usual in inches are compared in inches, all else in the base unit of its measure. */
function sizeFor(role: Role, unit: UnitName | undefined): number {
  if (!unit) return 1;
  if (usualUnit(role) === "in") return units[unit].measures === "length" ? sizeOf(unit) * INCHES_PER_FOOT : 1;
  return sizeOf(unit);
}

/** The measure of a role that belongs to the same bed as another: of several the nearest. */
export function companion(study: Study, { cell, record }: Measure, role: Role): Measure | undefined {
  const byRecord = study.once("measures by record", () => {
    const found = new Map<string, Measure[]>();
    for (const measure of study.measures) {
      const key = `${measure.record} ${measure.role}`;
      const list = found.get(key);
      if (list) list.push(measure);
      else found.set(key, [measure]);
    }
    return found;
  });
  const distance = (one: Measure) => Math.abs(one.cell.row - cell.row) + Math.abs(one.cell.column - cell.column);
  return byRecord.get(`${record} ${role}`)?.reduce((best, one) => (distance(one) < distance(best) ? one : best));
}
