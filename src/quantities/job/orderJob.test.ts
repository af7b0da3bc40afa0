import { describe, expect, test } from "vitest";
import type { BedNeeds, BorderNeed, FabricNeed, SpoilNeed, StoneNeed } from "./bedNeeds";
import type { OrderLine } from "./order";
import { orderJob } from "./orderJob";

const stone = (tons: number, order: number, changes: Partial<StoneNeed> = {}): StoneNeed => ({
  kind: "river rock",
  sizeIn: 1.25,
  tons,
  allowance: 0.08,
  tonsPerYard: 1.35,
  yardStep: 0.5,
  yardMinimum: 1,
  order: { quantity: order, unitCost: 62 },
  truck: { yards: 10, payloadTons: 8 },
  deliveries: { quantity: 1, unitCost: 90 },
  ...changes,
});
const border = (feet: number, pieces: number, changes: Partial<BorderNeed> = {}): BorderNeed => ({
  heightIn: 4,
  pieceLengthFt: 8,
  lapIn: 0,
  runs: [{ feet, closed: false }],
  stakes: 0,
  stakesPerPiece: 3,
  pieces: { quantity: pieces, unitCost: 24 },
  extraStakes: { quantity: 0, unitCost: 2.5 },
  ...changes,
});
const fabric = (stripsFt: readonly number[], rolls: number, changes: Partial<FabricNeed> = {}): FabricNeed => ({
  rollWidthFt: 6,
  rollLengthFt: 50,
  endLapIn: 12,
  stripsFt,
  rolls: { quantity: rolls, unitCost: 64 },
  ...changes,
});
const spoil = (yards: number, loads: number, changes: Partial<SpoilNeed> = {}): SpoilNeed => ({
  yards,
  tonsPerYard: 1.5,
  truck: { yards: 5, payloadTons: 3 },
  haul: { quantity: loads, unitCost: 45 },
  dump: { quantity: loads, unitCost: 30 },
  ...changes,
});

const job = (...beds: Omit<BedNeeds, "name">[]) =>
  orderJob(beds.map((bed, n) => ({ name: `Bed ${String.fromCharCode(65 + n)}`, ...bed })));
const line = (lines: readonly OrderLine[], kind: string) => {
  const found = lines.filter(({ key }) => key.startsWith(kind));
  expect(found).toHaveLength(1);
  return found[0]!;
};

