import { describe, expect, test } from "vitest";
import { addedUp } from "./addedUp";
import { grouped } from "./asks";
import type { BedNeeds, BorderNeed, FabricNeed, SpoilNeed, StoneNeed } from "./bedNeeds";
import { orderJob } from "./orderJob";

const truck = { yards: 5, payloadTons: 3 };
const stone = (tons: number, order: number, changes: Partial<StoneNeed> = {}): StoneNeed => ({
  ...{ kind: "river rock", sizeIn: 1.25, tons, allowance: 0.08, tonsPerYard: 1.35, yardStep: 0.5, yardMinimum: 1 },
  ...{ order: { quantity: order }, truck, deliveries: { quantity: 1 } },
  ...changes,
});
const border = (feet: readonly number[], pieces: number, changes: Partial<BorderNeed> = {}): BorderNeed => ({
  ...{ heightIn: 4, pieceLengthFt: 8, lapIn: 0, stakes: 0, stakesPerPiece: 3 },
  runs: feet.map((one) => ({ feet: one, closed: false })),
  ...{ pieces: { quantity: pieces, unitCost: 24 }, extraStakes: { quantity: 0, unitCost: 2.5 } },
  ...changes,
});
const fabric = (stripsFt: readonly number[], rolls: number, changes: Partial<FabricNeed> = {}): FabricNeed => ({
  ...{ rollWidthFt: 6, rollLengthFt: 50, endLapIn: 12, stripsFt, rolls: { quantity: rolls } },
  ...changes,
});
const spoil = (yards: number, loads: number, changes: Partial<SpoilNeed> = {}): SpoilNeed => ({
  ...{ yards, tonsPerYard: 1.5, truck, haul: { quantity: loads }, dump: { quantity: loads } },
  ...changes,
});
const pins = (count: number, boxes: number) => ({ count, pinsPerBox: 100, boxes: { quantity: boxes } });

const named = (beds: readonly Omit<BedNeeds, "name">[]) =>
  beds.map((bed, n) => ({ name: `Bed ${String.fromCharCode(65 + n)}`, ...bed }));
const job = (...beds: Omit<BedNeeds, "name">[]) => orderJob(named(beds));
const orders = (...beds: Omit<BedNeeds, "name">[]) =>
  job(...beds).lines.map(({ key, order }) => `${key.split("|")[0]} ${order}`);

describe("a line is on the order", () => {
  test.each<[string, Omit<BedNeeds, "name">, string[]]>([
    ["of a bed without anything", {}, []],
    ["of stone that is neither needed nor ordered", { stone: stone(0, 0, { deliveries: { quantity: 0 } }) }, []],
    ["of stone that is ordered alone", { stone: stone(0, 3, { deliveries: { quantity: 0 } }) }, ["stone 3"]],
    ["of a delivery that is typed alone", { stone: stone(0, 0) }, ["stone 0", "delivery 1"]],
    ["of stone that the office fetches itself", { stone: stone(2, 2, { deliveries: { quantity: 0 } }) }, ["stone 2"]],
    ["of no border", { border: border([0, 0], 0) }, []],
    ["of border with a run that has length", { border: border([0, 5], 0) }, ["border 0"]],
    ["of stakes alone", { border: border([], 0, { extraStakes: { quantity: 4 } }) }, ["border 0", "stakes 4"]],
    ["of no fabric", { fabric: fabric([], 0) }, []],
    ["of strips whose rolls were typed to 0", { fabric: fabric([20], 0) }, ["fabric 0"]],
    ["of no pins", { pins: pins(0, 0) }, []],
    ["of pins whose boxes were typed to 0", { pins: pins(10, 0) }, ["pins 0"]],
    ["of stone that was typed to none", { stone: stone(2, 0, { deliveries: { quantity: 0 } }) }, ["stone 0"]],
    ["of boxes alone", { pins: pins(0, 2) }, ["pins 2"]],
    ["of soil that goes nowhere", { spoil: spoil(0, 0) }, []],
    ["of soil that is hauled and not tipped", { spoil: { ...spoil(2, 1), dump: undefined } as never }, ["haul 1"]],
    ["of soil whose loads were typed to 0", { spoil: spoil(2, 0) }, ["haul 0", "dump 0"]],
    ["of loads alone", { spoil: spoil(0, 1) }, ["haul 1", "dump 1"]],
  ])("%s", (_, bed, lines) => {
    expect(orders(bed)).toEqual(lines);
  });
});

