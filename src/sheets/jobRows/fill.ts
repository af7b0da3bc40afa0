import { must } from "../../quantities/must";
import { type Area, cellAddress, columnLetters, overlap, SHEET_COLUMNS } from "../../spreadsheet/areas";
import { listHasUnits } from "../estimate/rateFormulas";
import { numberFormats } from "../plan";
import { assumptions } from "./assumptions";
import { edgingTrouble } from "./edging";
import { type Corrections, type FittedColumn, holdsPercents, type ListFit, settleColumns } from "./fit";
import { judgeRows, type ListRow, type NeededColumns } from "./listRows";
import { type CellContent, isTyped, type ListCells, type ListSheet } from "./listSheet";
import { lacksList, productLists, productRole, productTrouble } from "./products";
import { resultFormula, results } from "./results";
import { isResult, type ResultRole, type Role, roleLabel } from "./roles";
import { type Assumed, type ListSetting, type ReadColumn, rateKeysOf } from "./setting";
import { soldTrouble } from "./sold";
import { wantedResults } from "./wanted";

/** What the estimator asks for. */
export interface FillOptions {
  readonly corrections: Corrections;
  /** In the order in which new columns are to stand. */
  readonly results: readonly ResultRole[];
  readonly assumed: Assumed;
  /** Results whose cells with contents may be written over. */
  readonly replace: ReadonlySet<ResultRole>;
}

/** One cell that would change: what is there, and what would be there. */
export interface CellChange {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: CellContent;
  readonly after: CellContent;
  /** For a cell that has no number format of its own yet. */
  readonly formatIfPlain?: string;
}

export interface FilledColumn {
  readonly role: ResultRole;
  readonly heading: string;
  readonly column: number;
  readonly isNew: boolean;
  /** It was not asked for: another one rests on it. */
  readonly isAdded: boolean;
  /** The formula of the first bed, and the cells that it reads, with their headings. */
  readonly first: { readonly address: string; readonly formula: string; readonly reads: readonly string[] };
  /** How many cells are written, and how many have the very formula already. */
  readonly written: number;
  readonly same: number;
  /** Filled cells with contents else: left alone unless they may be written over. */
  readonly clashes: readonly { readonly address: string; readonly before: CellContent; readonly after: string }[];
  readonly replaces: boolean;
}

/** Preview into a list, told before anything is. */
export interface Filling {
  readonly columns: readonly FilledColumn[];
  readonly beds: readonly ListRow[];
  readonly skipped: readonly ListRow[];
  readonly changes: readonly CellChange[];
  /** Results that cannot be worked out, and why. */
  readonly troubles: readonly string[];
  /** What is taken for granted. */
  readonly assumes: readonly string[];
}

/** Works out what would be written into a list. Nothing is asked of the host. */
export function fillList(fit: ListFit, options: FillOptions): Filling {
  const { cells, heading, rows } = fit;
  const fitted = settleColumns(fit.columns, options.corrections);
  const byRole = new Map(fitted.flatMap((one) => (one.role ? [[one.role, one] as const] : [])));
  const filled = new Set(
    [...byRole].flatMap(([role, { facts }]) => (isResult(role) && facts.filled > 0 ? [role] : [])),
  );
  const givenBefore = listSetting(fit, byRole, options.assumed, filled);
  // What is to be written again cannot be what it is worked out from.
  const given = new Set(
    [...filled].filter((role) => !options.results.includes(role) || isTyped(must(byRole.get(role)).facts)),
  );
  const wanted = wantedResults(options.results, givenBefore, given);

  const fresh = wanted.results.filter(({ role }) => !byRole.has(role));
  const place = freeColumns(fit, fresh.length);
  if (place === undefined) {
    return {
      columns: [],
      beds: [],
      skipped: [],
      changes: [],
      assumes: [],
      troubles: ["There's no room for new columns on this sheet."],
    };
  }
  const columns = new Map<Role, ReadColumn>(givenBefore.columns);
  fresh.forEach(({ role }, index) => {
    columns.set(role, { column: place + index, hasText: false, hasPercents: false });
  });
  const shown = new Set([...filled, ...wanted.results.map(({ role }) => role)]);
  const made: ListSetting = { ...givenBefore, columns, shown, typesEdging: given.has("border") };

  const judged = judgeRows(
    cells,
    heading,
    rows,
    neededColumns(
      wanted.results.map(({ role }) => role),
      made,
      given,
      byRole,
    ),
  ).map((row) => {
    if (row.kind !== "bed") return row;
    const merged = wanted.results.some(({ role }) => isMerged(cells.sheet, row.row, must(columns.get(role)).column));
    if (merged) return { ...row, kind: "note", why: "merged cells are in the way" } as const;
    const why = unknownName(cells, row.row, made);
    return why === undefined ? row : ({ ...row, kind: "short", why } as const);
  });
  const beds = judged.filter(({ kind }) => kind === "bed");
  const changes: CellChange[] = [];
  const done = wanted.results.map(({ role, isAdded }) => {
    return fillColumn(
      { fit, options, made, beds, changes, headings: headingsOf(fitted, fresh, place) },
      role,
      isAdded,
      byRole.get(role),
    );
  });
  return {
    columns: done,
    beds,
    skipped: judged.filter(({ kind }) => kind !== "bed"),
    // Without a bed there is nothing to head.
    changes: beds.length > 0 ? changes : [],
    troubles: wanted.troubles,
    assumes: assumptions(
      made,
      fitted,
      wanted.results.map(({ role }) => role),
      beds,
    ),
  };
}