describe("stone", () => {
  test("of one kind and size is added before it is rounded to the yard's step", () => {
    const { lines, money } = job({ stone: stone(1.2, 1.5) }, { stone: stone(1.2, 1.5, { kind: " River  Rock" }) });
    expect(line(lines, "stone")).toMatchObject({
      supplier: "stone yard",
      item: "River Rock",
      specification: "to 1.25 in",
      needed: 2.4,
      order: 2.5,
      bedByBed: 3,
      saved: 0.5,
      weightTons: 2.5,
      money: { orderCents: 15_500, bedByBedCents: 18_600, savedCents: 3_100 },
    });
    // 2.4 tons with 8 % on top: 2.4 × 0.08 ÷ 1.08
    expect(line(lines, "stone").allowance).toBeCloseTo(0.177778, 6);
    expect(line(lines, "delivery")).toMatchObject({ order: 1, bedByBed: 2, money: { savedCents: 9_000 } });
    expect(money).toEqual({ orderCents: 24_500, bedByBedCents: 36_600, savedCents: 12_100 });
  });

  test("reaches the yard's minimum once", () => {
    const { lines } = job({ stone: stone(0.2, 1) }, { stone: stone(0.3, 1) }, { stone: stone(0.1, 1) });
    expect(line(lines, "stone")).toMatchObject({ order: 1, bedByBed: 3 });
  });

  test("of another kind or size is another item", () => {
    const { lines } = job({ stone: stone(1.2, 1.5) }, { stone: stone(1.2, 1.5, { sizeIn: 3 }) });
    expect(lines.map(({ key, order }) => [key, order])).toEqual([
      ["stone|river rock|1.25", 1.5],
      ["stone|river rock|3", 1.5],
      ["delivery|river rock|1.25", 1],
      ["delivery|river rock|3", 1],
    ]);
  });

  test("with another step or price is one item, ordered apart, and says why", () => {
    const dearer = stone(1.2, 1.5, { order: { quantity: 1.5, unitCost: 70 } });
    const { lines } = job(
      { stone: stone(1.2, 1.5) },
      { stone: stone(1.2, 1.25, { yardStep: 0.25 }) },
      { stone: dearer },
    );
    expect(line(lines, "stone")).toMatchObject({
      order: 4.25,
      saved: 0,
      // 1.5 × 62 + 1.25 × 62 + 1.5 × 70
      money: { orderCents: 27_550 },
      notes: ["Not all ordered together: beds differ in order increment and price."],
    });
  });

  test("typed over stands as typed, beside the rest", () => {
    const typed = stone(1.2, 4.3, { order: { quantity: 4.3, typed: true, unitCost: 62 } });
    const { lines } = job({ stone: stone(1.2, 1.5) }, { stone: typed }, { stone: stone(1.2, 1.5) });
    expect(line(lines, "stone")).toMatchObject({ order: 6.8, bedByBed: 7.3 });
    expect(line(lines, "stone").notes).toEqual(["Bed B: 4.3 tons as typed there, on top of the rest."]);
  });

  test("comes in loads of what the truck holds and may carry", () => {
    const heavy = stone(7, 7, { deliveries: { quantity: 1, unitCost: 90 } });
    // 14 tons on a payload of 8 take 2 loads; 10.37 cu yd in a box of 10 would take 2 as well.
    expect(line(job({ stone: heavy }, { stone: heavy }).lines, "delivery").order).toBe(2);
    const light = stone(1, 1, { tonsPerYard: 0.5, truck: { yards: 3, payloadTons: 8 } });
    expect(line(job({ stone: light }, { stone: light }).lines, "delivery").order).toBe(2); // 4 cu yd in a box of 3
  });

  test("whose loads were typed is not loaded a second time with the rest", () => {
    const typed = stone(7, 7, { deliveries: { quantity: 3, typed: true, unitCost: 90 } });
    // 3 loads bring 7 tons as typed; 7 + 8 of the others come on 2 of 8 tons, where all 22 would take 3.
    const others = [stone(7, 7), stone(8, 8)].map((one) => ({ stone: one }));
    expect(line(job({ stone: typed }, ...others, { stone: stone(0.5, 1) }).lines, "delivery").order).toBe(3 + 2);
  });

  test("is brought bed by bed where the beds name different trucks", () => {
    const small = stone(1, 1, { truck: { yards: 4, payloadTons: 3 } });
    const large = stone(1, 1);
    const { lines } = job({ stone: large }, { stone: large }, { stone: small }, { stone: small });
    // Two tons would fit on either truck; but no one knows whose stone comes on which.
    expect(line(lines, "delivery")).toMatchObject({ order: 4, bedByBed: 4 });
    expect(line(lines, "delivery").notes[0]).toMatch(/differ in truck size and truck payload/);
  });

  test("that was typed to come in fewer loads than the truck may carry is warned about", () => {
    const { warnings } = job({ stone: stone(9, 9, { deliveries: { quantity: 1, typed: true } }) });
    expect(warnings.map(({ text }) => text)).toEqual([
      "Delivery of river rock, to 1.25 in: in 1 load each carries 9 tons, over its payload of 8. Plan more loads.",
    ]);
    expect(warnings[0]!.line).toBe("delivery|river rock|1.25");
  });
});

