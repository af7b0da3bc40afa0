import { type Heading, readHeading } from "../../headings/heading";
import { isUnitOf, type Meaning, meaningOf } from "../../headings/meaning";
import type { UnitName } from "../../headings/units";
import { must } from "../../quantities/must";
import { plainName } from "../../quantities/nearestName";
import { STONES } from "../../quantities/stone";
import { stoneOfYard } from "../../quantities/yardStones";
import type { Area } from "../../spreadsheet/areas";
import { edgingTrouble } from "./edging";
import { type HeadingRow, headingAt, headingRowAt, headingRows, isApart, rowsBelow } from "./listRows";
import { type ColumnFacts, columnFacts, ListCells, type ListSheet, middle } from "./listSheet";
import { isTakenFrom, lacksList, productLists, productRole } from "./products";
import { convertible, isResult, measureOf, ownUnit, type Role, roleLabel } from "./roles";
import { soldTrouble } from "./sold";

/** A list of beds as it was found on a sheet, and what its columns are taken for. */
export interface ListFit {
  readonly cells: ListCells;
  readonly heading: HeadingRow;
  /** All rows that head a list on this sheet, to choose another. */
  readonly headings: readonly HeadingRow[];
  /** The first and the last row below the headings. */
  readonly rows: { readonly first: number; readonly last: number };
  readonly columns: readonly FittedColumn[];
}

/** What the estimator says that a column holds. */
export interface Correction {
  readonly role: Role | "none";
  /** Left out, it stays what it was. */
  readonly unit?: UnitName;
}
export type Corrections = ReadonlyMap<number, Correction>;

/**
 * Finds the list of beds around the selection, and proposes what its columns hold.
 *
 * @param chosen a heading row that was chosen by hand, of those in `headings`.
 * @returns undefined where no row of the sheet reads like the headings of a list of beds.
 */
export function fitList(sheet: ListSheet, selection: Area, chosen?: HeadingRow): ListFit | undefined {
  const cells = new ListCells(sheet);
  const headings = headingRows(cells);
  const heading =
    headings.find(({ row, first }) => row === chosen?.row && first === chosen.first) ??
    headingRowAt(headings, selection);
  if (!heading) return undefined;
  const rows = rowsBelow(cells, heading, headings);
  return { cells, heading, headings, rows, columns: fitColumns(cells, heading, rows) };
}

/** The columns with what the estimator said of them: a role that was given to one column goes away from any other. */
export function settleColumns(columns: readonly FittedColumn[], corrections: Corrections): FittedColumn[] {
  const given = new Map<Role, number>();
  for (const [column, { role }] of corrections) if (role !== "none") given.set(role, column);
  return columns.map((fitted) => {
    const { role: _, unit, ...rest } = fitted;
    const said = corrections.get(fitted.column);
    const isMoved = fitted.role !== undefined && given.has(fitted.role) && given.get(fitted.role) !== fitted.column;
    if (!said) return isMoved ? { ...rest, sure: "none", asks: [], why: "you chose another column" } : fitted;
    if (said.role === "none" || given.get(said.role) !== fitted.column)
      return { ...rest, sure: "none", asks: [], why: "your choice" };
    const wanted = said.unit ?? unit;
    const taken = wanted && isUnitOf(said.role, wanted) ? wanted : ownUnit(said.role);
    return { ...rest, role: said.role, ...(taken && { unit: taken }), sure: "sure", asks: [], why: "your choice" };
  });
}

/** What a column is taken for, how sure that is, and why. */
export interface FittedColumn {
  readonly column: number;
  readonly heading: string;
  /** Absent where it holds not used, or where it has to be asked. */
  readonly role?: Role;
  /** What bare numbers in it are in; absent for names and plain counts. */
  readonly unit?: UnitName;
  /** "ask" where the heading can be read several ways: then `asks` has them, and nothing is taken. */
  readonly sure: "sure" | "likely" | "ask" | "none";
  readonly asks: readonly Role[];
  readonly why: string;
  readonly facts: ColumnFacts;
}

/**
 * Proposes what the columns of a list hold. No role is given twice, and no column has two.
 *
 * @param rows the first and the last row below the headings.
 */
