import { must } from "../quantities/must";
import { areaAddress, quotedSheet } from "../spreadsheet/areas";
import { type Book, type Cell, cellKey, contains, type Target } from "./book";
import { keyOf } from "./dismissals";
import type { Scope } from "./facts";
import type { Change, Finding, Level, Place } from "./finding";
import type { Pattern } from "./formula/pattern";
import type { Observation, Rule } from "./rules/rule";
import type { Study } from "./study";
import { address, counted, list } from "./words";

/** An observation and the rule that made it. */
export interface Seen {
  readonly rule: Rule;
  readonly observation: Observation;
}

const LEVELS: readonly Level[] = ["slip", "odd", "question"];

/** Makes findings of what the rules saw: one for each mistake, the costliest first. */
export function collect(study: Study, seen: readonly Seen[], scope: Scope): Finding[] {
  const groups = new Map<string, Seen[]>();
  const once = new Set<string>();
  for (const one of withoutCovered(seen)) {
    const { rule, observation } = one;
    if (!isAsked(study.book, scope, observation.cell)) continue;
    const sign = `${rule.id} ${cellKey(observation.cell)} ${observation.about}`;
    if (once.has(sign)) continue;
    once.add(sign);
    const key = `${rule.id} ${observation.level ?? rule.level} ${observation.group}`;
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  const findings = [...groups.values()].map((group) => findingOf(study.book, group));
  const order = (finding: Finding) => LEVELS.indexOf(finding.level);
  return apart(findings.sort((one, other) => other.rank - one.rank || order(one) - order(other)));
}

/** Drops what another rule says better about the same cell; a fix that only the other has is kept. */
function withoutCovered(seen: readonly Seen[]): Seen[] {
  const byCell = new Map<string, Seen[]>();
  for (const one of seen) {
    const key = cellKey(one.observation.cell);
    const list = byCell.get(key);
    if (list) list.push(one);
    else byCell.set(key, [one]);
  }
  return seen.flatMap((one) => {
    const others = must(byCell.get(cellKey(one.observation.cell)));
    if (others.some(({ rule }) => rule.covers?.includes(one.rule.id)) || isEcho(byCell, one)) return [];
    const covered = one.observation.fix
      ? undefined
      : others.find(({ rule, observation }) => one.rule.covers?.includes(rule.id) && observation.fix);
    return covered ? [{ ...one, observation: { ...one.observation, fix: must(covered.observation.fix) } }] : [one];
  });
}

/** It says nothing new where another rule found an error in a cell that it comes from. */
function isEcho(byCell: ReadonlyMap<string, readonly Seen[]>, { rule, observation }: Seen): boolean {
  return (observation.echoOf ?? []).some(
    (target) =>
      target.rows * target.columns === 1 &&
      (byCell.get(cellKey(target)) ?? []).some(
        (other) => other.rule !== rule && (other.observation.level ?? other.rule.level) === "slip",
      ),
  );
}

function isAsked(book: Book, scope: Scope, cell: Cell): boolean {
  if (scope.kind === "workbook") return true;
  return must(book.grids[cell.sheet]).name === scope.sheet && (scope.kind === "sheet" || contains(scope.area, cell));
}

function findingOf(book: Book, group: readonly Seen[]): Finding {
  const [{ rule, observation: first }] = group as [Seen];
  const observations = group.map(({ observation }) => observation);
  const cells = [...new Map(observations.map(({ cell }) => [cellKey(cell), cell])).values()];
  const rest = cells.slice(1).map((cell) => areaAddress(cell));
  const changes = new Map<string, Change>();
  for (const one of observations.flatMap(({ fix }) => fix ?? []))
    changes.set(`${one.sheet}:${one.row}:${one.column}`, one);
  // A fix has to cover the whole finding, or it would look done.
  const isWhole = observations.every(({ fix }) => fix !== undefined);
  return {
    key: keyOf(
      book,
      rule.id,
      cells,
      observations.map(({ about }) => about),
    ),
    rule: rule.id,
    title: rule.title,
    level: first.level ?? rule.level,
    rank: Math.max(...observations.map(({ rank }) => rank ?? rule.rank)),
    places: placesOf(book, cells),
    related: observations
      .flatMap(({ more }) => more ?? [])
      .slice(0, 100)
      .map((place) => placeOf(book, place)),
    where: whereOf(book, cells),
    seen:
      rest.length === 0 ? first.seen : `${first.seen} The same in ${counted(rest.length, "more cell")}: ${list(rest)}.`,
    matters: first.matters ?? rule.matters,
    todo: first.todo,
    ...(isWhole && { fix: [...changes.values()] }),
  };
}

function placeOf(book: Book, place: Cell | Target): Place {
  const { rows, columns } = { rows: 1, columns: 1, ...place };
  return { sheet: must(book.grids[place.sheet]).name, row: place.row, column: place.column, rows, columns };
}

/** Cells below one another are one place. */
function placesOf(book: Book, cells: readonly Cell[]): Place[] {
  const sorted = [...cells].sort((a, b) => a.sheet - b.sheet || a.column - b.column || a.row - b.row);
  const places: Place[] = [];
  for (const cell of sorted) {
    const last = places.at(-1);
    const isNext =
      last &&
      last.sheet === must(book.grids[cell.sheet]).name &&
      last.column === cell.column &&
      last.row + last.rows === cell.row;
    if (isNext) places[places.length - 1] = { ...last, rows: last.rows + 1 };
    else places.push(placeOf(book, cell));
  }
  return places;
}

function whereOf(book: Book, cells: readonly Cell[]): string {
  const [first, ...rest] = cells;
  return `${quotedSheet(must(book.grids[must(first).sheet]).name)}!${list(
    [must(first), ...rest].map((cell) => areaAddress(cell)),
    3,
  )}`;
}

/** Two findings that look the same, as two lines without labels do, are told apart by their order. */
function apart(findings: readonly Finding[]): Finding[] {
  const counts = new Map<string, number>();
  return findings.map((finding) => {
    const count = (counts.get(finding.key) ?? 0) + 1;
    counts.set(finding.key, count);
    return count === 1 ? finding : { ...finding, key: `${finding.key}#${count}` };
  });
}

/** Something that was not looked at, and why. */
export interface Unchecked {
  readonly what: string;
  /** Where in the workbook; "" where it is the whole of it. */
  readonly where: string;
  readonly why: string;
}

/** Everything that a check of this workbook did not look at. */
export function uncheckedOf(study: Study, scope: Scope): Unchecked[] {
  const { book } = study;
  const unchecked: Unchecked[] = [];
  const note = (what: string, where: string, why: string) => unchecked.push({ what, where, why });
  if (scope.kind !== "workbook") {
    note(
      `Everything outside ${scope.kind === "sheet" ? scope.sheet : `the selection on ${scope.sheet}`}`,
      "",
      "You didn't ask to check it.",
    );
  }
  for (const { name, visibility, protected: isProtected } of book.facts.sheets) {
    if (visibility === "VeryHidden") note(`Sheet ${name}`, name, "It's hidden so deep that Unhide doesn't list it.");
    else if (isProtected)
      note(`Sheet ${name}`, name, "It's protected, so its formulas may not show. Unprotect it to check it.");
  }
  const cells = cellsByPattern(study);
  for (const [what, why, isSo] of KINDS) {
    const patterns = book.patterns.filter((pattern) => isSo(pattern) && cells.has(pattern));
    if (patterns.length === 0) continue;
    const places = patterns.flatMap((pattern) => must(cells.get(pattern)).cells);
    const count = patterns.reduce((sum, pattern) => sum + must(cells.get(pattern)).count, 0);
    note(`${counted(count, "formula")} ${what(patterns)}`, list(places.map((cell) => address(book, cell))), why);
  }
  note("Whether what you typed is what was taped and agreed", "", "Only the tape and your supplier can tell.");
  return unchecked;
}

const KINDS: readonly (readonly [
  what: (patterns: readonly Pattern[]) => string,
  why: string,
  isSo: (pattern: Pattern) => boolean,
])[] = [
  [
    () => "not read",
    "This check can't read how it's written.",
    ({ tree, workbooks }) => tree === undefined && workbooks.length === 0,
  ],
  [
    (patterns) => `with other workbooks: ${list([...new Set(patterns.flatMap(({ workbooks }) => workbooks))])}`,
    "This check can't see what's there.",
    ({ workbooks }) => workbooks.length > 0,
  ],
  [
    () => "with cells chosen at run time",
    "This check can't follow INDIRECT, OFFSET, or ranges that end at a function.",
    ({ wanders }) => wanders,
  ],
];

/** Few cells of each pattern, to name them, and how many there are. */
function cellsByPattern({ book }: Study): Map<Pattern, { cells: Cell[]; count: number }> {
  const found = new Map<Pattern, { cells: Cell[]; count: number }>();
  for (const grid of book.grids) {
    for (const { pattern, ...cell } of book.formulaCells(grid.index)) {
      const known = found.get(pattern) ?? { cells: [], count: 0 };
      known.count++;
      if (known.cells.length < 5) known.cells.push(cell);
      found.set(pattern, known);
    }
  }
  return found;
}