describe("together never takes more than bed by bed", () => {
  test("one bed is ordered as its own line says", () => {
    expect(orders({ stone: stone(1.2, 2) })).toEqual(["stone 2", "delivery 1"]);
    expect(orders({ border: border([30], 3) })).toEqual(["border 3"]);
  });

  test("whatever the beds' own lines were made of", () => {
    // 2.8 tons by half tons would be 3; 12 and 20 ft of border five pieces with the saw; 199 pins two boxes.
    expect(orders({ stone: stone(1.4, 1) }, { stone: stone(1.4, 1) })).toEqual(["stone 2", "delivery 1"]);
    expect(orders({ border: border([12], 1) }, { border: border([20], 1) })).toEqual(["border 2"]);
    expect(orders({ pins: pins(130, 1) }, { pins: pins(130, 0) })).toEqual(["pins 1"]);
  });

  test("sums do not depend on the order of the beds", () => {
    // 1e16 is the first number from which binary arithmetic loses a 1.
    for (const amounts of [
      [1e16, 1, 1],
      [1, 1, 1e16],
      [1, 1e16, 1],
    ])
      expect(addedUp(amounts)).toBe(1e16 + 2);
    expect(grouped(["b", "a", "c", "a"], (name) => name)).toEqual([["a", "a"], ["b"], ["c"]]);
  });
});

describe("border", () => {
  /** 11.9 and 19.9 ft: five pieces bed by bed, four across, which bring 3 stakes less. */
  const beds = (changes: (pieces: number, stakes: number) => Partial<BorderNeed>) => [
    { border: border([11.9], 2, { stakes: 6, ...changes(2, 6) }) },
    { border: border([19.9], 3, { stakes: 9, ...changes(3, 9) }) },
  ];

  test("is cut across beds where that costs as much, and where the pieces have no price", () => {
    // One piece less saves 24, three stakes more cost 3 × 8.
    expect(orders(...beds(() => ({ extraStakes: { quantity: 0, unitCost: 8 } })))).toEqual(["border 4", "stakes 3"]);
    const unpriced = beds((quantity) => ({ pieces: { quantity }, extraStakes: { quantity: 0, unitCost: 9 } }));
    expect(orders(...unpriced)).toEqual(["border 4", "stakes 3"]);
  });

  test("with another number of stakes in a piece, or another price of a stake, is ordered apart", () => {
    const notes = (changes: Partial<BorderNeed>) =>
      job({ border: border([11.9], 2) }, { border: border([19.9], 3, changes) }).lines[0]!.notes;
    expect(notes({})).toEqual([]);
    expect(notes({ stakesPerPiece: 2 })).toEqual([expect.stringContaining("stakes included per piece.")]);
    expect(notes({ extraStakes: { quantity: 0, unitCost: 3 } })).toEqual([expect.stringContaining("price per stake.")]);
    expect(notes({ extraStakes: { quantity: 0 } })).toEqual([expect.stringContaining("price per stake.")]);
  });

  test("keeps the line of stakes that together are not needed", () => {
    // 5 stakes, and 2 pieces bring 6.
    const short = border([8], 1, { stakes: 5, extraStakes: { quantity: 2, unitCost: 2.5 } });
    expect(orders({ border: short }, { border: border([8], 1) })).toEqual(["border 2", "stakes 0"]);
  });

  test("without a finish and with a blank one is one item", () => {
    expect(orders({ border: border([8], 1) }, { border: border([8], 1, { finish: " " }) })).toEqual(["border 2"]);
  });

  test("known as pieces alone has no place in the cutting", () => {
    const { runs: _, ...known } = border([], 3);
    const [line] = job({ border: border([11.9], 2) }, { border: border([19.9], 3) }, { border: known }).lines;
    const { whole, stocks } = line!.cutting!;
    expect(new Set([...whole, ...stocks.flatMap(({ cuts }) => cuts)].map(({ bed }) => bed))).toEqual(
      new Set(["Bed A", "Bed B"]),
    );
    expect(line!.neededUnit).toBe("lin ft");
  });
});

