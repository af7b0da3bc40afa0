import { beforeAll, describe, expect, test } from "vitest";
import * as functions from "../../src/functions/index";
import { standInForCustomFunctions } from "../fakeCustomFunctions";
import { fuzz } from "../fuzz/fuzzFunctions";

/*
 * Thousands of calls with random and hostile values; `npm run bench -- fuzz` makes a hundred thousand of each. A right
 * number or list, or a worded error, and nothing else.
 */
const CALLS = 3000;
/** Laying a bed out takes a hundred times as long as arithmetic. */
const LAYOUT_CALLS = 250;

beforeAll(() => {
  standInForCustomFunctions();
});

const ids = Object.keys(functions) as (keyof typeof functions)[];

describe("whatever is typed, a function gives a right answer or a worded error", () => {
  test.each(ids)("%s", (id) => {
    const { faults, answers, refusals } = fuzz(id, id.startsWith("LAYOUT") ? LAYOUT_CALLS : CALLS, 7);
    expect(faults).toEqual([]);
    // Both ways are taken often, so that neither goes untried.
    expect(answers).toBeGreaterThan(20);
    expect(refusals).toBeGreaterThan(20);
  });
});
