import { toCol } from "@borgar/fx";
import { must } from "../../quantities/must";
import { areaAddress } from "../../spreadsheet/areas";
import { type Cell, cellKey, type Target } from "../book";
import type { Pattern } from "../formula/pattern";
import { shifted } from "../formula/reference";
import { isPlainSum } from "../formula/sums";
import { isReference } from "../formula/tree";
import { alongOf, type Family, formulaFor, readBy } from "../sheet/family";
import { type TypedColumn, typedColumnsIn } from "../sheet/likeColumns";
import type { Outlier } from "../sheet/outliers";
import { comesFrom, type Retyped, retypedIn } from "../sheet/retyped";
import { asNumber, type Study } from "../study";
import { addressFrom, list, nameOf, short } from "../words";
import { change, type Observation, offBy, type Rule } from "./rule";

/** In a row of sums every column holds something else, and there a number this far off is no sum typed over. */
export const LIKELY_RATIO = 3;

export const typedOver: Rule = {
  id: "typed-over",
  title: "A number where the cells next to it have a formula",
  level: "error",
  rank: 40,
  matters: "It won't change when a measurement or rate does, so the price goes wrong and nothing shows it.",
  *look(study) {
    for (const outlier of study.outliers) {
      if (outlier.holds !== "number" || !study.isChecked(outlier.cell.sheet)) continue;
      yield observeTypedOver(study, outlier);
    }
    for (const retyped of retypedIn(study)) yield retyped && observeRetyped(study, retyped);
    for (const column of typedColumnsIn(study)) {
      if (column) for (const cell of column.cells) yield observeTypedColumn(study, cell, column);
      else yield undefined;
    }
  },
};

function observeTypedColumn({ book }: Study, cell: Cell, { heading, others }: TypedColumn): Observation {
  const typed = must(must(book.grids[cell.sheet]).number(cell.row, cell.column));
  const columns = list(others.map((column) => `column ${toCol(column)}`));
  return {
    cell,
    level: "warning",
    group: `${cell.sheet}:column:${cell.column}`,
    about: String(typed),
    seen: `holds ${short(typed)}, typed; “${heading}” in ${columns} is worked out.`,
    todo: "Use a formula in this column, too, or ignore this and say why.",
    rank: 10,
  };
}

/** The number is right today, so that this is no error yet. */
function observeRetyped(study: Study, { cell, typed, formula, direction }: Retyped): Observation {
  return {
    cell,
    level: "warning",
    group: `${cell.sheet}:${direction}:${direction === "down" ? cell.column : cell.row}`,
    about: String(typed),
    seen: `holds ${short(typed)}, typed; ${formula} gives the same result now, and would update.`,
    todo: "Put the formula back, or ignore this and say why.",
    rank: 5,
    fix: [change(study, cell, formula)],
  };
}

function observeTypedOver(study: Study, { cell, family }: Outlier): Observation | undefined {
  const { book } = study;
  const formula = formulaFor(book, family, cell);
  const typed = must(must(book.grids[cell.sheet]).number(cell.row, cell.column));
  if (formula === undefined) return undefined;
  // Where what it would read comes from the number itself, the number is what is given.
  if (comesFrom(study, study.readBy(cell, formula)?.targets ?? [], cell)) return undefined;
  const would = asNumber(study.wouldGive(cell, formula));
  if (isMixed(study, family) && !isNear(typed, would)) return undefined;
  // A formula that only shows another cell says little of what is in the next one.
  if (onlyShows(patternOf(study, family)) && !isNear(typed, would)) return undefined;
  // Beyond an empty column another table may begin.
  if (isPastAir(study, family, cell) && !isNear(typed, would)) return undefined;
  if (isNumbering(study, cell) || isNoSum(study, family, cell, typed, would)) return undefined;
  const gives =
    would === undefined
      ? `the cells next to it would make it ${formula}.`
      : offBy(typed, would, 0) === 0
        ? `${formula} gives the same result now, and would update.`
        : `${formula} would give ${short(would)}.`;
  return {
    cell,
    group: `${cell.sheet}:${family.line.direction}:${family.line.at}:${family.skeleton}`,
    about: String(typed),
    seen: `holds ${short(typed)}, typed; ${gives}`,
    todo: "Put the formula back, or ignore this and say why.",
    rank: Math.max(5, offBy(typed, would, typedOver.rank)),
    fix: [change(study, cell, formula)],
  };
}

