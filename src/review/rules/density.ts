import { must } from "../../quantities/must";
import { CUBIC_FEET_PER_CUBIC_YARD, POUNDS_PER_SHORT_TON } from "../../quantities/units";
import { type Cell, cellKey } from "../book";
import { targetOfTree } from "../formula/sums";
import { calledName, isCall, type Tree, walk } from "../formula/tree";
import { type Knowledge, knownFunction } from "../knowledge";
import type { Study } from "../study";
import { nameOf, short } from "../words";
import type { Observation, Rule } from "./rule";

/** Short tons a cubic yard for pounds a cubic foot. */
const TONS = CUBIC_FEET_PER_CUBIC_YARD / POUNDS_PER_SHORT_TON;
/** Any ordinary stone, loose: 75 to 125 lb a cubic foot; lava and pumice 30 to 60 (common practice). */
const ORDINARY = [75 * TONS, 125 * TONS] as const;
const LIGHT = [30 * TONS, 60 * TONS] as const;

/** Coverings that no range of stone holds for. */
const NOT_STONE = /wood|bark|mulch|rubber/i;

/** From the lightest covering of the table to the heaviest that is lighter than ordinary stone. */
function lightest({ stones }: Knowledge): readonly [number, number] {
  return [Math.min(...stones.map(({ low }) => low)), LIGHT[1]];
}

export const density: Rule = {
  id: "density",
  title: "A stone weight that can't be right",
  level: "error",
  rank: 60,
  matters: "Tons, loads, and wheelbarrow trips all depend on it.",
  *look(study) {
    const weights = new Map<string, { cell: Cell; tons: number }>();
    for (const { cell, role, amount } of study.measures) {
      if (role === "density" && !/soil|earth|dirt|spoil/i.test(nameOf(study.book, cell)))
        weights.set(cellKey(cell), { cell, tons: amount });
    }
    for (const cell of givenAsStone(study)) {
      const tons = must(study.book.grids[cell.sheet]).number(cell.row, cell.column);
      if (tons !== undefined && !weights.has(cellKey(cell))) weights.set(cellKey(cell), { cell, tons });
    }
    for (const { cell, tons } of weights.values()) {
      if (must(study.book.grids[cell.sheet]).formula(cell.row, cell.column) !== undefined) continue;
      const names = nameOf(study.book, cell);
      if (NOT_STONE.test(names) && within(tons, lightest(study.knowledge))) continue;
      yield observe(cell, tons);
    }
  },
};

/** Cells that a function of ours takes as its stone. */
function* givenAsStone(study: Study): Generator<Cell> {
  for (const run of study.readers.runs) {
    if (!study.isChecked(run.sheet)) continue;
    for (const { part } of walk(run.pattern.tree ?? null)) {
      if (!isCall(part)) continue;
      const place =
        knownFunction(study.knowledge, calledName(part))?.arguments.findIndex(({ kind }) => kind === "stone") ?? -1;
      const given = (place < 0 ? null : (part.arguments[place] ?? null)) as Tree;
      for (let row = run.from; given && row <= run.to; row++) {
        const target = targetOfTree(study.book, { ...run, row }, run.pattern, given);
        if (target && target.rows * target.columns === 1) yield target;
      }
    }
  }
}

const within = (tons: number, [low, high]: readonly [number, number]) => tons >= low * 0.999 && tons <= high * 1.001;

function observe(cell: Cell, tons: number): Observation | undefined {
  if (within(tons, ORDINARY) || within(tons, LIGHT)) return undefined;
  const between = tons > LIGHT[1] && tons < ORDINARY[0];
  const as =
    tons > 1000
      ? ` It looks like pounds per cubic yard: ${short(tons / POUNDS_PER_SHORT_TON)} tons.`
      : tons > 20
        ? ` It looks like pounds per cubic foot: ${short(tons * TONS)} tons.`
        : "";
  return {
    cell,
    group: `${cell.sheet}:${cell.column}`,
    about: String(tons),
    seen: `makes the stone ${short(tons)} tons/cu yd; ordinary stone is ${short(ORDINARY[0])} to ${short(ORDINARY[1])}, lava and pumice ${short(LIGHT[0])} to ${short(LIGHT[1])}.${as}`,
    todo: "Type the weight from your supplier's scale ticket, in tons per loose cubic yard.",
    ...(between && { level: "question" as const, rank: 15 }),
  };
}