describe("stakes", () => {
  const two = [
    { border: border([8], 1, { stakes: 7, extraStakes: { quantity: 4, unitCost: 2.5 } }) },
    { border: border([8], 1, { stakes: 2 }) },
  ];
  const typedStakes = border([16], 2, { stakes: 6, extraStakes: { quantity: 5, typed: true, unitCost: 2.5 } });
  const typedPieces = border([8], 4, {
    ...{ stakes: 20, pieces: { quantity: 4, typed: true, unitCost: 24 } },
    extraStakes: { quantity: 9, unitCost: 2.5 },
  });

  test("of one bed are ordered as its own line says", () => {
    expect(orders({ border: border([8], 1, { stakes: 5, extraStakes: { quantity: 7 } }) })).toContain("stakes 7");
  });

  test("typed over, or beside pieces that were typed over, are left as they are", () => {
    // 9 are needed, and 2 pieces bring 6: 3. What the beds with typed lines order comes on top.
    expect(orders(...two)).toEqual(["border 2", "stakes 3"]);
    expect(orders(...two, { border: typedStakes })).toEqual(["border 4", "stakes 8"]);
    expect(orders(...two, { border: typedPieces })).toEqual(["border 6", "stakes 12"]);
    expect(orders(...two, { border: typedStakes }, { border: typedPieces })).toEqual(["border 8", "stakes 17"]);
  });
});

describe("a delivery", () => {
  test("is there where one of two trucks brings something", () => {
    const fetched = stone(1, 1, { deliveries: { quantity: 0 } });
    const brought = stone(1, 1, { truck: { yards: 2, payloadTons: 2 } });
    expect(orders({ stone: fetched }, { stone: brought })).toContain("delivery 1");
  });

  test("that was typed on another truck does not keep the rest from coming together", () => {
    const other = { yards: 2, payloadTons: 2 };
    const typed = stone(1, 1, { truck: other, deliveries: { quantity: 2, typed: true } });
    // Two tons on a payload of 3 are one load.
    expect(orders({ stone: stone(1, 1) }, { stone: stone(1, 1) }, { stone: typed })).toContain("delivery 3");
  });

  test("of joined beds in too few loads is warned about, whatever was typed beside it", () => {
    const heavy = { stone: stone(9, 9, { truck: { yards: 20, payloadTons: 3 } }) };
    const typed = stone(1, 1, { truck: { yards: 20, payloadTons: 3 }, deliveries: { quantity: 3, typed: true } });
    expect(job(heavy, heavy, { stone: typed }).warnings.map(({ text }) => text)).toEqual([
      expect.stringContaining("in 2 loads each carries 9 tons"),
    ]);
  });
});

describe("a line", () => {
  test("tells what the beds differ in", () => {
    const other = { yardStep: 0.25, yardMinimum: 2, tonsPerYard: 1.4, order: { quantity: 1, unitCost: 70 } };
    expect(job({ stone: stone(1, 1) }, { stone: stone(1, 1, other) }).lines[0]!.notes).toEqual([
      "Not all ordered together: beds differ in order increment, minimum order, weight per cu yd, and price.",
    ]);
  });

  test("tells what was typed, and has a weight where it is known alone", () => {
    const typed = { ...pins(10, 1), boxes: { quantity: 1, typed: true } };
    const [line] = job({ pins: pins(10, 1) }, { pins: typed }).lines;
    expect(line!.whereUsed.map((used) => used.typed)).toEqual([false, true]);
    expect(line).not.toHaveProperty("weightTons");
  });

  test("says of one bed alone nothing about ordering together", () => {
    const { runs: _, ...known } = border([], 3);
    expect(job({ border: known }).lines[0]!.notes).toEqual([]);
  });

  test("is another one for another size or item", () => {
    const other = (item: string) => ({ others: [{ item, unit: "plants", order: { quantity: 1 } }] });
    expect(orders({ pins: pins(10, 1) }, { pins: { ...pins(10, 1), pinsPerBox: 50 } })).toEqual(["pins 1", "pins 1"]);
    expect(orders({ fabric: fabric([9], 1) }, { fabric: fabric([9], 1, { rollWidthFt: 4 }) })).toHaveLength(2);
    expect(orders(other("Rose"), other("Boxwood"))).toEqual(["other 1", "other 1"]);
  });

  test("without a price is named, with its size where it has one", () => {
    const plants = { others: [{ item: "Rose", unit: "plants", order: { quantity: 1 } }] };
    expect(job({ pins: pins(10, 1), border: border([8], 1), ...plants }).unpriced).toEqual([
      "Pins, boxes of 100",
      "Rose",
    ]);
  });
});