const patternOf = ({ book }: Pick<Study, "book">, { members: [first] }: Family) =>
  must(book.patternAt(must(first).sheet, must(first).row, must(first).column));

/** Whether an empty column is between a cell and all formulas of a family that goes across. */
function isPastAir({ book }: Study, { line, members }: Family, { column }: Cell): boolean {
  if (line.direction === "down") return false;
  const grid = must(book.grids[line.sheet]);
  return members.every((member) => {
    for (let at = Math.min(column, member.column) + 1; at < Math.max(column, member.column); at++)
      if (grid.isColumnBlank(at)) return true;
    return false;
  });
}

/** `=B4` and `=+B4` show another cell and do nothing else. */
function onlyShows({ tree = null }: Pattern): boolean {
  const inner = tree?.type === "UnaryExpression" ? (tree.arguments[0] ?? null) : tree;
  return isReference(inner);
}

/** A number in a row or column of 1, 2, 3 counts lines. */
function isNumbering({ book }: Study, { sheet, row, column }: Cell): boolean {
  const grid = must(book.grids[sheet]);
  const at = (down: number, across: number) => {
    const text = String(grid.value(row + down, column + across)).replace(/^\((.*)\)$/, "$1");
    return /^\d+$/.test(text) ? Number(text) : undefined;
  };
  const own = at(0, 0);
  if (own === undefined) return false;
  return [
    [0, 1],
    [1, 0],
  ].some(([down = 0, across = 0]) => {
    const next = (by: number) => at(by * down, by * across) === own + by;
    return (next(-1) && (next(-2) || next(1))) || (next(1) && next(2));
  });
}

/** In a row of sums, what is less than its largest part is something else, such as an average. */
function isNoSum(study: Study, family: Family, cell: Cell, typed: number, would: number | undefined): boolean {
  const pattern = patternOf(study, family);
  if (family.line.direction === "down" || typed === would || !isPlainSum(pattern)) return false;
  // An average is somewhere between its parts.
  if (pattern.skeleton.includes("AVERAGE")) return false;
  const parts = readBy(study.book, family, cell).flatMap((target) => {
    const values = target && study.valuesAt(target);
    return Array.isArray(values) ? values.flat() : [values];
  });
  const numbers = parts.filter((one) => typeof one === "number");
  return numbers.length > 1 && numbers.every((one) => one >= 0) && typed < Math.max(...numbers);
}

/** Whether a line across runs through columns that hold different things. */
export function isMixed({ book }: Study, { line, members }: Outlier["family"]): boolean {
  if (line.direction === "down") return false;
  const places = must(book.places[line.sheet]);
  const kinds = members.map(({ row, column }) => {
    const { unit, role, roleFrom } = places.describe(row, column);
    return roleFrom === "heading" ? `${role} ${unit}` : `${places.headingOf(row, column) && unit}`;
  });
  return new Set(kinds).size > 1;
}

function isNear(typed: number, would: number | undefined): boolean {
  const ratio = typed / (would ?? 0);
  return ratio > 1 / LIKELY_RATIO && ratio < LIKELY_RATIO;
}

/** More formulas of another kind than this, as a share of the family, are a choice and no mistake. */
export const MOST_OTHERS = 0.25;

export const unlike: Rule = {
  id: "unlike-neighbors",
  title: "A formula differs from the ones next to it",
  level: "error",
  rank: 30,
  covers: ["error", "adjusted-total"],
  matters: "One line is worked out differently from the rest but looks the same.",
  *look(study) {
    const members = new Set(study.families.flatMap((family) => family.members.map(cellKey)));
    const others = new Map<Outlier["family"], number>();
    for (const { family, holds } of study.outliers) {
      if (holds === "formula") others.set(family, (others.get(family) ?? 0) + 1);
    }
    for (const outlier of study.outliers) {
      const { family, cell, holds } = outlier;
      if (holds !== "formula" || !study.isChecked(cell.sheet) || members.has(cellKey(cell))) continue;
      if (must(others.get(family)) > Math.max(1, MOST_OTHERS * family.members.length) || isMixed(study, family))
        continue;
      if (isLikeBeside(study, outlier) || isTypedOut(study, outlier)) continue;
      yield isSameSum(study, outlier) ? observeOneByOne(study, outlier) : observeUnlike(study, outlier);
    }
  },
};

