import { describe, expect, test } from "vitest";
import { type AssumedTexts, borderChoices, readAssumed, usualTexts } from "./assumed";

const read = (change: Partial<AssumedTexts>) => readAssumed({ ...usualTexts, ...change });

describe("what is taken for every bed of a list", () => {
  test("is read as typed", () => {
    const { assumed, problems } = read({ depth: '2 1/2"', stone: " pea gravel ", waste: "8%", border: "2 0" });
    expect(problems).toEqual({});
    expect(assumed).toMatchObject({ depthIn: 2.5, stone: "pea gravel", waste: 0.08, longBorders: 2, shortBorders: 0 });
  });

  test("has no waste of its own where none was typed, so that the office's rate is taken", () => {
    expect("waste" in read({}).assumed).toBe(false);
    expect(read({ waste: "0" }).assumed.waste).toBe(0);
  });

  test.each([
    ["depth", " ", /depth for every bed/],
    ["depth", "0", /over 0/],
    ["depth", "a bit", /a bit/],
    ["waste", "100%", /under 100%/],
    ["waste", "lots", /lots/],
    ["stone", "  ", /kind of stone/],
  ] as const)("keeps its usual %s where %j was typed, and says why", (field, text, words) => {
    const { assumed, problems } = read({ [field]: text });
    expect(Object.keys(problems)).toEqual([field]);
    expect(problems[field]).toMatch(words);
    expect(assumed).toEqual(read({}).assumed);
  });

  test("offers each choice of border once, and all around in those words", () => {
    expect(new Set(borderChoices.map(({ value }) => value)).size).toBe(borderChoices.length);
    expect(borderChoices.find(({ value }) => value === "2 2")?.label).toBe("all around");
    expect(borderChoices.map(({ value }) => value)).toContain(usualTexts.border);
  });
});
