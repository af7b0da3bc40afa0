import { conversion, type UnitName } from "../../headings/units";
import { quoted } from "../../quantities/bed/evaluate";
import { type Field, fields } from "../../quantities/bed/fields";
import { type RateKey, rateNames, stoneListNames } from "../../quantities/bed/rates";
import { readNumber, readShare } from "../../quantities/numberText";
import { readTape } from "../../quantities/tape";
import { cellAddress } from "../../spreadsheet/areas";
import type { ProductNames } from "./listSheet";
import type { InputRole, ResultRole, Role } from "./roles";

/** A column that formulas read. */
export interface ReadColumn {
  readonly column: number;
  readonly unit?: UnitName;
  /** Whether a row of it holds text, such as a length off the tape. */
  readonly hasText: boolean;
  /** Whether numbers such as 8 stand for percent. */
  readonly hasPercents: boolean;
}

/** What is taken for all beds where no column says it. */
export interface Assumed {
  readonly depthIn: number;
  readonly scrapeIn: number;
  readonly stone: string;
  /** A share: 0.08 is 8 %. Left out, it is the office's rate, or the usual share where it has none. */
  readonly waste?: number;
  /** How many of the two long and of the two short sides have a border. */
  readonly longBorders: number;
  readonly shortBorders: number;
}

/** What the formulas of a list are made from. */
export interface ListSetting {
  readonly columns: ReadonlyMap<Role, ReadColumn>;
  /** Results that are in a column already, or will: formulas name their cells. Others are worked out in place. */
  readonly shown: ReadonlySet<ResultRole>;
  readonly assumed: Assumed;
  readonly rates: ReadonlySet<RateKey>;
  readonly weighsStone: boolean;
  readonly products?: ProductNames;
  /** The office's list of stone says what each is sold by. */
  readonly stonesHaveUnits?: boolean;
  /** The office has typed the yard's own step or minimum for a stone. */
  readonly stonesHaveSteps?: boolean;
  /** The edging was typed into a column of its own, so it isn't known where its corners are. */
  readonly typesEdging?: boolean;
}

/** A row for which formulas are made. */
export interface Row {
  readonly setting: ListSetting;
  readonly row: number;
  /** Another result of the same row: its cell, or how it is worked out. */
  readonly of: (role: ResultRole) => string;
}

/** The depth that a border of usual size leaves for stone: 4 in, less 1.5 in of trench, less 0.5 in of gap (common practice). */
const USUAL_DEPTH_IN = inches("borderHeight") - inches("trenchDepth") - inches("topGap");

export const usualAssumed: Assumed = {
  depthIn: USUAL_DEPTH_IN,
  scrapeIn: inches("scrapeDepth"),
  stone: fields.stone.initial,
  longBorders: readNumber(fields.longBorders.initial, "sides"),
  shortBorders: readNumber(fields.shortBorders.initial, "sides"),
};

function inches(key: "borderHeight" | "trenchDepth" | "topGap" | "scrapeDepth"): number {
  return readTape(fields[key].initial, "in");
}

/** The cells in which the office keeps what it has weighed of its stone, and the yard's own steps and minimums. */
export const { weights: STONE_WEIGHTS, steps: STONE_STEPS, minimums: STONE_MINIMUMS } = stoneListNames;

/** The rates that have cells in a workbook with these names. */
export function rateKeysOf(names: readonly string[]): Set<RateKey> {
  const there = new Set(names.map((name) => name.toLowerCase()));
  return new Set((Object.keys(rateNames) as RateKey[]).filter((key) => there.has(rateNames[key].toLowerCase())));
}

const NONE = quoted("no rate");

/**
 * A size or pace of the office as it is in a formula: its name where the workbook has it, else its usual value.
 *
 * @param blankMatters set where a blank would be taken for 0 or for "not given": then the formula gets words instead,
 *   which it refuses.
 */
export function rate({ rates }: ListSetting, key: RateKey, blankMatters = false): string {
  const field: Field = fields[key];
  if (!rates.has(key)) {
    return String(field.reads === "share" ? readShare(field.initial, key) : readNumber(field.initial, key));
  }
  const name = rateNames[key];
  if (!blankMatters) return name;
  const isLength = field.reads === "feet" || field.reads === "inches";
  return isLength ? `IF(LEN(${name}),${name},${NONE})` : `IF(COUNT(${name}),${name},${NONE})`;
}

