import { describe, expect, test } from "vitest";
import { nearestName, plainName } from "./nearestName";
import { Problem } from "./problem";
import { SOILS, soilNamed } from "./soil";
import { MOST_TONS_PER_YARD, STONES, stoneNamed } from "./stone";

const names = STONES.map(({ name }) => name);

describe("the stone table", () => {
  test.each(STONES)("$name stands by its plain name, with a source, within its range", (stone) => {
    expect(plainName(stone.name)).toBe(stone.name);
    expect(stoneNamed(stone.name)).toBe(stone);
    expect(stone.source.length).toBeGreaterThan(20);
    expect(stone.tonsPerYard).toBeGreaterThanOrEqual(stone.low);
    expect(stone.tonsPerYard).toBeLessThanOrEqual(stone.high);
    expect(stone.high).toBeLessThan(MOST_TONS_PER_YARD);
    if (stone.sure === "practice") expect(stone.source).toMatch(/Common practice/);
    if (stone.sure === "memory") expect(stone.source).toMatch(/from memory/);
    if (stone.sure === "seen") expect(stone.source).not.toMatch(/from memory|[Cc]ommon practice/);
  });

  test("has each name once", () => {
    expect(new Set(names).size).toBe(names.length);
  });

  test("is read whatever the capitals, hyphens and spaces", () => {
    expect(stoneNamed("  River-Rock ").name).toBe("river rock");
  });
});

test("names are compared by their words alone", () => {
  expect(plainName(" River -- Rock, (3/4)")).toBe("river rock 3 4");
});

describe("a name that stands in no table", () => {
  test("is met with the first of two that are as near", () => {
    expect(nearestName("ad", ["ab", "ac"])).toBe("ab");
  });

  test("is met with the nearest one", () => {
    expect(() => stoneNamed("rivr rock")).toThrow(/stone arrived as “rivr rock”.*Did you mean “river rock”\?/);
    expect(() => soilNamed("cley")).toThrow(/“clay”/);
    try {
      stoneNamed("marble chips");
      expect.unreachable();
    } catch (reason) {
      expect(reason).toBeInstanceOf(Problem);
      expect(reason).toMatchObject({ kind: "name", argument: "stone" });
    }
  });

  test.each([
    ["granite", "crushed granite"],
    ["limestone crush", "crushed limestone"],
    ["peagravel", "pea gravel"],
    ["lava", "lava rock"],
    ["Marble chips", "crushed marble"],
    ["red lava rock", "lava rock"],
    ["gravle", "gravel"],
    ["cobbles", "cobble"],
  ])("%s: %s", (typed, nearest) => {
    expect(nearestName(typed, names)).toBe(nearest);
  });
});

describe("the soil table", () => {
  test.each(SOILS)("$name has a swell and a source", (soil) => {
    expect(soilNamed(soil.name.toUpperCase())).toBe(soil);
    expect(soil.swell).toBeGreaterThan(0);
    expect(soil.source).toMatch(/FM 5-434.*from memory/);
  });
});
