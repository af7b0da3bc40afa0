import { describe, expect, test } from "vitest";
import { createProductHost } from "../../productHost";
import { Bench, type Told, type Try } from "./bench";
import { operations } from "./operations";
import { startTable } from "./table";
import { type Outcome, troubles } from "./troubles";
import { office, ready, twoPanes } from "./twoPanes";

/*
 * Everything that writes to the workbook, in everything that can go wrong. Either the workbook is as it was, as a whole,
 * and the person is told what happened and what to do; or all of it was done. What comes of it is a page of the help.
 */

/** What a sentence for a person has: what they can do now. */
const SAYS_WHAT_TO_DO =
  /\b(try|select|choose|lift|press|look|delete|undo|take|make|type|go|bring|check|put|use)\b|\[Cancel\]|nothing to take/i;
/** What no sentence for a person has: codes, and the words of programs. */
const WORDS_OF_PROGRAMS = /undefined|null|NaN|\[object|Exception|Error|[a-z][A-Z]|argument|sync|request context/;

function expectWords({ done, text }: Told, where: string): void {
  if (done) return;
  expect.soft(text, where).toMatch(SAYS_WHAT_TO_DO);
  expect.soft(text, where).not.toMatch(WORDS_OF_PROGRAMS);
}

const table = startTable();

describe.each(operations.map((operation) => [operation.title, operation] as const))("%s", (_, operation) => {
  test("leaves the workbook as it was, or all of it done, in every trouble", async () => {
    const bench = await Bench.of(operation);
    try {
      const syncs = await bench.syncs();
      const cells: Record<string, ReturnType<typeof table.cellOf>> = {};
      for (const trouble of troubles) {
        if (!trouble.applies(operation, syncs)) continue;
        const tries = await trouble.tries(bench, operation, syncs);
        tries.forEach((one, index) => {
          const where = `${trouble.title}, try ${index + 1}: “${one.text}” ${one.done ? "" : one.changed}`;
          expect.soft(trouble.allowed, where).toContain(outcomeOf(one));
          expectWords(one, where);
        });
        cells[trouble.key] = table.cellOf(tries, outcomeOf);
      }
      table.addOperation(operation.title, syncs, cells);
    } finally {
      bench.discard();
    }
  });
});

/** @throws {Error} where the workbook was changed, and the person told that it was not. */
function outcomeOf({ done, changed, text }: Try): Outcome {
  // Whoever says that it was done must have done something.
  if (done && changed) return "done";
  if (!done && !changed) return "as before";
  if (!done && /could not be taken back|only in part|may have been done/.test(text)) return "told of the rest";
  throw new Error(`${done ? "Nothing was done" : `The workbook was changed: ${changed}`}, and it says: “${text}”`);
}

describe("in two panes of one workbook", () => {
  test.each(twoPanes.map((one) => [one.title, one] as const))("%s", async (_, { title, outcome, play }) => {
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
  await expect(table.text()).toMatchFileSnapshot("../../../src/help/faults.json");
});