/** What is wrong with a name in a row that its column's table doesn't have. */
function unknownName(cells: ListCells, row: number, { columns, products = {} }: ListSetting): string | undefined {
  const tables: readonly (readonly [Role, (name: string) => string | undefined])[] = [
    ["edgingKind", edgingTrouble],
    ["soldBy", soldTrouble],
    ...productLists.map((list) => {
      return [productRole(list), (name: string) => productTrouble(list, name, products[list] ?? [])] as const;
    }),
  ];
  const troubles = tables.map(([role, trouble]) => {
    const column = columns.get(role)?.column;
    return column === undefined ? undefined : trouble(String(cells.value(row, column)));
  });
  return troubles.find((trouble) => trouble !== undefined);
}

function headingsOf(
  fitted: readonly FittedColumn[],
  fresh: readonly { readonly role: ResultRole }[],
  place: number,
): Map<string, string> {
  return new Map([
    ...fitted.map(({ column, heading }) => [columnLetters(column), heading] as const),
    ...fresh.map(({ role }, index) => [columnLetters(place + index), results[role].heading] as const),
  ]);
}

/** What all columns of a filling have in common; its changes are gathered as they come. */
interface Job {
  readonly fit: ListFit;
  readonly options: FillOptions;
  readonly made: ListSetting;
  readonly beds: readonly ListRow[];
  readonly changes: CellChange[];
  readonly headings: ReadonlyMap<string, string>;
}

/** Fills one column: the formula of each bed, where it is not there yet and nothing else is, or may be written over. */
function fillColumn(
  { fit, options, made, beds, changes, headings }: Job,
  role: ResultRole,
  isAdded: boolean,
  existing: FittedColumn | undefined,
): FilledColumn {
  const { cells, heading } = fit;
  const { column } = must(made.columns.get(role));
  const [sheet, formatIfPlain] = [cells.sheet.name, numberFormats[results[role].format]];
  const replaces = options.replace.has(role);
  const clashes: { address: string; before: CellContent; after: string }[] = [];
  let [written, same] = [0, 0];
  if (!existing) changes.push({ sheet, row: heading.row, column, before: "", after: results[role].heading });
  for (const { row } of beds) {
    const before = cells.content(row, column);
    const after = resultFormula(made, role, row);
    if (isSame(before, after)) {
      same += 1;
      continue;
    }
    const isFilled = !cells.isBlank(row, column);
    if (isFilled) clashes.push({ address: cellAddress({ row, column }), before, after });
    if (isFilled && !replaces) continue;
    written += 1;
    changes.push({ sheet, row, column, before, after, formatIfPlain });
  }
  const row = beds[0]?.row ?? fit.rows.first;
  const formula = resultFormula(made, role, row);
  return {
    role,
    heading: existing?.heading ?? results[role].heading,
    column,
    isNew: !existing,
    isAdded,
    first: { address: cellAddress({ row, column }), formula, reads: readsOf(formula, headings) },
    written,
    same,
    clashes,
    replaces,
  };
}