/** A formula that gives words where one of the rates it rests on is missing, blank, text, or under 0. */
export function guarded(keys: readonly RateKey[], formula: string, others: readonly string[] = []): string {
  const names = [...others, ...keys.map((key) => rateNames[key])];
  const list = names.join(",");
  const shares = keys.filter((key) => fields[key].reads === "share").map((key) => rateNames[key]);
  const divides = keys.every((key) => !("mayBeZero" in fields[key]));
  const conditions = [
    `COUNT(${list})=${names.length}`,
    `MIN(${list})${divides && others.length === 0 ? ">" : ">="}0`,
    ...(shares.length > 0 ? [`MAX(${shares.join(",")})<=2`] : []),
  ];
  return `IF(IFERROR(AND(${conditions.join(",")}),FALSE),${formula},${NONE})`;
}

/** A length as an argument of a function that takes bare numbers in a unit; undefined where no column holds it. */
export function lengthArgument(
  { columns }: ListSetting,
  role: InputRole,
  row: number,
  wanted: "ft" | "in",
): string | undefined {
  const column = columns.get(role);
  if (!column) return undefined;
  const inches =
    role === "length" ? columns.get("lengthInches") : role === "width" ? columns.get("widthInches") : undefined;
  const cell = cellAddress({ row, column: column.column });
  if (inches) return `${cell}+${cellAddress({ row, column: inches.column })}/12`;
  return converted(cell, column, wanted);
}

/**
 * Tape text says its own unit. A number in another unit than the function's is converted; where the column holds text,
 * too, the conversion must leave that alone.
 */
function converted(cell: string, { unit = "ft", hasText }: ReadColumn, wanted: "ft" | "in"): string {
  const factor = conversion(unit, wanted);
  if (factor === "") return cell;
  if (!hasText) return cell + factor;
  if (unit === "ft" || unit === "in") return `BED.${unit === "ft" ? "FEET" : "INCHES"}(${cell})${factor}`;
  // Text without a unit is in the heading's unit, as the numbers are; text with one is read as it is.
  const reader = wanted === "ft" ? "BED.FEET" : "BED.INCHES";
  return `IF(ISNUMBER(${cell}),${cell}${factor},IFERROR(${reader}(${cell}&${quoted(` ${unit}`)}),${cell}))`;
}

/** A length in decimal feet, to be calculated with: a blank is an error there, and not 0. */
export function decimalFeet(setting: ListSetting, role: InputRole, row: number): string | undefined {
  const column = setting.columns.get(role);
  const argument = lengthArgument(setting, role, row, "ft");
  if (argument === undefined) return undefined;
  return column?.unit === "in" && !argument.includes("+")
    ? `BED.INCHES(${cellAddress({ row, column: column.column })})/12`
    : `BED.FEET(${argument})`;
}

export function depthArgument(setting: ListSetting, row: number): string {
  return lengthArgument(setting, "depth", row, "in") ?? String(setting.assumed.depthIn);
}

export function stoneArgument({ columns, assumed }: ListSetting, row: number): string {
  const column = columns.get("stone");
  return column ? cellAddress({ row, column: column.column }) : quoted(assumed.stone);
}

/** In a column of percents 8 is 8 %, and so is a cell that was typed as 8%. */
export function wasteArgument(setting: ListSetting, row: number): string {
  const { columns, assumed } = setting;
  const column = columns.get("waste");
  if (!column) return assumed.waste === undefined ? rate(setting, "waste", true) : String(assumed.waste);
  const cell = cellAddress({ row, column: column.column });
  return column.hasPercents ? `IF(N(${cell})<1,${cell},${cell}/100)` : cell;
}

/** The radius and the number of rounded corners, where columns hold both; a radius alone rounds nothing. */
export function cornerArguments(setting: ListSetting, row: number): { radius: string; corners: string } | undefined {
  const radius = lengthArgument(setting, "radius", row, "ft");
  const corners = setting.columns.get("corners");
  return radius && corners ? { radius, corners: cellAddress({ row, column: corners.column }) } : undefined;
}