/** How far another formula of its kind may be, past a column of air or two. */
const REACH = 3;

/** Whether a cell's formula is the one that its neighbors across the line have: then it goes with those. */
function isLikeBeside({ book }: Study, { cell, family }: Outlier): boolean {
  const pattern = book.patternAt(cell.sheet, cell.row, cell.column);
  const [down, across] = family.line.direction === "down" ? [0, 1] : [1, 0];
  return [1, -1].some((way) => {
    for (let step = 1; step <= REACH; step++) {
      const [row, column] = [cell.row + way * step * down, cell.column + way * step * across];
      const beside = book.patternAt(cell.sheet, row, column);
      if (beside) return beside === pattern;
    }
    return false;
  });
}

/** Arithmetic without a cell, such as `=40+3`, is a typed number, and where it isn't near it's something else. */
function isTypedOut(study: Study, { cell, family }: Outlier): boolean {
  const { book } = study;
  if (must(book.patternAt(cell.sheet, cell.row, cell.column)).references.length > 0) return false;
  const [is, formula] = [must(book.grids[cell.sheet]).number(cell.row, cell.column), formulaFor(book, family, cell)];
  return is === undefined || !isNear(is, formula === undefined ? undefined : asNumber(study.wouldGive(cell, formula)));
}

/** `E4+E5` and `SUM(E4:E5)` are one thing, written in two ways. */
function isSameSum(study: Study, { cell, family }: Outlier): boolean {
  const { book } = study;
  const formula = formulaFor(book, family, cell);
  const pattern = must(book.patternAt(cell.sheet, cell.row, cell.column));
  if (formula === undefined || !isPlainSum(pattern) || !isPlainSum(patternOf(study, family))) return false;
  const cellsOf = (targets: readonly (Target | undefined)[]) =>
    targets.flatMap((target) =>
      target && target.rows * target.columns <= SAME_SUM_CELLS
        ? Array.from({ length: target.rows * target.columns }, (_, at) =>
            cellKey({
              sheet: target.sheet,
              row: target.row + Math.floor(at / target.columns),
              column: target.column + (at % target.columns),
            }),
          )
        : ["too many"],
    );
  const [own, others] = [cellsOf(book.targetsOf(cell)), cellsOf(readBy(book, family, cell))];
  return own.toSorted().join() === others.toSorted().join();
}

/** The same sum as its neighbors, which take a range where it picks cells; undefined where both take ranges. */
function observeOneByOne(study: Study, { cell, family }: Outlier): Observation | undefined {
  const { book } = study;
  const formula = formulaFor(book, family, cell);
  const isRange = readBy(book, family, cell).some((target) => target && target.rows * target.columns > 1);
  const isPicked = book.targetsOf(cell).every(({ rows, columns }) => rows * columns === 1);
  if (formula === undefined || !isRange || !isPicked) return undefined;
  return {
    cell,
    level: "question",
    group: `${cell.sheet}:one by one:${family.line.direction}:${family.line.at}`,
    about: must(must(book.grids[cell.sheet]).formula(cell.row, cell.column)),
    seen: `adds cells one by one; the cells next to it have a range, such as ${formula}.`,
    matters: "A line inserted later would be in the other totals and not in this one.",
    todo: "Use the range here, too, or ignore this.",
    rank: 5,
    fix: [change(study, cell, formula)],
  };
}

/** Longer sums are not written out cell by cell. */
const SAME_SUM_CELLS = 200;

/** `=+B4/C4` and `=(B4/C4)` are written in two ways and the same. */
function bare(formula: string): string {
  const text = formula.replaceAll(/\s+/g, "").replace(/^=\+?/, "");
  return /^\([^()]*\)$/.test(text) ? text.slice(1, -1) : text;
}

