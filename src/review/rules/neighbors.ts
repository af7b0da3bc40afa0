import { must } from "../../quantities/must";
import { areaAddress } from "../../spreadsheet/areas";
import { type Cell, cellKey, type Target } from "../book";
import { shifted } from "../formula/reference";
import { alongOf, type Family, formulaFor, readBy } from "../sheet/family";
import type { Outlier } from "../sheet/outliers";
import { asNumber, type Study } from "../study";
import { addressFrom, nameOf, short } from "../words";
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
  },
};

function observeTypedOver(study: Study, { cell, family }: Outlier): Observation | undefined {
  const { book } = study;
  const formula = formulaFor(book, family, cell);
  const typed = must(must(book.grids[cell.sheet]).number(cell.row, cell.column));
  if (formula === undefined) return undefined;
  const would = asNumber(study.wouldGive(cell, formula));
  if (isMixed(study, family) && !isNear(typed, would)) return undefined;
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
  covers: ["error"],
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
      yield observeUnlike(study, outlier);
    }
  },
};

function observeUnlike(study: Study, { cell, family }: Outlier): Observation | undefined {
  const { book } = study;
  const grid = must(book.grids[cell.sheet]);
  const own = must(grid.formula(cell.row, cell.column));
  const formula = formulaFor(book, family, cell);
  if (formula === undefined) return undefined;
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
