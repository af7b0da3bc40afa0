import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { writeTemplate } from "../../src/pane/templates/opening";
import { readTemplate } from "../../src/sheets/templates/readTemplate";
import { undoLastInsert } from "../../src/workbook/change/undo";
import { nearly } from "../fuzz/hostileJson";
import { Chance } from "../fuzz/random";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { select } from "./faults/bench";
import { smallTemplate } from "./faults/operations/smallTemplate";
import { difference, snapshotOf } from "./faults/snapshot";

/*
 * Texts that are nearly templates: refused in words, or read; and what is read can be written into a workbook and taken
 * back without a trace, or is refused there in words, with the workbook as it was.
 */
const TEXTS = 600;

let host: HeadlessHost;
beforeAll(async () => {
  host = await createProductHost();
});
afterAll(() => host.dispose());

describe("whatever a template holds, it is refused in words or can be started from", () => {
  test("for texts that are nearly templates", async () => {
    const chance = new Chance(31);
    const sound = JSON.stringify(smallTemplate);
    const came = { refused: 0, written: 0, notWritten: 0 };
    await select("Sheet1", "B3");
    const before = snapshotOf(host);
    for (let count = 0; count < TEXTS; count++) {
      const text = nearly(sound, chance);
      const read = readTemplate(text);
      if (!read.ok) {
        expect(read.why.join(" "), text).toMatch(/\S/);
        came.refused++;
        continue;
      }
      try {
        const inserted = await writeTemplate(read.template, new Map(), { kind: "selection" });
        expect(inserted, text).toMatchObject({ done: true });
        await undoLastInsert();
        came.written++;
      } catch (error) {
        const { name, message } = error as Error;
        expect(name, `${message}: ${text}`).toBe("WorkbookFailure");
        expect(message, text).toMatch(/^(?=.*\bnothing was\b).*\.$/is);
        came.notWritten++;
      }
      await select("Sheet1", "B3");
      expect(difference(before, snapshotOf(host)), text).toBe("");
    }
    expect(came.refused).toBeGreaterThan(20);
    expect(came.written).toBeGreaterThan(20);
  }, 60_000);
});
