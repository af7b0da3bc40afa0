import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { FaultTable } from "../../../src/help/faultTable";
import { createProductHost } from "../../productHost";
import { Bench, type Report, type Try } from "./bench";
import { exceptions } from "./exceptions";
import { operations } from "./operations";
import { startTable } from "./table";
import { FILE, type Outcome, onThisFile, troubles } from "./troubles";
import { office, ready, twoPanes } from "./twoPanes";

/*
 * Everything that writes to the workbook, in everything that can go wrong. Either the workbook is as it was, as a whole,
 * and the person is told what happened and what to do; or all of it was done. What comes of it is a page of the help.
 */

/** What a sentence for a person has: what they can do now. */
const SAYS_WHAT_TO_DO =
  /\b(try|select|choose|press|check|delete|undo|unprotect|make|type|go|bring|put|use|fix|add)\b|\[Cancel\]|nothing to undo/i;
/** What no sentence for a person has: codes, and the words of programs. */
const WORDS_OF_PROGRAMS = /undefined|null|NaN|\[object|Exception|Error|[a-z][A-Z]|argument|sync|request context/;

function expectWords({ done, text }: Report, where: string): void {
  if (done) return;
  expect.soft(text, where).toMatch(SAYS_WHAT_TO_DO);
  expect.soft(text, where).not.toMatch(WORDS_OF_PROGRAMS);
}

/** What every sentence says where the workbook is as it was. */
const SAYS_NOTHING_CHANGED = /\bnothing was \w+|\bnothing to undo|\bso it stays|\bwhat they wrote stays\b/i;
const SAYS_WHAT_IS_LEFT = /couldn't be undone|only in part|may have been done/;

/** Pauses are this many times shorter than they are for people, and still in the same order. */
const FASTER = 50;
/** What is waited for this long or longer isn't a pause: it's how long something that hangs is waited for. */
const GIVING_UP_MS = 10_000;
const timer = globalThis.setTimeout;
beforeAll(() => {
  globalThis.setTimeout = Object.assign(
    (work: () => void, ms = 0, ...given: []) => timer(work, ms < GIVING_UP_MS ? ms / FASTER : ms, ...given),
    timer,
  );
});
afterAll(() => {
  globalThis.setTimeout = timer;
});

const table = startTable();
const KEPT = resolve(import.meta.dirname, "../../generated/faults.json");

describe.each(onThisFile(operations).map((operation) => [operation.title, operation] as const))(
  "%s",
  (_, operation) => {
    test("leaves the workbook as it was, or all of it done, in every trouble", async () => {
      const bench = await Bench.of(operation);
      try {
        const clean = await bench.clean();
        const cells: Record<string, ReturnType<typeof table.cellOf>> = {};
        for (const trouble of troubles) {
          if (!trouble.applies(operation, clean)) continue;
          const tries = await trouble.tries(bench, operation, clean);
          tries.forEach((one, index) => {
            const where = `${trouble.title}, try ${index + 1}: “${one.text}” ${one.done ? "" : one.changed}`;
            expect.soft(faultOf(one), where).toBe("");
            expect.soft(trouble.allowed, where).toContain(outcomeOf(one));
            expect.soft(lackingWithout(one.lacking, trouble.key), where).toBe("");
            expectWords(one, where);
          });
          cells[trouble.key] = table.cellOf(tries, outcomeOf);
        }
        table.addOperation(operation.title, clean.syncs, cells);
      } finally {
        bench.discard();
      }
    }, 180_000);
  },
);

function outcomeOf({ done, changed }: Try): Outcome {
  if (done) return "done";
  return changed ? "told of the rest" : "as before";
}

/** What is wrong with what came of a try, and what was said; "" for nothing. */
function faultOf({ done, changed, text, newSheets }: Try): string {
  if (done) return changed ? "" : "It says that it was done, and nothing was.";
  if (!changed) {
    if (SAYS_WHAT_IS_LEFT.test(text)) return "The workbook is as it was, and it says that something may be left.";
    return SAYS_NOTHING_CHANGED.test(text) ? "" : "It does not say that nothing was changed.";
  }
  if (!SAYS_WHAT_IS_LEFT.test(text)) return "The workbook was changed, and it does not say so.";
  const isNamed = (name: string) => text.includes(name) || text.includes(`begins with “${withoutId(name)}”`);
  return newSheets.every(isNamed) ? "" : `It does not name ${newSheets.join(", ")}, which is left.`;
}

/** What the name of a sheet that is not finished begins with. */
const withoutId = (name: string) => name.replace(/ [\da-f]{8}$/, "");

/** What is not as all of it done, without what may be so. */
function lackingWithout(lacking: readonly string[], key: string): string {
  const may = exceptions.filter(({ troubles }) => troubles.includes(key));
  const left = lacking.map((lines) =>
    lines
      .split("\n")
      .filter((line) => !may.some(({ what }) => what.test(line)))
      .join("\n"),
  );
  return left.sort((one, other) => one.length - other.length)[0] ?? "";
}

describe("in two panes of one workbook", () => {
  test.each(onThisFile(twoPanes).map((one) => [one.title, one] as const))("%s", async (_, { title, outcome, play }) => {
    const host = await createProductHost(office);
    try {
      await ready(host);
      const told = await play(host);
      for (const one of told) expectWords(one, title);
      table.addPanes(title, outcome, told);
    } finally {
      host.dispose();
    }
  });
});

test("what came of it all is what the help says", async () => {
  if (FILE) expect(table.besides(JSON.parse(readFileSync(KEPT, "utf8")) as FaultTable)).toEqual([]);
  else await expect(table.text()).toMatchFileSnapshot(KEPT);
});