export function fitColumns(
  cells: ListCells,
  heading: HeadingRow,
  rows: { readonly first: number; readonly last: number },
): FittedColumn[] {
  const inside: number[] = [];
  for (let row = rows.first; row <= rows.last; row += 1) if (holdsBed(cells, row, heading)) inside.push(row);
  const readings: Reading[] = [];
  for (let column = heading.first; column <= heading.last; column += 1) {
    const text = headingAt(cells, heading, column);
    const facts = columnFacts(cells, column, inside);
    const read = readHeading(text);
    readings.push({
      column,
      heading: text,
      unit: convertible(read.unit),
      saysT: read.saysT,
      meaning: byData(columnMeaning(read, cells.sheet), facts),
      facts,
    });
  }
  const without = productLists.filter(
    (list) => !readings.some(({ meaning }) => meaning.roles.includes(productRole(list))),
  );
  readings.forEach((reading, index) => {
    const ofNone = reading.meaning.roles.some((role) => without.some((list) => isTakenFrom(list, role)));
    if (ofNone) readings[index] = { ...reading, meaning: NOTHING };
  });
  const hasStone = readings.some(({ meaning }) => meaning.roles.includes("stone"));
  const stones = hasStone ? undefined : readings.find(({ facts }) => holdsStones(facts));
  const withStone = readings.map(
    (reading): Reading =>
      reading === stones
        ? { ...reading, meaning: { roles: ["stone"], strength: "within" }, isByValues: true }
        : reading,
  );
  const pairs = feetBesideInches(withStone);
  return withStone.map((reading) => pairs.get(reading.column) ?? fitted(reading, withStone));
}

/** Whether a column holds names of stone and nothing else, whatever it is called; some may be the yard's own. */
function holdsStones({ numbers, tape, formulas, otherTexts }: ColumnFacts): boolean {
  if (otherTexts.length === 0 || numbers.length + tape + formulas > 0) return false;
  const known = otherTexts.filter((text) => STONES.some(({ name }) => name === plainName(text)) || stoneOfYard(text));
  return known.length * 2 >= otherTexts.length;
}

/** Whether a row may be a bed: it is not blank, no total, and more than one text across. */
function holdsBed(cells: ListCells, row: number, heading: HeadingRow): boolean {
  if (isApart(cells, row, heading)) return false;
  let filled = 0;
  for (let column = heading.first; column <= heading.last; column += 1) if (!cells.isBlank(row, column)) filled += 1;
  return filled > 1;
}

const NOTHING: Meaning = { roles: [], strength: "vague" };

/** Formulas take weights of stone in tons a cubic yard only, and products from lists that are there. */
function columnMeaning(heading: Heading, { products }: ListSheet): Meaning {
  const meaning = meaningOf(heading);
  if (meaning.roles.some((role) => lacksList(role, products))) return NOTHING;
  const isOtherDensity = meaning.roles.includes("density") && heading.unit && heading.unit !== "tons/cu yd";
  return isOtherDensity ? NOTHING : meaning;
}

/** What is in the column can contradict its heading: an area that holds names, a kind of stone that holds numbers. */
function byData(meaning: Meaning, { numbers, tape, formulas, otherTexts }: ColumnFacts): Meaning {
  const holdsNames = otherTexts.length > 0 && numbers.length + tape + formulas === 0;
  if (holdsNames && meaning.roles.length === 1 && meaning.roles[0] === "area")
    return { roles: ["bed"], strength: "within" };
  if (holdsNames && meaning.roles.includes("border") && otherTexts.every((text) => edgingTrouble(text) === undefined))
    return { roles: ["edgingKind"], strength: "plain" };
  // Who sold a job is no unit of stone.
  if (holdsNames && meaning.roles.includes("soldBy") && otherTexts.every((text) => soldTrouble(text) !== undefined))
    return NOTHING;
  if (numbers.length > 0 && otherTexts.length === 0 && meaning.roles.includes("stone")) {
    return { roles: ["stone", "tons", "yards"], strength: "vague" };
  }
  return meaning;
}

function fitted(reading: Reading, all: readonly Reading[]): FittedColumn {
  const { column, heading, meaning, facts, unit, saysT } = reading;
  const [role, ...more] = meaning.roles;
  const base = { column, heading, facts, asks: [] as readonly Role[] };
  if (role === undefined) return { ...base, sure: "none", why: heading === "" ? "no heading" : "not used" };
  const ask = (why: string): FittedColumn => ({ ...base, sure: "ask", asks: meaning.roles, why });
  if (more.length > 0) return ask(`may be ${inWords(meaning.roles)}`);

  const rivals = all.filter(
    (other) => other.column !== column && other.meaning.roles.length === 1 && other.meaning.roles[0] === role,
  );
  if (rivals.length > 0 && (role === "job" || role === "bed")) {
    const better = rivals.some((other) => isBetter(other, reading));
    if (better) return { ...base, sure: "none", why: "another column names it" };
  } else if (rivals.length > 0) {
    return ask(`${rivals.length + 1} columns could be ${roleLabel(role).toLowerCase()}`);
  }
  const trouble = doubt(reading, role, all);
  if (trouble) return ask(trouble);

  const taken = unit ?? ownUnit(role);
  const assumes =
    unit === undefined && taken !== undefined && needsUnit(role) && facts.numbers.length + facts.formulas > 0;
  return {
    ...base,
    role,
    ...(taken && { unit: taken }),
    sure: meaning.strength === "plain" && !assumes && !saysT ? "sure" : "likely",
    why: reading.isByValues
      ? "holds names of stone"
      : saysT
        ? "t is read as short tons"
        : whyWords(meaning, role, unit, assumes ? taken : undefined),
  };
}