describe("a cutting says where it is not proven", () => {
  // A trap for first-fit-decreasing: 16 ft holds 8 + 6 + 2 and 7 + 5 + 4, which first-fit cuts from three.
  const feet = [8, 7, 6, 5, 4, 2];
  const notes = (beds: Omit<BedNeeds, "name">[], steps?: number) =>
    orderJob(named(beds), { cutLossIn: 0, ...(steps ? { steps } : {}) }).lines.map(({ order, notes }) => [
      order,
      notes,
    ]);
  const unproven = [expect.stringContaining("best cut list found")];

  test("of border", () => {
    const beds = feet.map((one) => ({ border: border([one], 1, { pieceLengthFt: 16 }) }));
    expect(notes(beds)).toEqual([[2, []]]);
    expect(notes(beds, 1)).toEqual([[3, unproven]]);
  });

  test("of rolls cut in turn that leave scrap in each", () => {
    // Twelve strips of 45.5 ft leave 4.5 ft each, less than the lap of 5 ft; their 546 ft would fill eleven rolls.
    const wasteful = fabric(Array(12).fill(45.5), 12, { endLapIn: 60, rolls: { quantity: 12, unitCost: 64 } });
    const other = fabric([20], 1, { rolls: { quantity: 1, unitCost: 70 } });
    expect(notes([{ fabric: wasteful }])).toEqual([[12, unproven]]);
    expect(job({ fabric: wasteful }, { fabric: other }).lines[0]!.cutting!.proven).toBe(false);
    expect(job({ fabric: other }).lines[0]!.cutting).toMatchObject({ proven: true, stocks: [{ leftOverFt: 30 }] });
  });

  test("of fabric", () => {
    const beds = feet.map((one) => ({ fabric: fabric([one], 1, { rollLengthFt: 16 }) }));
    expect(notes(beds)).toEqual([[2, []]]);
    expect(notes(beds, 1)).toEqual([[3, unproven]]);
  });
});

describe("fabric", () => {
  test("stays bed by bed where cutting in turn takes as many rolls", () => {
    // Bed A: 30 + 20, 11 + 30. The 50 ft of bed B are a roll. Without a joint they would take four.
    const [line] = job({ fabric: fabric([30, 30, 30], 2) }, { fabric: fabric([50], 1) }).lines;
    expect(line).toMatchObject({ order: 3, bedByBed: 3, cutting: { moreJoints: 1 } });
    expect(line!.cutting!.stocks.map(({ cuts }) => cuts[0]!.bed)).toEqual(["Bed A", "Bed A", "Bed B"]);
  });

  test("known as rolls alone is ordered beside the cutting", () => {
    const { stripsFt: _, ...known } = fabric([], 3);
    const [line] = job({ fabric: fabric([30], 1) }, { fabric: fabric([20], 1) }, { fabric: known }).lines;
    expect(line).toMatchObject({ order: 1 + 3, bedByBed: 5, neededUnit: "ft", needed: 50 });
    expect(line!.whereUsed[2]).toMatchObject({ needed: undefined, ownQuantity: 3 });
    expect(line!.cutting!.stocks).toHaveLength(1);
  });

  test("cut in turn begins with the longest strip, and is proven where it fills the rolls", () => {
    const [line] = job(...[30, 30, 31].map((feet) => ({ fabric: fabric([feet], 1) }))).lines;
    // 31 + 19, 12 + 30: 92 ft with the lap of 1 ft, more than one roll.
    expect(line).toMatchObject({ order: 2, cutting: { proven: true, moreJoints: 1 } });
    expect(line!.cutting!.stocks.map(({ cuts }) => cuts.map(({ lengthFt }) => lengthFt))).toEqual([
      [31, 19],
      [12, 30],
    ]);
  });

  test("of one bed is ordered as its own line says", () => {
    expect(orders({ fabric: fabric([30], 3) })).toEqual(["fabric 3"]);
    expect(orders({ fabric: fabric([30, 30], 1) })).toEqual(["fabric 1"]);
  });
});

