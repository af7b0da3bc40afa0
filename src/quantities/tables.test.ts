import { describe, expect, test } from "vitest";
import { nearestName, plainName } from "./nearestName";
import { Problem } from "./problem";
import { SOILS, soilNamed } from "./soil";
import { MOST_TONS_PER_YARD, STONES, stoneNamed } from "./stone";
import { cautionsOf, depthWords, SOURCED_SOILS, SOURCED_STONES } from "./tableSources";

const names = STONES.map(({ name }) => name);

describe("the stone table", () => {
  test.each(SOURCED_STONES)("$name stands by its plain name, with a source, within its range", (stone) => {
    expect(plainName(stone.name)).toBe(stone.name);
    expect(stone).toMatchObject(stoneNamed(stone.name));
    expect(stone.source.length).toBeGreaterThan(20);
    expect(stone.tonsPerYard).toBeGreaterThanOrEqual(stone.low);
    expect(stone.tonsPerYard).toBeLessThanOrEqual(stone.high);
    expect(stone.high).toBeLessThan(MOST_TONS_PER_YARD);
    const { source } = stone;
    expect(stone.sure).toBe(
      /^Common practice/.test(source) ? "practice" : /from memory/.test(source) ? "memory" : "seen",
    );
  });

  // Tons by hand from the pounds in the sources: lb/yd³ ÷ 2,000, or lb/ft³ × 27 ÷ 2,000.
  test("has these weights", () => {
    expect(Object.fromEntries(STONES.map(({ name, tonsPerYard }) => [name, Number(tonsPerYard.toFixed(6))]))).toEqual({
      "crushed stone": 1.3, // 2,600 lb/yd³
      gravel: 1.3,
      "crushed limestone": 1.35, // 100 lb/ft³
      cobble: 1.35, // 2,700 lb/yd³
      sand: 1.2, // 2,400 lb/yd³
      "decomposed granite": 1.2825, // 95 lb/ft³
      "river rock": 1.35,
      "pea gravel": 1.35,
      pebbles: 1.35,
      "crushed granite": 1.296, // 96 lb/ft³
      "crushed basalt": 1.296,
      "crushed marble": 1.2825, // 95 lb/ft³
      "crushed quartz": 1.2825,
      "crushed sandstone": 1.107, // 82 lb/ft³
      "crushed slate": 1.242, // 92 lb/ft³
      "lava rock": 0.702, // 52 lb/ft³
      pumice: 0.54, // 40 lb/ft³
      "crushed concrete": 1.2, // 2,400 lb/yd³
      "crushed brick": 0.891, // 120 lb/ft³ × 0.55 = 66
      "crushed glass": 1.125, // (1,800 + 2,700) / 2 = 2,250 lb/yd³
      "wood chips": 0.15, // 300 lb/yd³
      "green wood chips": 0.2365, // 473 lb/yd³
      "shredded bark": 0.3, // (400 + 800) / 2 = 600 lb/yd³
      "hardwood mulch": 0.3,
      "bark nuggets": 0.25, // 500 lb/yd³
      "shredded rubber": 0.38475, // (24 + 33) / 2 = 28.5 lb/ft³
      "rubber nuggets": 0.3375, // (20 + 30) / 2 = 25 lb/ft³
    });
    const sourced = (name: string) => SOURCED_STONES.find((stone) => stone.name === name)!;
    const range = (name: string) => [sourced(name).low, sourced(name).high].map((tons) => Number(tons.toFixed(6)));
    expect(range("crushed stone")).toEqual([1.2825, 1.56]); // 95 lb/ft³ to 3,120 lb/yd³
    expect(range("gravel")).toEqual([1.3, 1.56]); // 2,600 to 3,120 lb/yd³
    expect(sourced("cobble").low).toBeCloseTo(1.0125, 9); // 75 lb/ft³
    expect(sourced("cobble").high).toBeCloseTo(1.6875, 9); // 125 lb/ft³
    expect(sourced("pumice").low).toBeCloseTo(0.405, 9); // 30 lb/ft³
    expect(sourced("pumice").high).toBeCloseTo(0.81, 9); // 60 lb/ft³
  });

  test("says of each covering how deep it usually is, and what it asks to mind", () => {
    const said = SOURCED_STONES.map(({ name, usualDepth, cautions }) => [
      name,
      usualDepth ? depthWords(usualDepth) : "",
      cautions.map(({ about }) => about).join(" "),
    ]);
    const wood = "Fire Floating Siding";
    expect(said).toEqual([
      ["crushed stone", "2 to 3 in", "Silica"],
      ["gravel", "2 to 3 in", ""],
      ["crushed limestone", "2 to 3 in", ""],
      ["cobble", "", ""],
      ["sand", "", "Silica"],
      ["decomposed granite", "2 to 3 in", "Silica"],
      ["river rock", "2 to 3 in", ""],
      ["pea gravel", "2 to 3 in", ""],
      ["pebbles", "2 to 3 in", ""],
      ["crushed granite", "2 to 3 in", "Silica"],
      ["crushed basalt", "2 to 3 in", ""],
      ["crushed marble", "2 to 3 in", ""],
      ["crushed quartz", "2 to 3 in", "Silica"],
      ["crushed sandstone", "2 to 3 in", "Silica"],
      ["crushed slate", "2 to 3 in", "Silica"],
      ["lava rock", "2 to 3 in", "Floating"],
      ["pumice", "2 to 3 in", "Floating"],
      ["crushed concrete", "2 to 3 in", "Silica"],
      ["crushed brick", "2 to 3 in", "Silica"],
      ["crushed glass", "2 to 3 in", "Sharp edges"],
      // Iowa State Extension: 3 to 4 in of wood chips or shredded bark.
      ["wood chips", "3 to 4 in", wood],
      ["green wood chips", "3 to 4 in", wood],
      ["shredded bark", "3 to 4 in", wood],
      // UF/IFAS: 2 to 3 in of organic mulch.
      ["hardwood mulch", "2 to 3 in", wood],
      ["bark nuggets", "2 to 3 in", wood],
      ["shredded rubber", "2 to 3 in", "Fire"],
      ["rubber nuggets", "2 to 3 in", "Fire"],
    ]);
    for (const { usualDepth } of SOURCED_STONES) expect(usualDepth?.source).not.toBe("");
  });

  test("finds a covering's cautions by its name however written, each once for all", () => {
    expect(cautionsOf(["Wood-Chips", "rubber nuggets", "lava  rock"]).map(({ about }) => about)).toEqual([
      "Fire",
      "Floating",
      "Siding",
    ]);
    expect(cautionsOf(["river rock", "stone of 1.4 tons/cu yd", "Yard blend"])).toEqual([]);
  });

  test("has each name once", () => {
    expect(new Set(names).size).toBe(names.length);
  });

  test("is read whatever the capitals, hyphens and spaces", () => {
    expect(stoneNamed("  River-Rock ").name).toBe("river rock");
  });
});

