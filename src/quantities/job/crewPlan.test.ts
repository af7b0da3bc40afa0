import { describe, expect, test } from "vitest";
import type { BedNeeds } from "./bedNeeds";
import { crewPlan } from "./crewPlan";
import { orderJob } from "./orderJob";

const bed = (name: string, changes: Partial<BedNeeds> = {}): BedNeeds => ({
  name,
  stone: {
    kind: "pea gravel",
    sizeIn: 0.375,
    tons: 2.2,
    allowance: 0.1,
    tonsPerYard: 1.4,
    yardStep: 0.5,
    yardMinimum: 1,
    order: { quantity: 2.5 },
    truck: { yards: 10, payloadTons: 8 },
    deliveries: { quantity: 1 },
  },
  border: {
    heightIn: 4,
    pieceLengthFt: 8,
    lapIn: 0,
    runs: [{ feet: 20, closed: false }],
    stakes: 9,
    stakesPerPiece: 3,
    pieces: { quantity: 3 },
    extraStakes: { quantity: 0 },
  },
  work: {
    areaSqFt: 100,
    bankYards: 1,
    fabricSqFt: 110,
    stoneYards: 1.5,
    barrowTrips: 14,
    hours: { scrape: 1.2, border: 1.5, fabric: 1, stone: 2.25, cleanUp: 1 },
  },
  ...changes,
});
const plan = (beds: BedNeeds[], crew = { people: 3, dayHours: 8 }) => crewPlan(beds, orderJob(beds), crew);
const step = (found: ReturnType<typeof plan>, key: string) => found.steps.find((one) => one.key === key)!;

describe("the plan of the crew", () => {
  const two = plan([bed("Front walk"), bed("Garage side")]);

  test("has the steps in the order in which they are done", () => {
    expect(two.steps.map(({ key }) => key).join(" ")).toBe(
      "marks lineOut scrape level border fabric pins stone close cleanUp",
    );
  });

  test("adds quantities and hours over the beds", () => {
    expect(step(two, "border")).toMatchObject({
      hours: 3,
      byBed: [
        { bed: "Front walk", hours: 1.5 },
        { bed: "Garage side", hours: 1.5 },
      ],
      quantities: [
        { what: "edging", amount: 40, unit: "lin ft" },
        { what: "on the order", amount: 6, unit: "pieces" },
        { what: "driven", amount: 18, unit: "stakes" },
      ],
    });
    // 6.95 h a bed; 13.9 labor hours for three people of 8 h
    expect(two.personHours).toBeCloseTo(13.9, 9);
    expect(two.crewDays).toBeCloseTo(13.9 / 24, 9);
    expect(two.wholeDays).toBe(1);
  });

  test("says which step's hours hold those of another", () => {
    expect(step(two, "pins")).toMatchObject({ hours: undefined, hoursIn: "Lay fabric", byBed: [] });
    expect(step(two, "marks")).toMatchObject({ hours: undefined, hoursIn: undefined });
  });

  test("does what was added by hand before it cleans up", () => {
    const work = { ...bed("").work!, otherHours: [{ label: "Move two shrubs", hours: 2 }] };
    const found = plan([bed("Front walk", { work }), bed("Garage side", { work })]);
    expect(found.steps.at(-2)).toMatchObject({ key: "other", label: "Move two shrubs", hours: 4 });
    expect(found.personHours).toBeCloseTo(17.9, 9);
  });

  test("lists the loads of the order", () => {
    expect(two.loads).toEqual([{ what: "Delivery: pea gravel, to 0.375 in", loads: 1, weightTons: 4.5 }]);
  });

  test("is refused without people or hours", () => {
    expect(() => plan([bed("Front walk")], { people: 0, dayHours: 8 })).toThrow(/Crew size is blank or 0/);
    expect(() => plan([bed("Front walk")], { people: 2, dayHours: 0 })).toThrow(/Working day is blank or 0/);
  });
});

describe("tools", () => {
  const tools = (beds: BedNeeds[], people = 3) => plan(beds, { people, dayHours: 8 }).tools;
  const names = (beds: BedNeeds[]) => tools(beds).map(({ tool }) => tool);

  test("follow the size of the job and the crew", () => {
    expect(tools([bed("Front walk")]).find(({ tool }) => tool === "Wheelbarrows")?.count).toBe(2);
    expect(tools([bed("Front walk")], 5).find(({ tool }) => tool === "Flat shovels")?.count).toBe(5);
    expect(names([bed("Front walk")])).toContain("Hand tamper");
    const large = { ...bed("").work!, areaSqFt: 600 };
    const found = names([bed("Front walk", { work: large })]);
    expect(found).toContain("Plate compactor");
    expect(found).toContain("Sod cutter");
    expect(found).not.toContain("Hand tamper");
  });

  test("leave out what a job has no use for", () => {
    const { stone, border: _border, work: _work, ...rest } = bed("Stone alone");
    const found = names([{ ...rest, stone: stone! }]);
    expect(found).toContain("Rakes");
    for (const tool of [
      "Spade",
      "Trenching spade",
      "Cut-off saw, file, ear protection",
      "Utility knives, spare blades",
    ])
      expect(found).not.toContain(tool);
  });
});
