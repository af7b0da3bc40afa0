import { describe, expect, test } from "vitest";
import type { BedNeeds } from "./bedNeeds";
import { type CrewAmounts, crewAmounts } from "./crewAmounts";
import { crewPlan } from "./crewPlan";
import { crewTools } from "./crewTools";
import { orderJob } from "./orderJob";

/** A bed with everything, a bed with little work, one known by what it orders alone, and one that says nothing. */
const beds: BedNeeds[] = [
  {
    name: "Front walk",
    stone: {
      kind: "pea gravel",
      sizeIn: 0.375,
      tons: 2.2,
      allowance: 0.1,
      tonsPerYard: 1.4,
      yardStep: 0.5,
      yardMinimum: 1,
      order: { quantity: 2.5 },
      truck: { yards: 1, payloadTons: 8 },
      deliveries: { quantity: 2 },
    },
    border: {
      heightIn: 4,
      pieceLengthFt: 8,
      lapIn: 0,
      // 20 ft: two pieces and 4 ft of a third; 10 ft: one and 2 ft of a second.
      runs: [
        { feet: 20, closed: false },
        { feet: 10, closed: true },
      ],
      stakes: 9,
      stakesPerPiece: 3,
      pieces: { quantity: 5 },
      extraStakes: { quantity: 0 },
    },
    fabric: { rollWidthFt: 6, rollLengthFt: 50, endLapIn: 12, stripsFt: [22, 22, 20], rolls: { quantity: 2 } },
    pins: { count: 130, pinsPerBox: 100, boxes: { quantity: 2 } },
    spoil: {
      yards: 2.6,
      tonsPerYard: 1.2,
      truck: { yards: 5, payloadTons: 4 },
      haul: { quantity: 1 },
      dump: { quantity: 1 },
    },
    work: {
      areaSqFt: 100,
      bankYards: 2,
      fabricSqFt: 110,
      stoneYards: 1.5,
      barrowTrips: 14,
      hours: { scrape: 1.2, border: 1.5, fabric: 1, stone: 2.25, cleanUp: 1 },
      otherHours: [
        { label: "Move two shrubs", hours: 2 },
        { label: "Fetch the key", hours: 0 },
      ],
    },
  },
  {
    name: "Garage side",
    work: {
      areaSqFt: 40,
      bankYards: 0,
      fabricSqFt: 0,
      stoneYards: 0,
      barrowTrips: 0,
      hours: { cleanUp: 0.5 },
      otherHours: [{ label: "move two  shrubs", hours: 1 }],
    },
  },
  {
    name: "Side yard",
    border: {
      heightIn: 4,
      pieceLengthFt: 8,
      lapIn: 0,
      stakes: 3,
      stakesPerPiece: 3,
      pieces: { quantity: 1 },
      extraStakes: { quantity: 0 },
    },
    fabric: { rollWidthFt: 6, rollLengthFt: 50, endLapIn: 12, rolls: { quantity: 1 } },
  },
  { name: "Back fence" },
];
const order = orderJob(beds);
const amounts: CrewAmounts = {
  beds: 4,
  areaSqFt: 140,
  bankYards: 2,
  spoilYards: 2.6,
  spoilLoads: 1,
  borderFt: 30,
  pieces: 6,
  cutPieces: 2,
  cutPavers: 0,
  cutTimbers: 0,
  stakes: 12,
  spikes: 0,
  cutEdgeFt: 0,
  sandYards: 0,
  fabricSqFt: 110,
  strips: 3,
  rolls: 3,
  pins: 130,
  stoneTons: 2.2,
  stoneYards: 1.5,
  deliveries: 2,
  barrowTrips: 14,
};

test("a crew handles what the beds need, and what the order buys and hauls", () => {
  expect(crewAmounts(beds, order)).toEqual(amounts);
});