describe("border", () => {
  test("is cut across beds: what one bed leaves is used in another", () => {
    // 11.9 and 19.9 ft: 1 and 2 whole pieces of 8 ft, and 3.9 ft more of each, which come out of one piece with two cuts.
    const { lines } = job({ border: border(11.9, 2) }, { border: border(19.9, 3) });
    const pieces = line(lines, "border");
    expect(pieces).toMatchObject({ order: 4, bedByBed: 5, item: "Edging pieces" });
    expect(pieces.needed).toBeCloseTo(31.8, 9);
    expect(pieces.specification).toBe("4 in high, 8 ft long");
    expect(pieces.cutting).toMatchObject({
      // By the last piece of each run in the drawings: P2 of the one bed, P3 of the other.
      whole: [
        { bed: "Bed A", part: 2, count: 1 },
        { bed: "Bed B", part: 3, count: 2 },
      ],
      moreJoints: 0,
      proven: true,
    });
    expect(pieces.cutting!.stocks).toHaveLength(1);
    expect(pieces.cutting!.stocks[0]!.cuts.map(({ bed }) => bed).sort()).toEqual(["Bed A", "Bed B"]);
    expect(pieces.cutting!.stocks[0]!.leftOverFt).toBeCloseTo(0.2 - 2 * (0.125 / 12), 9);
  });

  test("is told where a piece is bought for less than an inch, by its number in the drawing", () => {
    const notes = (feet: number) => line(job({ border: border(feet, 3) }).lines, "border").notes;
    expect(notes(16 + 0.5 / 12)).toEqual(["Bed A: P3 covers less than an inch. Lap the rest less, or leave it off."]);
    expect(notes(16 + 1.5 / 12)).toEqual([]);
  });

  test("loses what the saw takes: two of 4 ft do not come out of 8 ft", () => {
    expect(line(job({ border: border(12, 2) }, { border: border(20, 3) }).lines, "border").order).toBe(5);
    const beds = [border(12, 2), border(20, 3)].map((one, n) => ({ name: `${n}`, border: one }));
    expect(line(orderJob(beds, { cutLossIn: 0 }).lines, "border").order).toBe(4);
  });

  test("of another height, length or finish is another item", () => {
    const keys = (changes: Partial<BorderNeed>) =>
      job(
        { border: border(11.9, 2, { finish: "black" }) },
        { border: border(19.9, 3, { finish: "Black ", ...changes }) },
      ).lines;
    expect(keys({})).toHaveLength(1);
    expect(keys({})[0]!.specification).toBe("4 in high, 8 ft long, Black");
    for (const other of [{ heightIn: 6 }, { pieceLengthFt: 10 }, { finish: "brown" }])
      expect(keys(other)).toHaveLength(2);
  });

  test("typed over, or known as pieces alone, is ordered beside the cutting", () => {
    const typed = border(19.9, 7, { pieces: { quantity: 7, typed: true, unitCost: 24 } });
    const { runs: _, ...known } = border(0, 3);
    const { lines } = job(
      { border: border(11.9, 2) },
      { border: typed },
      { border: known },
      { border: border(19.9, 3) },
    );
    expect(line(lines, "border")).toMatchObject({ order: 4 + 7 + 3, bedByBed: 15 });
    expect(line(lines, "border").notes).toEqual([
      "Bed B: 7 pieces as typed there, on top of the rest.",
      "Bed C: only its order is known, so it's ordered by itself.",
    ]);
  });

  test("stakes that come with the pieces of one bed serve another", () => {
    const short = border(8, 1, { stakes: 5, extraStakes: { quantity: 2, unitCost: 2.5 } });
    const { lines } = job({ border: short }, { border: border(8, 1, { stakes: 2 }) });
    expect(line(lines, "stakes")).toMatchObject({ needed: 7, order: 1, bedByBed: 2 });
    expect(line(lines, "stakes").notes).toEqual(["6 more come with the pieces."]);
  });

  test("a piece saved brings no stakes along: they are ordered, or the piece is, whichever costs less", () => {
    const beds = (stake: number) => [
      { border: border(11.9, 2, { stakes: 6, extraStakes: { quantity: 0, unitCost: stake } }) },
      { border: border(19.9, 3, { stakes: 9, extraStakes: { quantity: 0, unitCost: stake } }) },
    ];
    const { lines } = job(...beds(2.5));
    expect(line(lines, "border").order).toBe(4);
    expect(line(lines, "stakes")).toMatchObject({ order: 3, bedByBed: 0, saved: -3 });
    const dear = job(...beds(9)).lines;
    expect(dear).toHaveLength(1);
    expect(dear[0]).toMatchObject({ order: 5, saved: 0 });
    expect(dear[0]!.notes[0]).toMatch(/^Cut bed by bed/);
  });
});

