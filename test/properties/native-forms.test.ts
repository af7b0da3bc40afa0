import { afterEach, beforeEach, expect, test } from "vitest";
import { nativeForms } from "../../src/functions/native/forms";
import { CASES } from "../functionCases";
import type { HeadlessHost } from "../headlessHost";
import { callsOf } from "../nativeCases";
import { type Compared, compare } from "../nativeSheet";
import { createProductHost } from "../productHost";

/*
 * The outside check is a spreadsheet's own calculation engine: every call is in one sheet, its copy in ordinary
 * formulas in another, with the same cells beside it.
 */

const RUNS = 75;
/** Their formulas take the engine longest. */
const FEWER_RUNS: Readonly<Partial<Record<string, number>>> = {
  AREA_POINTS: 50,
  FABRIC_AREA: 50,
  FABRIC_ROLLS: 30,
  PINS: 50,
  STAKES: 50,
};
const SEED = 20_260_302;
const PATIENCE_MS = 60_000;

type Id = keyof typeof CASES;
const ids = (Object.keys(CASES) as Id[]).filter((id) => "build" in (nativeForms[id] ?? {}));

// A workbook of its own for each, since the engine slows down with every sheet.
let host: HeadlessHost;
beforeEach(async () => {
  host = await createProductHost();
});
afterEach(() => host.dispose());

const isNumber = (value: unknown): value is number => typeof value === "number";

/** Where an input is itself an error, the engine may hand on either that or #VALUE!. */
const handsOnAnError = ({ inputs, originalFormula }: Compared) => /NA\(\)|1\/0/.test(inputs + originalFormula);

function expectSame(one: Compared): void {
  const shown = JSON.stringify(one);
  if (isNumber(one.original)) {
    expect(isNumber(one.copy), shown).toBe(true);
    expect(Math.abs(Number(one.copy) - one.original), shown).toBeLessThanOrEqual(1e-9 * one.original);
    return;
  }
  expect(one.copy, shown).toMatch(/^#/);
  if (one.original === "#N/A" && !handsOnAnError(one)) expect(one.copy, shown).toBe("#N/A");
}

let tried = 0;

test.each(ids)(
  "%s as an ordinary formula gives the same: numbers to 1e-9 of themselves, and errors",
  async (id) => {
    const all = await compare(host, callsOf(id, FEWER_RUNS[id] ?? RUNS, SEED + ids.indexOf(id)));
    for (const one of all) expectSame(one);

    const numbers = all.filter(({ original }) => isNumber(original)).length;
    const formulas = all.filter(({ copyFormula }) => copyFormula.startsWith("=")).length;
    expect(numbers).toBeGreaterThan(all.length / 4);
    expect(all.length - numbers).toBeGreaterThan(all.length / 20);
    expect(formulas).toBeGreaterThan(all.length / 2);
    tried += all.length;
  },
  PATIENCE_MS,
);

test("two thousand calls and more were compared", () => {
  expect(tried).toBeGreaterThan(2000);
});
