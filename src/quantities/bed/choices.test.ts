import { describe, expect, test } from "vitest";
import { readTape } from "../tape";
import { borderChoices, type Choice, fabricChoices, stoneChoices } from "./choices";
import { exampleStonePrice, exampleStonePrices } from "./examples";
import { type FieldKey, fields } from "./fields";
import { isExamplePrice } from "./listSamples";
import { readField } from "./readField";

describe("a ready choice fills what its name says", () => {
  const filled = ({ fills }: Choice, key: FieldKey) => readField(fields[key], fills[key]!);

  test.each(stoneChoices)("$name", (choice) => {
    const [, kind, size] = /^(.+), to (.+)$/.exec(choice.name)!;
    expect(choice.fills.stone).toBe(kind!.toLowerCase());
    expect(filled(choice, "stoneSize")).toBe(readTape(size!, "in"));
    expect(Object.keys(choice.fills)).toEqual(["stone", "stoneSize"]);
  });

  // The rest of a border from memory of catalogs: deeper trenches under higher borders, more stakes in longer pieces.
  test.each([
    [borderChoices[0]!, 1.5, 3, 24],
    [borderChoices[1]!, 2.5, 4, 41],
    [borderChoices[2]!, 1.5, 3, 19],
    [borderChoices[3]!, 2, 5, 47],
  ])("$name", (choice, trenchDepth, stakesPerPiece, pieceCost) => {
    const [, height, length] = /, (.+), (.+) pieces$/.exec(choice.name)!;
    expect(filled(choice, "borderHeight")).toBe(readTape(height!, "in"));
    expect(filled(choice, "pieceLength")).toBe(readTape(length!, "ft"));
    const others = (["trenchDepth", "stakesPerPiece", "pieceCost"] as const).map((key) => filled(choice, key));
    expect(others).toEqual([trenchDepth, stakesPerPiece, pieceCost]);
  });

  test.each([
    [fabricChoices[0]!, 64],
    [fabricChoices[1]!, 44],
    [fabricChoices[2]!, 80],
    [fabricChoices[3]!, 62],
  ])("$name", (choice, cost) => {
    const [width, length] = choice.name.split(" × ");
    expect(filled(choice, "rollWidth")).toBe(readTape(width!, "ft"));
    expect(filled(choice, "rollLength")).toBe(readTape(length!, "ft"));
    expect(filled(choice, "rollCost")).toBe(cost);
  });

  test("and no two choices have one name", () => {
    const names = [...stoneChoices, ...borderChoices, ...fabricChoices].map(({ name }) => name);
    expect(names).toHaveLength(13);
    expect(new Set(names).size).toBe(13);
  });
});

describe("example prices", () => {
  test.each([
    ["river rock", "62"],
    [" Pea Gravel ", "48"],
    ["crushed limestone", "39"],
    ["crushed granite", "58"],
    ["lava rock", "140"],
    ["brick chips", "62"],
  ])("%s costs %s a ton", (stone, perTon) => {
    expect(exampleStonePrice(stone)).toBe(perTon);
  });

  test("are there for each stone that can be chosen", () => {
    expect(exampleStonePrices.map(({ stone }) => stone)).toEqual(stoneChoices.map(({ fills }) => fills.stone));
  });

  test.each<[FieldKey, string, boolean]>([
    ["stoneCost", "140", true],
    ["stoneCost", " 62 ", true],
    ["stoneCost", "24", false], // a border piece
    ["pieceCost", "24", true],
    ["pieceCost", "41", true],
    ["pieceCost", "140", false],
    ["rollCost", "80", true],
    ["rollCost", "81", false],
    ["crewRate", "48", true],
    ["crewRate", "52", true],
    ["crewRate", "53", false],
    ["pieceCost", "0.9", true], // a paver
  ])("of %s include %j: %s", (key, text, isExample) => {
    expect(isExamplePrice(key, text)).toBe(isExample);
  });
});