test("the heaviest loose stone weighs less than ten tons a cubic yard, or pounds were typed for tons", () => {
  expect(MOST_TONS_PER_YARD).toBe(10);
});

test("names are compared by their words alone", () => {
  expect(plainName(" River -- Rock, (3/4)")).toBe("river rock 3 4");
});

describe("a name that is in no table", () => {
  test("is met with the first of two that are as near", () => {
    expect(nearestName("ad", ["ab", "ac"])).toBe("ab");
  });

  test("is met with the nearest one", () => {
    expect(() => stoneNamed("rivr rock")).toThrow(/stone: “rivr rock” isn't in the list\. Did you mean “river rock”\?/);
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
  test.each(SOURCED_SOILS)("$name has a swell and a source", (soil) => {
    expect(soil).toMatchObject(soilNamed(soil.name.toUpperCase()));
    expect(soil.swell).toBeGreaterThan(0);
    expect(soil.source).toMatch(/FM 5-434.*from memory/);
    expect(soil.sure).toBe("memory");
    // The source's factor is loose over bank: 1.25 for a swell of 25 %.
    expect(soil.source).toContain(` ${(1 + soil.swell).toFixed(2)} (`);
  });

  test("has these soils", () => {
    expect(SOILS.map(({ name }) => name)).toEqual(["sand", "loam", "clay", "blasted rock"]);
  });
});