function observeUnlike(study: Study, { cell, family }: Outlier): Observation | undefined {
  const { book } = study;
  const grid = must(book.grids[cell.sheet]);
  const own = must(grid.formula(cell.row, cell.column));
  const formula = formulaFor(book, family, cell);
  if (formula === undefined || bare(formula) === bare(own)) return undefined;
  const [is, would] = [grid.number(cell.row, cell.column), asNumber(study.wouldGive(cell, formula))];
  const isError = grid.kind(cell.row, cell.column) === "error";
  const gives = isError
    ? ` It shows ${grid.value(cell.row, cell.column)}.`
    : is === undefined || would === undefined
      ? ""
      : is === would
        ? " Both give the same result now."
        : ` It gives ${short(is)}, the other ${short(would)}.`;
  return {
    cell,
    group: `${cell.sheet}:${family.line.direction}:${family.line.at}:${must(book.patternAt(cell.sheet, cell.row, cell.column)).id}`,
    about: own,
    seen: `has ${own}; the cells next to it would make it ${formula}.${gives}`,
    todo: "Use the formula from the cells next to it, or ignore this and say why.",
    rank: isError ? 90 : Math.max(5, offBy(is, would, unlike.rank)),
    fix: [change(study, cell, formula)],
  };
}

export const sliding: Rule = {
  id: "sliding-reference",
  title: "A formula slipped off the rate it reads",
  level: "error",
  rank: 80,
  matters: "Filled down without a $, each line reads one cell farther and soon reads nothing.",
  *look(study) {
    for (const family of study.families) {
      if (!study.isChecked(family.line.sheet)) continue;
      yield undefined;
      for (const place of family.slots.keys()) yield* observeSliding(study, family, place);
    }
  },
};

/** A reference that goes along, from a typed number that is alone into blanks. */
function observeSliding(study: Study, family: Family, place: number): Observation[] {
  const { book } = study;
  const [first, ...rest] = family.members as [Cell, ...Cell[]];
  const start = readBy(book, family, first)[place];
  if (!start?.moves || start.rows * start.columns !== 1) return [];
  const isOutside = start.sheet !== first.sheet || alongOf(family.line, start) !== alongOf(family.line, first);
  if (!isOutside || !must(book.grids[start.sheet]).isTypedNumber(start.row, start.column)) return [];
  const astray = rest.filter((member) => typeof study.valueAt(must(readBy(book, family, member)[place])) !== "number");
  if (astray.length < rest.length / 2) return [];
  // A formula that answers for a bad rate in words reads the right one.
  const answersInWords = astray.every((member) => typeof study.valueAt(member) === "string");
  const echoOf = answersInWords ? astray.map((member) => must(readBy(book, family, member)[place])) : [];
  const rate = `${addressFrom(book, first, start)} (${nameOf(book, start)}, ${short(must(must(book.grids[start.sheet]).number(start.row, start.column)))})`;
  const fixFor = (cell: Cell, target: Target) => {
    const [down, across] = [start.row - target.row, start.column - target.column];
    const shift = { top: down, bottom: down, left: across, right: across, fixed: true };
    const pattern = must(book.patternAt(cell.sheet, cell.row, cell.column));
    const formula = must(must(book.grids[cell.sheet]).formula(cell.row, cell.column));
    const corrected = shifted(formula, pattern.references, (_, at) => (at === place ? shift : undefined));
    return corrected === undefined ? [] : [change(study, cell, corrected)];
  };
  return rest.map((cell): Observation => {
    const target = must(readBy(book, family, cell)[place]);
    // The first line is right as it is, and fixed with the others so that the next filling down holds.
    const fix = [...(cell === rest[0] ? fixFor(first, start) : []), ...fixFor(cell, target)];
    return {
      cell,
      more: [start],
      echoOf,
      group: `${cell.sheet}:${family.line.direction}:${family.line.at}:${place}`,
      about: `${place} ${must(book.grids[cell.sheet]).formula(cell.row, cell.column)}`,
      seen: `reads ${addressFrom(book, cell, target)}, which has no number; ${areaAddress(first)} reads ${rate}.`,
      todo: "Make every line read the same cell, and lock it with $.",
      ...(fix.length > 0 && { fix }),
    };
  });
}