describe("spoil", () => {
  test("typed to too few loads is warned about beside the rest", () => {
    // 2 cu yd of 1.5 tons fill a payload of 3 tons; 4 cu yd weigh twice that.
    const typed = spoil(4, 1, { haul: { quantity: 1, typed: true } });
    const { warnings } = job({ spoil: spoil(1, 1) }, { spoil: typed }, { spoil: spoil(1, 1) });
    expect(warnings).toEqual([
      { line: "haul", text: "Haul off: in 1 load each carries 6 tons, over its payload of 3. Plan more loads." },
    ]);
    expect(job({ spoil: typed }).warnings).toHaveLength(1);
    expect(job({ spoil: typed }, { spoil: typed }).warnings).toHaveLength(1);
  });

  test("of joined beds in too few loads is warned about, whatever was typed beside it", () => {
    const typed = spoil(1, 1, { haul: { quantity: 1, typed: true } });
    expect(
      job({ spoil: spoil(4, 1) }, { spoil: spoil(4, 1) }, { spoil: typed }).warnings.map(({ text }) => text),
    ).toEqual([expect.stringContaining("in 2 loads each carries 6 tons")]);
  });

  test("of soil of another weight is loaded apart, and has no weight where one is not known", () => {
    const { lines } = job({ spoil: spoil(1, 1) }, { spoil: spoil(1, 1, { tonsPerYard: 0 }) });
    expect(lines[0]).toMatchObject({ order: 2, notes: [expect.stringContaining("weight per cu yd")] });
    expect(lines[0]!.weightTons).toBeUndefined();
    expect(job({ spoil: spoil(1, 1) }).lines[0]!.weightTons).toBe(1.5);
  });
});

describe("an order is refused", () => {
  const noZero = [
    [{ stone: stone(1, 1, { tonsPerYard: 0 }) }, "stone tons per yard"],
    [{ border: border([8], 1, { pieceLengthFt: 0 }) }, "border piece length ft"],
    [{ fabric: fabric([8], 1, { rollLengthFt: 0 }) }, "fabric roll length ft"],
    [{ fabric: fabric([8], 1, { rollWidthFt: 0 }) }, "fabric roll width ft"],
    [{ pins: { ...pins(1, 1), pinsPerBox: 0 } }, "pins pins per box"],
    [{ spoil: spoil(1, 1, { truck: { yards: 0, payloadTons: 3 } }) }, "spoil truck yards"],
  ] as const;
  test.each(noZero)("where %j divides by 0", (bed, what) => {
    expect(() => job(bed)).toThrow(expect.objectContaining({ kind: "value", message: expect.stringContaining(what) }));
  });

  test("for an allowance of all of it, but for none of 0", () => {
    expect(() => job({ stone: stone(1, 1, { allowance: 1 }) })).toThrow(/can't use 1 for stone allowance/);
    expect(orders({ stone: stone(1, 1, { allowance: 0 }) })).toEqual(["stone 1", "delivery 1"]);
  });

  test("not for soil of no known weight, nor for none of it", () => {
    expect(orders({ spoil: spoil(0, 1, { tonsPerYard: 0 }) })).toEqual(["haul 1", "dump 1"]);
  });

  test("with the bed's name, if it has one", () => {
    const refused = (name: string) => () => orderJob([{ name, pins: pins(-1, 1) }]);
    expect(refused(" Walk ")).toThrow(/^Walk: can't use -1 for pins count/);
    expect(refused("  ")).toThrow(/^A bed without a name: /);
    expect(() => orderJob([])).toThrow(expect.objectContaining({ kind: "value" }));
  });
});
