import { describe, expect, test } from "vitest";
import { unitIn } from "./heading";
import { unitNamed } from "./units";
import { isTotalLabel } from "./words";

describe("the unit in a heading", () => {
  test.each([
    ["Depth (in)", "in"],
    ["Depth, in.", "in"],
    ["Depth in", "in"],
    ["Stone depth in inches", "in"],
    ["Length (ft.)", "ft"],
    ["LENGTH [FT]", "ft"],
    ["Edging LF", "ft"],
    ["Area sq. ft.", "sq ft"],
    ["Bed area (SF)", "sq ft"],
    ["Stone (cu yd)", "cu yd"],
    ["Tons", "tons"],
    ["Stone, tons", "tons"],
    ["Weighs (tons / cu yd)", "tons/cu yd"],
    ["Density, tons per cubic yard", "tons/cu yd"],
    ["Waste %", "%"],
    ["Labor hours", "hr"],
    ["Fabric rolls", "rolls"],
    ["in", "in"],
    ["mm", "mm"],
  ])("%s is %s", (heading, name) => expect(unitIn(heading)).toBe(name));

  test.each([
    "Dig, in the ground",
    "Cost per ton",
    "$/ton",
    "Price a load",
    "Truck yards",
    "Bed",
    "Rate ($/h)",
    "Set in place",
    "Weed fabric, 6 ft",
    "Steel edging 8 ft",
    "",
  ])("“%s” names none", (heading) => expect(unitIn(heading)).toBeUndefined());

  test("a cell of a unit column names its unit alone", () => {
    expect(unitNamed("cu yd")).toBe("cu yd");
    expect(unitNamed(" In. ")).toBe("in");
    expect(unitNamed("per load")).toBeUndefined();
  });
});

describe("a row of sums", () => {
  test.each([
    "Total",
    "TOTALS:",
    "Sub-total",
    "Subtotal stone",
    "Job total",
    "Grand total",
    "Overtotal",
    "Stone total",
    "Totaled",
    "Sum",
    "Sums",
    "Average",
    "Averages",
    "Mean",
    "All beds",
    "Together",
    "All together",
    "Altogether",
  ])("is known by “%s”", (label) => expect(isTotalLabel(label)).toBe(true));

  test.each(["Grand Ave 12", "Mean Street bed", "Front walk", "Totally shaded side", "Summit Road", ""])(
    "is not known by “%s”",
    (label) => expect(isTotalLabel(label)).toBe(false),
  );
});
