import { beforeAll, describe, expect, test } from "vitest";
import * as functions from "../../src/functions/index";
import { standInForCustomFunctions } from "../fakeCustomFunctions";
import { fuzz } from "../fuzz/fuzzFunctions";
import { Chance } from "../fuzz/random";

/*
 * A thousand calls each with random and hostile values; `npm run bench -- fuzz` makes a hundred thousand of each. A number
 * or list that can be an answer, or a worded error, and nothing else. Whether it is the right one is held by the tests of
 * each function; here only what must hold between two answers.
 */
const CALLS = 1200;
/** Laying a bed out takes a hundred times as long as arithmetic. */
const LAYOUT_CALLS = 700;

beforeAll(() => {
  standInForCustomFunctions();
});

const ids = Object.keys(functions) as (keyof typeof functions)[];

describe("whatever is typed, a function gives a possible answer or a worded error", () => {
  test.each(ids)("%s", (id) => {
    const { faults, answers, refusals } = fuzz(id, id.startsWith("LAYOUT") ? LAYOUT_CALLS : CALLS, 7);
    expect(faults).toEqual([]);
    // Both ways are taken often, so that neither goes untried.
    expect(answers).toBeGreaterThan(20);
    expect(refusals).toBeGreaterThan(20);
  });
});

describe("between two answers holds, for any right values:", () => {
  const { AREA_RECTANGLE, ORDER_UP, STONE_BAGS, STONE_COVERS, STONE_TONS, STONE_YARDS, PRICE_MARKUP } = functions;
  const length = (chance: Chance) => chance.oneOf([chance.whole(1, 400) / 8, 1 + chance.share() * 60]);
  const depth = (chance: Chance) => 0.5 + chance.share() * 12;
  const stone = (chance: Chance) => chance.oneOf(["river rock", "pea gravel", 0.5 + chance.share()]);
  const isNear = (one: number, other: number) => Math.abs(one - other) <= 1e-9 * Math.max(1, Math.abs(other));

  test.each<[string, (chance: Chance) => boolean]>([
    [
      "a rectangle twice as long has twice the area, and its sides can be told in either order",
      (chance) => {
        const [long, wide] = [length(chance), length(chance)];
        const area = AREA_RECTANGLE(long, wide);
        return isNear(AREA_RECTANGLE(long * 2, wide), area * 2) && isNear(AREA_RECTANGLE(wide, long), area);
      },
    ],
    [
      "rounded corners never add to an area",
      (chance) => {
        const [long, wide] = [length(chance), length(chance)];
        return AREA_RECTANGLE(long, wide, (chance.share() * Math.min(long, wide)) / 2) <= AREA_RECTANGLE(long, wide);
      },
    ],
    [
      "more waste never means fewer tons, yards or bags",
      (chance) => {
        const [area, deep, kind, waste] = [length(chance) * 10, depth(chance), stone(chance), chance.share() * 0.4];
        const more = waste + chance.share() * 0.4;
        return (
          STONE_TONS(area, deep, kind, more) >= STONE_TONS(area, deep, kind, waste) &&
          STONE_YARDS(area, deep, more) >= STONE_YARDS(area, deep, waste) &&
          STONE_BAGS(area, deep, 0.5, more) >= STONE_BAGS(area, deep, 0.5, waste)
        );
      },
    ],
    [
      "the tons for an area cover that area again",
      (chance) => {
        const [area, deep, kind] = [length(chance) * 10, depth(chance), stone(chance)];
        return isNear(STONE_COVERS(STONE_TONS(area, deep, kind), deep, kind), area);
      },
    ],
    [
      "an order is enough, and less than a step too much",
      (chance) => {
        const [amount, step] = [chance.share() * 50, chance.oneOf([0.25, 0.5, 1, 3])];
        const order = ORDER_UP(amount, step);
        return order >= amount - 1e-9 && order < amount + step + 1e-9;
      },
    ],
    [
      "a higher markup never means a lower price",
      (chance) => {
        const [cost, markup] = [chance.share() * 1000, chance.share()];
        return PRICE_MARKUP(cost, markup + chance.share() * 0.5) >= PRICE_MARKUP(cost, markup);
      },
    ],
  ])("%s", (_, holds) => {
    const chance = new Chance(41);
    const broken = Array.from({ length: CALLS }, (__, call) => (holds(chance) ? -1 : call)).filter((call) => call >= 0);
    expect(broken).toEqual([]);
  });
});
