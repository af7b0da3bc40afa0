import { must } from "../quantities/must";
import { areaAddress, quotedSheet } from "../spreadsheet/areas";
import { type Book, type Cell, cellKey, contains, type Target } from "./book";
import { keyOf } from "./dismissals";
import type { Scope } from "./facts";
import type { Change, Finding, Level, Place } from "./finding";
import type { Pattern } from "./formula/pattern";
import type { Observation, Rule } from "./rules/rule";
import type { Study } from "./study";
import { address, addressFrom, counted, list, nameOf, short } from "./words";

/** An observation and the rule that made it. */
export interface Seen {
  readonly rule: Rule;
  readonly observation: Observation;
}

const LEVELS: readonly Level[] = ["error", "warning", "question"];

/** Makes findings of what the rules saw: one for each mistake. Errors come first, then warnings, then questions; the costliest first in each. */
export function collect(study: Study, seen: readonly Seen[], scope: Scope): Finding[] {
  const groups = new Map<string, Seen[]>();
  const once = new Set<string>();
  for (const one of withoutCovered(study.book, seen)) {
    const { rule, observation } = one;
    if (!isAsked(study.book, scope, observation.cell)) continue;
    const sign = `${rule.id} ${cellKey(observation.cell)} ${observation.about}`;
    if (once.has(sign)) continue;
    once.add(sign);
    const cause = causeOf(observation);
    const key = `${rule.id} ${observation.level ?? rule.level} ${cause ? `from ${cellKey(cause)}` : observation.group}`;
    const group = groups.get(key);
    if (group) group.push(one);
    else groups.set(key, [one]);
  }
  const findings = [...groups.values()].map((group) => findingOf(study.book, group));
  const order = (finding: Finding) => LEVELS.indexOf(finding.level);
  return apart(findings.sort((one, other) => order(one) - order(other) || other.rank - one.rank));
}

/** The cell to fix, where that isn't the one that was looked at. */
const causeOf = ({ cell, cause }: Observation) => (cause && cellKey(cause) !== cellKey(cell) ? cause : undefined);

/** Drops what another rule says better about the same cell; a fix that only the other has is kept. */
function withoutCovered(book: Book, seen: readonly Seen[]): Seen[] {
  const byCell = groupedBy(seen, ({ cell }) => cell);
  const byCause = groupedBy(seen, ({ cell, cause }) => cause ?? cell);
  return seen.flatMap((one) => {
    const others = must(byCell.get(cellKey(one.observation.cell)));
    if (others.some(({ rule }) => rule.covers?.includes(one.rule.id)) || isEcho(book, byCause, one)) return [];
    const covered = one.observation.fix
      ? undefined
      : others.find(({ rule, observation }) => one.rule.covers?.includes(rule.id) && observation.fix);
    return covered ? [{ ...one, observation: { ...one.observation, fix: must(covered.observation.fix) } }] : [one];
  });
}

function groupedBy(seen: readonly Seen[], by: (observation: Observation) => Cell): Map<string, Seen[]> {
  const groups = new Map<string, Seen[]>();
  for (const one of seen) {
    const key = cellKey(by(one.observation));
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return groups;
}

/** It says nothing new where its own rule saw the cause, or another one found an error in a cell that it comes from. */
function isEcho(book: Book, byCause: ReadonlyMap<string, readonly Seen[]>, { rule, observation }: Seen): boolean {
  const cause = causeOf(observation);
  const atCause = cause ? (byCause.get(cellKey(cause)) ?? []) : [];
  if (atCause.some((other) => other.rule === rule && !causeOf(other.observation))) return true;
  return (observation.echoOf ?? []).some(
    (target) =>
      target.rows * target.columns === 1 &&
      (byCause.get(cellKey(book.shownBy(target))) ?? []).some(
        (other) => other.rule !== rule && (other.observation.level ?? other.rule.level) === "error",
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
  const cause = causeOf(first);
  const reached = [...new Map(observations.map(({ cell }) => [cellKey(cell), cell])).values()];
  const cells = cause ? [cause] : reached;
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
    related: [...(cause ? reached : []), ...observations.flatMap(({ more }) => more ?? [])]
      .slice(0, 100)
      .map((place) => placeOf(book, place)),
    where: whereOf(book, cells),
    seen: seenOf(book, first, reached),
    matters: first.matters ?? rule.matters,
    todo: first.todo,
    ...(isWhole && { fix: [...changes.values()] }),
  };
}

/** What was seen in the first cell, what it comes from, and which other cells have it. The card says where. */
function seenOf(book: Book, first: Observation, [, ...others]: readonly Cell[]): string {
  const { cell, seen, isSentence } = first;
  const cause = causeOf(first);
  const rest = others.map((other) => addressFrom(book, cause ?? cell, other));
  const more = rest.length > 0 ? ` The same in ${counted(rest.length, "more cell")}: ${list(rest)}.` : "";
  if (isSentence) return `${seen}${more}`;
  if (!cause) return `${subjectOf(book, cell)} ${seen}${more}`;
  const value = must(book.grids[cause.sheet]).value(cause.row, cause.column);
  const holds = value === "" ? "is blank" : `holds ${typeof value === "number" ? short(value) : `“${value}”`}`;
  const name = nameOf(book, cell);
  const observed = addressFrom(book, cause, cell) + (name === areaAddress(cell) ? "" : ` (${name})`);
  return `${subjectOf(book, cause)} ${holds}. ${observed} ${seen}${more}`;
}

/** A cell at the start of a sentence: what it's called, since the card has its address. */
function subjectOf(book: Book, cell: Cell): string {
  const name = nameOf(book, cell);
  return name === areaAddress(cell) ? "The cell" : name;
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
  for (const { name, visibility, protected: isProtected, notReadFrom } of book.facts.sheets) {
    if (notReadFrom !== undefined)
      note(
        `Rows ${(notReadFrom + 1).toLocaleString("en-US")} and below on ${name}`,
        name,
        "The sheet is too long to check all of it. If something is there by mistake, delete those rows.",
      );
    if (visibility === "VeryHidden") note(`Sheet ${name}`, name, "It's hidden in a way that Unhide doesn't list.");
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
