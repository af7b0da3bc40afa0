import { describe, expect, test } from "vitest";
import { type UnitName, units } from "../../src/headings/units";
import { Book } from "../../src/review/book";
import { argumentUnit, unitFactor } from "../../src/review/rules/units";
import { fitList } from "../../src/sheets/jobRows/fit";
import { cellsFound } from "../findWith";
import { CORNER, listSheet } from "../listSheets";
import { factsOf } from "../reviewWorkbook";

/*
 * Headings as American job sheets have them, all made up, with what an estimator would take them for (common practice):
 * the unit that the heading names, "" for none; what Job rows takes the column for, "" for nothing that its formulas
 * read or give, several where it has to ask; and what the check takes a number below it for. The check compares names,
 * hours, rolls, and boxes with nothing, and Job rows has no use for rates, markups, and sizes of rolls.
 */
const headings: readonly (readonly [heading: string, unit: UnitName | "", jobRows: string, check: string])[] = [
  ['Dp"', "in", "depth", "depth"],
  ["Len. (ft)", "ft", "length", "length"],
  ["Area (sq feet)", "sq ft", "area", "area"],
  ["Stone T", "tons", "tons", "tons"],
  ["Qty cy", "cu yd", "yards", "yards"],
  ["L.F. edging", "ft", "border", "border"],
  ["$/ton", "", "stonePrice", ""],
  ["Depth (in.)", "in", "depth", "depth"],
  ["W", "", "width", ""],
  ["Tons req'd", "tons", "tons", "tons"],
  ["Area SF", "sq ft", "area", "area"],
  ["Length ft", "ft", "length", "length"],
  ["LENGTH", "", "length", "length"],
  ["L'", "ft", "length", "length"],
  ["L.", "", "length", ""],
  ["Len", "", "length", "length"],
  ["Lgth (feet)", "ft", "length", "length"],
  ["Bed length, ft.", "ft", "length", "length"],
  ["W. (ft)", "ft", "width", "width"],
  ["Wid. ft", "ft", "width", "width"],
  ["Width, inches", "in", "width", "width"],
  ["WIDTH IN FT", "ft", "width", "width"],
  ['D"', "in", "depth", "depth"],
  ["D (in)", "in", "depth", "depth"],
  ["Stone dp. in", "in", "depth", "depth"],
  ["Depth in inches", "in", "depth", "depth"],
  ['Rock depth (")', "in", "depth", "depth"],
  ["Finished depth, in", "in", "depth", "depth"],
  ["Scrape dp (in)", "in", "scrape", "scrape"],
  ["Excavation depth - in", "in", "scrape", "scrape"],
  ["Dig (cy)", "cu yd", "dig", ""],
  ["Dig C.Y.", "cu yd", "dig", ""],
  ["Area", "", "area", "area"],
  ["Area sq. ft.", "sq ft", "area", "area"],
  ["Sq Ft", "sq ft", "area", "area"],
  ["SQFT", "sq ft", "area", "area"],
  ["S.F.", "sq ft", "area", "area"],
  ["Area (sq-ft)", "sq ft", "area", "area"],
  ["Area ft²", "sq ft", "area", "area"],
  ["Area (sy)", "sq yd", "area", "area"],
  ["Bed area (sf)", "sq ft", "area", "area"],
  ["Sq. yds", "sq yd", "area", "area"],
  ["Rock CY", "cu yd", "yards", "yards"],
  ["Rock (cu. yds.)", "cu yd", "yards", "yards"],
  ["Cubic yds stone", "cu yd", "yards", "yards"],
  ["CY", "cu yd", "yards", "yards"],
  ["Gravel, cu ft", "cu ft", "yards", "yards"],
  ["Tons", "tons", "tons", "tons"],
  ["Stone (tons)", "tons", "tons", "tons"],
  ["Rock - tons", "tons", "tons", "tons"],
  ["Tons of rock", "tons", "tons", "tons"],
  ["Gravel lbs", "lb", "tons", "tons"],
  ["Stone weight (lb)", "lb", "tons", "tons"],
  ["Order (tons)", "tons", "order", "tons"],
  ["Tons to order", "tons", "order", "tons"],
  ["Order T", "tons", "order", "tons"],
  ["Density (tons/cy)", "tons/cu yd", "density", "density"],
  ["Tons / cu yd", "tons/cu yd", "density", "density"],
  ["lbs/cf", "lb/cu ft", "", "density"],
  ["Waste %", "%", "waste", "waste"],
  ["Waste (%)", "%", "waste", "waste"],
  ["% waste", "%", "waste", "waste"],
  ["Overage pct", "%", "waste", "waste"],
  ["Edging LF", "ft", "border", "border"],
  ["Edging (lin. ft.)", "ft", "border", "border"],
  ["Edge lin ft", "ft", "border", "border"],
  ["Border ft.", "ft", "border", "border"],
  ["Perimeter (ft)", "ft", "border", "border"],
  ["Lin ft border", "ft", "border", "border"],
  ["Edging pcs", "pieces", "pieces", ""],
  ["Border (pieces)", "pieces", "pieces", ""],
  ["Stakes", "stakes", "stakes", "stakes"],
  ["Stakes (ea)", "each", "stakes", "stakes"],
  ["# stakes", "each", "stakes", "stakes"],
  ["Pins", "pins", "pins", "pins"],
  ["Staples (ea.)", "each", "pins", "pins"],
  ["Pins req'd", "", "pins", "pins"],
  ["Pin boxes", "boxes", "boxes", ""],
  ["Fabric rolls", "rolls", "rolls", ""],
  ["Rolls of fabric", "rolls", "rolls", ""],
  ["Fabric (SF)", "sq ft", "area", "area"],
  ["Crew hrs", "hr", "hours", ""],
  ["Labor hours", "hr", "hours", ""],
  ["Man-hours", "hr", "hours", ""],
  ["Hrs.", "hr", "hours", ""],
  ["Loads", "loads", "spoilLoads/deliveries", "loads"],
  ["Spoil loads", "loads", "spoilLoads", "loads"],
  ["Haul off (loads)", "loads", "spoilLoads", "loads"],
  ["Price/ton", "", "stonePrice", "unit price"],
  ["Price per LF", "", "", "unit price"],
  ["Cost/SF", "", "", "unit cost"],
  ["$/LF", "", "", ""],
  ["Unit cost", "", "", "unit cost"],
  ["Price ($)", "money", "price", "price"],
  ["Labor $", "money", "laborCost", ""],
  ["Total", "", "tons/order/yards", ""],
  ["Corner radius (ft)", "ft", "radius", ""],
  ["Rad. ft", "ft", "radius", ""],
  ["Rnd corners", "things", "corners", ""],
  ["# corners", "each", "corners", ""],
  ["Stone", "", "stone", ""],
  ["Rock type", "", "stone", ""],
  ["Notes", "", "", ""],
  ["Roll width (ft)", "ft", "", "roll width"],
  ["Border ht. (in)", "in", "", "border height"],
  ["Trench depth in", "in", "", "trench depth"],
  ["Pin spacing, in.", "in", "", "spacing"],
  ["Overlap (in)", "in", "", "overlap"],
  ["Payload (tons)", "tons", "", "payload"],
  ["Cost ea.", "", "", "unit cost"],
  ["Hours per CY", "", "", ""],
  ["Fabric 6 ft", "", "", ""],
  ["Set in place", "", "", ""],
  ["Length (m)", "m", "length", "length"],
  ["Depth, cm", "cm", "depth", "depth"],
  ["Depth (mm)", "mm", "depth", "depth"],
  ["Area m2", "sq m", "area", "area"],
  ["Thickness", "", "depth", "depth"],
  ["Thk (in)", "in", "depth", "depth"],
  ["Width'", "ft", "width", "width"],
  ["Run (ft)", "ft", "", ""],
  ["No. of stakes", "each", "stakes", "stakes"],
  ["Stone cost per ton", "", "stonePrice", "unit cost"],
  ["LF", "ft", "", ""],
  ["Lin. ft. of edging", "ft", "border", "border"],
  ["Cu. Yd. of Stone", "cu yd", "yards", "yards"],
  ["Sq. footage", "", "area", "area"],
  ["Bed (SF)", "sq ft", "area", "area"],
  ["Inches deep", "in", "depth", "depth"],
  ["Feet long", "ft", "length", "length"],
  ["Est. tons", "tons", "", ""],
  ["Gravel (ton)", "tons", "tons", "tons"],
  ["Short tons", "tons", "tons", "tons"],
  ["Metric tons", "tonnes", "tons", "tons"],
  ["Haul-off loads", "loads", "spoilLoads", "loads"],
  ["Deliveries", "", "deliveries", ""],
  ["Tax %", "%", "", "tax"],
  ["Markup (%)", "%", "", "markup"],
  ["Margin", "", "", "margin"],
  ["Overhead pct", "%", "", "overhead"],
  ["Stone size (in)", "in", "", "stone size"],
  ["Unit price", "", "", "unit price"],
  ["Sell price", "", "price", "price"],
  ["Bid $", "money", "price", "price"],
  ["Amount", "", "tons/order/yards", ""],
  ["Qty", "", "tons/order/yards", "quantity"],
  ["How many", "", "", "quantity"],
  ['Dig depth (")', "in", "scrape", "scrape"],
  ["Scrape", "", "scrape", "scrape"],
  ["Edging length", "", "border", "border"],
  ["Edging color", "", "", ""],
  ["Stone sold by", "", "soldBy", ""],
  ["Sold by the", "", "soldBy", ""],
  ["Rock unit", "", "soldBy", ""],
  ["Order, as sold", "", "orderSold", ""],
  ["Stone price, as sold", "", "soldPrice", "price"],
  ["Edging kind", "", "edgingKind", ""],
  ["Type of border", "", "edgingKind", ""],
  ["Edge style", "", "edgingKind", ""],
  ["Edging material", "", "edgingKind", ""],
  // Where the office has no list of them.
  ["Edging product", "", "", ""],
  ["Fabric product", "", "", ""],
  ["Piece length, ft", "ft", "", ""],
  ["Edging material cost", "", "materialCost", "cost"],
  ["Sand (cu yd)", "cu yd", "sand", ""],
  ["Paver sand, CY", "cu yd", "sand", ""],
  ["Sand price", "", "price", "price"],
  ["Weight (kg)", "kg", "tons", "tons"],
  ["Width (cm)", "cm", "width", "width"],
  ["Crew h", "hr", "hours", ""],
  ["Bags", "things", "", ""],
  ["Trips", "things", "spoilLoads/deliveries", ""],
];

