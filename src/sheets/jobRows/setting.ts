import type { UnitName } from "../../headings/units";
import { quoted } from "../../quantities/bed/evaluate";
import { type Field, fields } from "../../quantities/bed/fields";
import { type RateKey, rateNames, stoneListNames } from "../../quantities/bed/rates";
import { readNumber, readShare } from "../../quantities/numberText";
import { readTape } from "../../quantities/tape";
import type { ResultRole, Role } from "./roles";

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
  /** Results that stand in a column already, or will: formulas name their cells. Others are worked out in place. */
  readonly shown: ReadonlySet<ResultRole>;
  readonly assumed: Assumed;
  readonly rates: ReadonlySet<RateKey>;
  readonly weighsStone: boolean;
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

/** The cells in which the office keeps the weights of stone that it has weighed. */
export const STONE_WEIGHTS = stoneListNames.weights;

/** The rates that have cells in a workbook with these names. */
export function rateKeysOf(names: readonly string[]): Set<RateKey> {
  const there = new Set(names.map((name) => name.toLowerCase()));
  return new Set((Object.keys(rateNames) as RateKey[]).filter((key) => there.has(rateNames[key].toLowerCase())));
}

const NONE = quoted("no rate");

/**
 * A size or pace of the office as it stands in a formula: its name where the workbook has it, else its usual value.
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