describe("fabric", () => {
  test("is cut across beds without a joint", () => {
    const { lines } = job({ fabric: fabric([30], 1) }, { fabric: fabric([20], 1) }, { fabric: fabric([26, 24], 1) });
    expect(line(lines, "fabric")).toMatchObject({
      order: 2,
      bedByBed: 3,
      specification: "6 ft × 50 ft",
      cutting: { moreJoints: 0, proven: true },
    });
  });

  test("or off rolls in turn where that takes fewer, and says how many joints more", () => {
    // Three strips of 30 ft: no two come out of 50 ft; with a lap of 1 ft they take 30 + 20, 11 + 30.
    const { lines } = job({ fabric: fabric([30], 1) }, { fabric: fabric([30], 1) }, { fabric: fabric([30], 1) });
    expect(line(lines, "fabric")).toMatchObject({ order: 2, bedByBed: 3, cutting: { moreJoints: 1 } });
  });

  test("longer than a roll takes whole rolls and what is left", () => {
    // 60 ft with a lap of 1 ft: 50 + 11; beside it 39 ft come out of the second roll.
    const { lines } = job({ fabric: fabric([60], 2) }, { fabric: fabric([39], 1) });
    expect(line(lines, "fabric")).toMatchObject({
      order: 2,
      bedByBed: 3,
      cutting: { whole: [{ bed: "Bed A", part: 1, count: 1 }], proven: true },
    });
  });
});

test("pins are boxed once", () => {
  const pins = (count: number, boxes: number) => ({ pins: { count, pinsPerBox: 100, boxes: { quantity: boxes } } });
  const { lines, money, unpriced } = job(pins(130, 2), pins(60, 1), pins(9, 1));
  expect(line(lines, "pins")).toMatchObject({ needed: 199, order: 2, bedByBed: 4, money: undefined });
  expect(money.orderCents).toBe(0);
  expect(unpriced).toEqual(["Pins, boxes of 100"]);
});

describe("spoil", () => {
  test("is loaded once, by volume and by weight, and tipped by the load", () => {
    // 5.2 cu yd of 1.5 tons: 7.8 tons on a payload of 3 tons.
    const { lines, warnings } = job({ spoil: spoil(2.6, 2) }, { spoil: spoil(2.6, 2) });
    expect(line(lines, "haul")).toMatchObject({ needed: 5.2, order: 3, bedByBed: 4 });
    expect(line(lines, "haul").weightTons).toBeCloseTo(7.8, 9);
    expect(line(lines, "dump")).toMatchObject({ order: 3, bedByBed: 4, money: { savedCents: 3_000 } });
    expect(warnings).toEqual([]);
  });

  test("says where a payload is missing", () => {
    const blank = spoil(2.6, 1, { truck: { yards: 5, payloadTons: 0 } });
    expect(job({ spoil: blank }).warnings[0]!.text).toMatch(/no payload given.*GVWR less empty weight/);
  });
});

test("what was added by hand is added up by item and unit", () => {
  const plants = (quantity: number, item = "Boxwood, 2 gal") => ({
    others: [{ item, unit: "plants", order: { quantity, unitCost: 21 } }],
  });
  const { lines } = job(plants(3), plants(4, "boxwood, 2 gal "), plants(0, "Rose"));
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatchObject({
    supplier: "other",
    item: "Boxwood, 2 gal",
    order: 7,
    orderUnit: "plants",
    notes: [],
  });
});

test("each line says where it is used", () => {
  const { lines } = job({ stone: stone(1.2, 1.5) }, {}, { stone: stone(2.2, 2.5) });
  expect(line(lines, "stone").whereUsed).toEqual([
    { bed: "Bed A", needed: 1.2, ownQuantity: 1.5, typed: false },
    { bed: "Bed C", needed: 2.2, ownQuantity: 2.5, typed: false },
  ]);
});

describe("an order is refused", () => {
  test("without a bed", () => {
    expect(() => orderJob([])).toThrow(/Check at least one/);
  });

  test.each([
    [{ stone: stone(Number.NaN, 1) }, /Bed A: can't use NaN for stone tons/],
    [{ stone: stone(1, 1, { yardStep: 0 }) }, /Bed A: can't use 0 for stone yard step/],
    [{ stone: stone(1, 1, { truck: { yards: 0, payloadTons: 8 } }) }, /can't use 0 for stone truck yards/],
    [{ stone: stone(1, 1, { allowance: 8 }) }, /can't use 8 for stone allowance/],
    [{ border: border(-3, 1) }, /can't use -3 for border runs 0 feet/],
    [{ spoil: spoil(1, Number.POSITIVE_INFINITY) }, /can't use Infinity for spoil haul quantity/],
  ])("for a number that cannot be used: %#", (bed, message) => {
    expect(() => job(bed)).toThrow(message);
  });
});