describe("each step of the plan", () => {
  const { steps, loads } = crewPlan(beds, order, { people: 2, dayHours: 8 });

  test("has its amounts, and its hours or the step whose hours hold them", () => {
    const told = steps.map(({ key, quantities, hours, hoursIn }) => [
      key,
      quantities.map(({ amount, unit }) => `${amount} ${unit}`.trim()).join(", "),
      hours ?? hoursIn,
    ]);
    expect(told).toEqual([
      ["marks", "4", undefined],
      ["lineOut", "30 lin ft", "Scrape and load"],
      ["scrape", "140 sq ft, 2 cu yd, 2.6 cu yd, 1 loads", 1.2],
      ["level", "140 sq ft", "Scrape and load"],
      ["border", "30 lin ft, 6 pieces, 12 stakes", 1.5],
      ["fabric", "110 sq ft, 3 strips, 3 rolls", 1],
      ["pins", "130 pins", "Lay fabric"],
      ["stone", "2.2 tons, 1.5 cu yd, 2 loads, 14 trips", 2.25],
      ["close", "", "Trench and set edging"],
      ["other", "", 0],
      ["other", "", 3],
      ["cleanUp", "", 1.5],
    ]);
    for (const { quantities } of steps) for (const { what } of quantities) expect(what).not.toBe("");
  });

  test("names the beds that take hours of it, and no others", () => {
    const byBed = (wanted: string) =>
      steps.filter(({ label }) => label.toLowerCase().includes(wanted)).flatMap((step) => step.byBed);
    expect(byBed("scrape")).toEqual([{ bed: "Front walk", hours: 1.2 }]);
    expect(byBed("clean up")).toEqual([
      { bed: "Front walk", hours: 1 },
      { bed: "Garage side", hours: 0.5 },
    ]);
    expect(byBed("shrubs")).toEqual([
      { bed: "Front walk", hours: 2 },
      { bed: "Garage side", hours: 1 },
    ]);
    expect(byBed("key")).toEqual([]);
  });

  test("leaves out amounts that are 0", () => {
    const bare = crewPlan(beds.slice(3), orderJob(beds.slice(3)), { people: 2, dayHours: 8 });
    expect(bare.steps.flatMap(({ quantities }) => quantities.map(({ amount }) => amount))).toEqual([1]);
    expect(bare).toMatchObject({ personHours: 0, wholeDays: 0, loads: [] });
  });

  test("comes with the loads, spoil as well as stone", () => {
    expect(loads).toEqual([
      { what: "Delivery: pea gravel, to 0.375 in", loads: 2, weightTons: 2.5 },
      { what: "Haul off: soil, loose", loads: 1, weightTons: 2.6 * 1.2 },
    ]);
  });

  test.each([
    [{ people: 0, dayHours: 8 }, "crewSize", /such as 2\.$/],
    [{ people: 2, dayHours: 0 }, "crewDay", /such as 8\.$/],
  ])("is refused for a crew of %o", (crew, argument, message) => {
    const refused = () => crewPlan(beds, order, crew);
    expect(refused).toThrow(expect.objectContaining({ kind: "value", argument }));
    expect(refused).toThrow(message);
  });
});

describe("tools that are loaded", () => {
  const nothing = Object.fromEntries(Object.keys(amounts).map((key) => [key, 0])) as unknown as CrewAmounts;
  const toolsFor = (job: Partial<CrewAmounts>, people = 5) =>
    crewTools({ ...nothing, ...job }, people).map(({ tool, count }) => [tool, count]);
  const always = [
    ["Ticket, drawing, order, and this sheet", undefined],
    ["Gloves, eye protection, dust masks", 5],
    ["Tape, string, stakes, and marking paint", undefined],
    ["Flat shovels", 5],
    ["Broom or blower", undefined],
  ];
  const border = [
    ["Level and straightedge", undefined],
    ["Trenching spade", undefined],
    ["Sledges and a wood block", 3],
  ];
  const digging = [
    ["Spade", undefined],
    ["Tarp for the pile", undefined],
  ];
  const knives = [["Utility knives, spare blades", 3]];

  test.each<[Partial<CrewAmounts>, unknown[][]]>([
    [{}, []],
    [{ areaSqFt: 500 }, []],
    [{ areaSqFt: 501 }, [["Sod cutter", undefined]]],
    [{ bankYards: 1, areaSqFt: 400 }, [...digging, ["Hand tamper", undefined]]],
    [{ bankYards: 1, areaSqFt: 401 }, [...digging, ["Plate compactor", undefined]]],
    [{ borderFt: 1 }, border],
    [{ pieces: 1 }, border],
    [{ cutPieces: 1 }, [["Cut-off saw, file, ear protection", undefined]]],
    [
      { cutPavers: 1 },
      [
        ["Masonry saw with water to the blade, or splitter", undefined],
        ["Ear protection", undefined],
      ],
    ],
    [
      { cutTimbers: 1 },
      [
        ["Saw for timbers, goggles", undefined],
        ["Ear protection", undefined],
      ],
    ],
    [{ spikes: 1 }, [["Drill and long bit", undefined]]],
    [{ cutEdgeFt: 1 }, [["Half-moon edger", undefined]]],
    [{ fabricSqFt: 1 }, knives],
    [{ rolls: 1 }, knives],
    [{ pins: 1 }, [["Hammers", 3]]],
    [
      { barrowTrips: 1 },
      [
        ["Wheelbarrows", 3],
        ["Planks for wheelbarrows", undefined],
      ],
    ],
    [{ stoneTons: 1 }, [["Rakes", 3]]],
  ])("for %o, a crew of five", (job, tools) => {
    const broom = always.length - 1;
    expect(toolsFor(job)).toEqual([...always.slice(0, broom), ...tools, ...always.slice(broom)]);
  });

  test("each say what they are for", () => {
    for (const { why } of crewTools(amounts, 2)) expect(why).not.toBe("");
  });
});