function whyWords(
  { strength }: Meaning,
  role: Role,
  unit: UnitName | undefined,
  assumed: UnitName | undefined,
): string {
  const says = `${strength === "plain" ? "says" : "is about"} ${roleLabel(role).toLowerCase()}`;
  if (assumed) return `${says}; no unit, so ${unitWords(assumed)}`;
  return unit && needsUnit(role) && !(isResult(role) && unit === ownUnit(role))
    ? `${says}, in ${unitWords(unit)}`
    : says;
}

/** A unit that could be misread in a sentence is written out. */
function unitWords(unit: UnitName): string {
  return unit === "in" ? "inches" : unit === "ft" ? "feet" : unit === "m" ? "meters" : unit;
}

/** Whether numbers such as 8 stand for percent in a column of waste. */
export function holdsPercents({ unit, facts }: Pick<FittedColumn, "unit" | "facts">): boolean {
  return facts.numbers.some((one) => one >= 1) || (unit === "%" && facts.numbers.length === 0);
}

/** Whether the unit makes a difference: of lengths, areas, volumes and weights. */
export function needsUnit(role: Role): boolean {
  const measure = measureOf(role);
  return measure === "length" || measure === "area" || measure === "volume" || measure === "weight";
}

/** Between two columns of names the plainer one, and of equals the first, is taken. */
function isBetter(one: Reading, other: Reading): boolean {
  if (one.meaning.strength !== other.meaning.strength) return one.meaning.strength === "plain";
  return one.column < other.column;
}

/** A pair of columns for one length: "Length ft" and, right beside it, "Length in" with less than a foot in each row. */
function feetBesideInches(readings: readonly Reading[]): Map<number, FittedColumn> {
  const pairs = new Map<number, FittedColumn>();
  for (const [role, rest] of [
    ["length", "lengthInches"],
    ["width", "widthInches"],
  ] as const) {
    const some = readings.filter(({ meaning }) => meaning.roles.length === 1 && meaning.roles[0] === role);
    const [feet, inches] = some;
    const isPair =
      some.length === 2 && feet?.unit === "ft" && inches?.unit === "in" && inches.column === feet.column + 1;
    if (
      !isPair ||
      feet.facts.tape > 0 ||
      inches.facts.tape > 0 ||
      inches.facts.numbers.some((one) => one < 0 || one >= 12)
    )
      continue;
    const why = `feet in one column and inches in the next are one ${role}`;
    for (const [one, part] of [
      [feet, role],
      [inches, rest],
    ] as const) {
      const { column, heading, facts, unit } = one;
      pairs.set(column, { column, heading, facts, role: part, ...(unit && { unit }), sure: "likely", asks: [], why });
    }
  }
  return pairs;
}

function inWords(roles: readonly Role[]): string {
  const labels = roles.map((role) => roleLabel(role).toLowerCase());
  return labels.length < 2 ? labels.join("") : `${labels.slice(0, -1).join(", ")} or ${labels.at(-1)}`;
}

/** A heading as it is read, with what is below it. */
interface Reading {
  readonly column: number;
  readonly heading: string;
  readonly unit: UnitName | undefined;
  readonly saysT: boolean;
  readonly meaning: Meaning;
  readonly facts: ColumnFacts;
  /** Its values say what it holds, whatever its heading says. */
  readonly isByValues?: boolean;
}

function isMetric(unit: UnitName | undefined): boolean {
  return unit !== undefined && ["m", "cm", "mm", "sq m", "cu m", "kg"].includes(unit);
}

export const DEEPEST_IN = 18;
export const LONGEST_FT = 600;

/** Why a column cannot be what its heading says, without asking; undefined where it can. */
function doubt({ facts, unit, saysT }: Reading, role: Role, all: readonly Reading[]): string | undefined {
  if (saysT && all.some((other) => isMetric(other.unit))) return "t may be short tons or metric tonnes: which unit?";
  const { numbers, tape, formulas, otherTexts } = facts;
  const isLength = measureOf(role) === "length" && !isResult(role);
  if (isLength && otherTexts.length > 0 && numbers.length + tape + formulas === 0) {
    return `holds text such as “${must(otherTexts[0]).slice(0, 20)}”, which isn't a length`;
  }
  if (unit !== undefined) return undefined;
  const typical = middle(numbers);
  if ((role === "depth" || role === "scrape") && typical > DEEPEST_IN)
    return `${typical} is deep for inches: which unit?`;
  if ((role === "length" || role === "width") && typical > LONGEST_FT)
    return `${typical} is long for feet: which unit?`;
  return undefined;
}