/** A sheet with the heading over its last column, beside columns that nothing in the table above is taken for. */
const sheetUnder = (heading: string) => [
  ["Job", "Bed name", "Material cost", "Hauling cost", heading],
  ["Elm Row", "front", 2, 140, ""],
];

/** What Job rows takes the column for, and the unit that it takes bare numbers to be in. */
function jobRows(heading: string) {
  const { role, asks, unit } = fitList(listSheet(sheetUnder(heading)), CORNER)!.columns[4]!;
  return { role: role ?? asks.join("/"), unit };
}

/** What the check takes a number below the heading for. */
function check(heading: string) {
  const book = Book.unread(factsOf({ sheets: [{ name: "Jobs", rows: sheetUnder(heading) }] }));
  const { role, unit } = book.places[0]!.describe(1, 4);
  return { role: role ?? "", unit };
}

/** Prices, weights of a cubic yard and bare counts need no conversion, so Job rows keeps no unit of them. */
const isConverted = (unit: UnitName) => !["money", "density"].includes(units[unit].measures) && unit !== "things";

describe("Job rows and the check read a heading alike", () => {
  test.each(headings)("%s: unit “%s”, in Job rows “%s”, in the check “%s”", (heading, unit, inJobRows, inCheck) => {
    const [taken, checked] = [jobRows(heading), check(heading)];
    expect(taken.role).toBe(inJobRows);
    expect(checked).toEqual({ role: inCheck, unit: unit === "" ? undefined : unit });
    // A column that Job rows does not use, or asks about, has no unit there.
    if (unit === "" || taken.unit === undefined) return;
    expect(taken.unit).toBe(unit);
    expect(units[taken.unit].measures).toBe(units[checked.unit!].measures);
  });

  test("Job rows keeps the unit of every column that it uses", () => {
    const used = headings.filter(
      ([, unit, role]) => unit !== "" && isConverted(unit) && role !== "" && !role.includes("/"),
    );
    expect(used.length).toBeGreaterThan(60);
    const lost = used.filter(([heading, unit]) => jobRows(heading).unit !== unit);
    expect(lost.map(([heading]) => heading)).toEqual([]);
  });

  test("the table has at least 80 headings, each once", () => {
    expect(new Set(headings.map(([heading]) => heading)).size).toBe(headings.length);
    expect(headings.length).toBeGreaterThanOrEqual(80);
  });

  // 20 ft × 4 ft = 80 sq ft (by hand).
  test.each(["Area (sq feet)", "Area sq-ft", "Area (S.F.)", "Area, square ft"])(
    "the check finds nothing wrong with an area of feet by feet under “%s”",
    (heading) => {
      const rows = [
        ["Bed", "Length (ft)", "Width (ft)", heading, "Depth (in)", "Stone (tons)"],
        ["Front", 20, 4, "=B2*C2", 2, '=BED.STONE_TONS(D2,E2,"river rock")'],
      ];
      expect(cellsFound([argumentUnit, unitFactor], rows)).toEqual([]);
    },
  );
});
