import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readHeading } from "./heading";
import { meaningOf } from "./meaning";
import { conversion, type UnitName, units } from "./units";

/** What a heading is taken for: roles, unit, and how plainly it says so. */
const read = (heading: string) => {
  const text = readHeading(heading);
  const { roles, strength } = meaningOf(text);
  return [roles.join(" or "), text.unit ?? "", roles.length > 0 ? strength : ""];
};

describe("a heading says what a column holds, in the words that offices use", () => {
  test.each([
    ["Length (ft)", "length", "ft"],
    ["Len. in.", "length", "in"],
    ["LENGTH – METERS", "length", "m"],
    ["L m", "length", "m"],
    ["Long, ft", "length", "ft"],
    ["Lgth'", "length", "ft"],
    ["W'", "width", "ft"],
    ["Width in ft", "width", "ft"],
    ["Wide (inches)", "width", "in"],
    ["Width / ft", "width", "ft"],
    ["Depth – cm", "depth", "cm"],
    ["D″", "depth", "in"],
    ["Inches deep", "depth", "in"],
    ["Depth of stone in inches", "depth", "in"],
    ["Stone depth", "depth", ""],
    ["Thickness [mm]", "depth", "mm"],
    ["Scrape, in", "scrape", "in"],
    ["Dig depth", "scrape", ""],
    ["Corner radius", "radius", ""],
    ["Rounded", "corners", ""],
    ["# of corners", "corners", "each"],
    ["Kind of rock", "stone", ""],
    ["Material", "stone", ""],
    ["Gravel type", "stone", ""],
    ["Waste %", "waste", "%"],
    ["% waste", "waste", "%"],
    ["Customer", "job", ""],
    ["Where", "bed", ""],
    ["Area, sq ft", "area", "sq ft"],
    ["SF", "area", "sq ft"],
    ["Area m²", "area", "sq m"],
    ["Edging (lf)", "border", "ft"],
    ["Perimeter", "border", ""],
    ["Edging (pcs)", "pieces", "pieces"],
    ["Border pieces", "pieces", "pieces"],
    ["Rock (t)", "tons", "tons"],
    ["Tons", "tons", "tons"],
    ["Tons of gravel", "tons", "tons"],
    ["Stone (lb)", "tons", "lb"],
    ["Total tons", "tons", "tons"],
    ["Order, tons", "order", "tons"],
    ["Edging, lin ft", "border", "ft"],
    ["Stone to order", "order", ""],
    ["Stone (cu yd)", "yards", "cu yd"],
    ["Cubic yards", "yards", "cu yd"],
    ["Fabric (rolls)", "rolls", "rolls"],
    ["Rolls of fabric", "rolls", "rolls"],
    ["Staples", "pins", "pins"],
    ["Boxes of pins", "boxes", "boxes"],
    ["Haul-off loads", "spoilLoads", "loads"],
    ["Man-hours", "hours", "hr"],
    ["$/ton", "stonePrice", ""],
    ["Stone price a ton", "stonePrice", ""],
    ["Stone price per ton", "stonePrice", ""],
    ["Stone, tons/cu yd", "density", "tons/cu yd"],
    ["Stone, tons a cu yd", "density", "tons/cu yd"],
    ["Labor cost", "laborCost", ""],
    ["Bid", "price", ""],
  ])("%s is %s %s", (heading, role, unit) => {
    expect(read(heading)).toEqual([role, unit, "plain"]);
  });

  test.each([
    ["Size", "length or width or area"],
    ["Loads", "spoilLoads or deliveries"],
    ["Cost", "materialCost or price"],
    ["Qty", "tons or order or yards"],
    ["H", "depth or hours"],
    ["Fabric", "rolls or area"],
  ])("%s says too little, and may be %s", (heading, roles) => {
    const [found, , strength] = read(heading);
    expect([found, strength]).toEqual([roles, "vague"]);
  });

  test("“Dig” alone may be a depth or an amount", () => {
    expect(read("Dig")).toEqual(["scrape or dig", "", "plain"]);
  });

  test.each([
    "Roll width",
    "Border height",
    "Trench depth (in)",
    "Pin spacing",
    "Date",
    "Notes",
    "Job #",
    "Phone",
    "Price per foot of edging",
    "Stone size",
    "Edging color",
    "",
    "…",
  ])("%s is nothing that formulas read or give", (heading) => {
    expect(meaningOf(readHeading(heading)).roles.filter((role) => role !== "bed" && role !== "job")).toEqual([]);
  });

  test("any text at all is read without trouble", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: "grapheme" })), (text) => {
        const { roles } = meaningOf(readHeading(text));
        expect(new Set(roles).size).toBe(roles.length);
      }),
    );
  });
});

describe("the factor between two units", () => {
  // 1 in = 2.54 cm = 25.4 mm, 1 ft = 0.3048 m = 12 in, 1 yd = 3 ft, 1 short ton = 2,000 lb = 0.90718474 t exactly; 1 cu yd
  // = (0.9144 m)³, so 1 cu m = 1.30795061931 cu yd
  // (NIST Handbook 44, Appendix C).
  test.each([
    ["cm", "in", "/2.54"],
    ["mm", "in", "/25.4"],
    ["m", "in", "/0.0254"],
    ["ft", "in", "*12"],
    ["in", "ft", "/12"],
    ["m", "ft", "/0.3048"],
    ["yd", "ft", "*3"],
    ["sq m", "sq ft", "/0.09290304"],
    ["sq ft", "sq m", "*0.09290304"],
    ["sq yd", "sq ft", "*9"],
    ["tons", "lb", "*2000"],
    ["tons", "tonnes", "*0.90718474"],
    ["lb", "tons", "/2000"],
    ["cu ft", "cu yd", "/27"],
    ["cu m", "cu yd", "*1.30795061931"],
    ["in", "in", ""],
  ] as const)("from %s to %s is %s", (from, to, factor) => {
    expect(conversion(from, to)).toBe(factor);
  });

  test("there and back is the same", () => {
    const names = Object.keys(units) as UnitName[];
    const applied = (amount: number, factor: string) =>
      factor === ""
        ? amount
        : factor.startsWith("*")
          ? amount * Number(factor.slice(1))
          : amount / Number(factor.slice(1));
    for (const from of names) {
      for (const to of names.filter((other) => units[other].measures === units[from].measures)) {
        expect(applied(applied(7, conversion(from, to)), conversion(to, from))).toBeCloseTo(7, 9);
      }
    }
  });
});