/** The cells that a formula reads, each once, with the heading of its column. */
function readsOf(formula: string, headings: ReadonlyMap<string, string>): string[] {
  const cells = formula.replace(/"(?:[^"]|"")*"/g, "").matchAll(/(?<![A-Z_.\d])([A-Z]{1,3})(\d+)(?![\d(])/g);
  return [...new Set([...cells].map(([cell, letters]) => `${cell} ${headings.get(must(letters)) ?? ""}`.trim()))];
}

/** Whether two formulas differ in nothing but spaces and capitals. */
function isSame(before: CellContent, after: string): boolean {
  return typeof before === "string" && plain(before) === plain(after);
}

function plain(formula: string): string {
  return formula.replace(/("(?:[^"]|"")*")|\s+/g, (_, text: string | undefined) => text ?? "").toUpperCase();
}

/** The setting of a list as it stands: which columns formulas can read. */
function listSetting(
  fit: ListFit,
  byRole: ReadonlyMap<Role, FittedColumn>,
  assumed: Assumed,
  shown: ReadonlySet<ResultRole>,
): ListSetting {
  const { names, products, weighsStone, stonesHaveSteps = false } = fit.cells.sheet;
  const columns = new Map<Role, ReadColumn>();
  for (const [role, { column, unit, facts }] of byRole) {
    if (lacksList(role, products)) continue;
    columns.set(role, {
      column,
      ...(unit && { unit }),
      hasText: facts.tape + facts.otherTexts.length > 0,
      hasPercents: role === "waste" && holdsPercents({ ...(unit && { unit }), facts }),
    });
  }
  const rates = rateKeysOf(names);
  const stonesHaveUnits = listHasUnits(names);
  return {
    ...{ columns, shown, assumed, rates, weighsStone, stonesHaveUnits, stonesHaveSteps },
    ...(products && { products }),
  };
}

/** What a bed must have filled, for what is wanted. */
function neededColumns(
  roles: readonly ResultRole[],
  { columns, assumed }: ListSetting,
  given: ReadonlySet<ResultRole>,
  byRole: ReadonlyMap<Role, FittedColumn>,
): NeededColumns {
  const wants = new Set(roles.map((role) => results[role].needs));
  const must = new Set<Role>();
  const sides = () => must.add("length").add("width");
  if (wants.has("sides")) sides();
  if (wants.has("area")) given.has("area") ? must.add("area") : sides();
  if (wants.has("border")) {
    if (given.has("border")) must.add("border");
    else if (assumed.shortBorders > 0) sides();
    else must.add("length");
  }
  if (must.size === 0) must.add(byRole.has("length") ? "length" : byRole.has("area") ? "area" : "stone");
  const set = [...must].flatMap((role) => {
    const column = columns.get(role);
    if (!column) return [];
    const reads = role === "area" || role === "border" ? "number" : role === "stone" ? "name" : "length";
    return [{ column: column.column, label: roleLabel(role), reads } as const];
  });
  return [set];
}

/**
 * Where new columns go: right beside the list, else to the right of everything that is there.
 *
 * @param count how many.
 * @returns the first of them; undefined where the sheet has no room.
 */
function freeColumns({ cells, heading, rows }: ListFit, count: number): number | undefined {
  const isFree = (first: number, columns: number) => {
    const area: Area = { row: heading.row, column: first, rows: rows.last - heading.row + 1, columns };
    const { tables, merged } = cells.sheet;
    if ([...tables.map((table) => table.area), ...merged].some((other) => overlap(other, area))) return false;
    for (let column = first; column < first + columns; column += 1) {
      for (let row = heading.row; row <= rows.last; row += 1) if (!cells.isBlank(row, column)) return false;
    }
    return true;
  };
  const beside = Math.max(heading.last, heading.table ? lastOf(heading.table.area) : 0) + 1;
  // What is to the right keeps a blank column before it.
  const first =
    isFree(beside, count + 1) || beside + count === SHEET_COLUMNS ? beside : beyond(cells.sheet, cells.right);
  return count === 0 || first + count <= SHEET_COLUMNS ? first : undefined;
}

/** Whether a cell is part of merged cells. */
export function isMerged({ merged }: ListSheet, row: number, column: number): boolean {
  return merged.some((area) => overlap(area, { row, column, rows: 1, columns: 1 }));
}

function beyond({ tables, merged }: ListSheet, right: number): number {
  return Math.max(right, ...tables.map(({ area }) => lastOf(area)), ...merged.map(lastOf)) + 2;
}

const lastOf = ({ column, columns }: Area) => column + columns - 1;
