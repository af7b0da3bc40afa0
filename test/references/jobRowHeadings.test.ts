import { afterAll, beforeAll, describe, expect } from "vitest";
import { fitList } from "../../src/sheets/jobRows/fit";
import type { ResultRole } from "../../src/sheets/jobRows/roles";
import { columnLetters } from "../../src/spreadsheet/areas";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import type { HeadlessHost } from "../headlessHost";
import { fillOf, officeOf, type Rows } from "../listSheets";
import { outside } from "../outside";
import { createProductHost } from "../productHost";

/*
 * Heading rows as offices write them, all invented, each with a blank row, a row of totals and a note among its beds.
 * The bed in nearly all of them is 20 ft by 4 ft with stone 2.5 in deep. By hand: 80 sq ft; 80 × 2.5 ÷ 324 =
 * 0.6172840 cu yd; of river rock, 1.35 short tons a cu yd, 0.8333333 tons (80 × 2.5 × 1.35 ÷ 324 = 5/6); with 8 %
 * waste 0.9 tons. Border along one long side and both ends: 20 + 2 × 4 = 28 ft. Metric sizes by 1 ft = 0.3048 m and
 * 1 in = 2.54 cm exactly (NIST Handbook 44, Appendix C): 6.096 m by 1.2192 m, 6.35 cm deep.
 */
const BED = "by hand, above: 20 × 4 ft, 2.5 in deep";
const METRIC = "NIST Handbook 44, Appendix C";

interface List {
  readonly name: string;
  readonly source: string;
  readonly rows: Rows;
  /** Roles by column, with the unit where it is not the usual one. */
  readonly columns: Readonly<Record<string, string>>;
  /** Rows of the sheet that are beds, and why others are skipped. */
  readonly beds: readonly number[];
  readonly skipped: Readonly<Record<number, string>>;
  readonly wants?: readonly ResultRole[];
  /** What the cells show after the writing. */
  readonly shows: Readonly<Record<string, number>>;
  readonly formulas?: Readonly<Record<string, string>>;
}

const lists: readonly List[] = [
  {
    name: "units in brackets, titles above, new columns",
    rows: [
      ["Spring beds"],
      ["Prices are separate"],
      [],
      ["Job", "Bed", "Length (ft)", "Width (ft)", "Depth (in)", "Stone", "Waste"],
      ["Elm Row 3", "Front", 20, 4, 2.5, "river rock", 0.08],
      [],
      ["Elm Row 3", "Back", "20'", "4 ft", 2.5, "river rock", 0.08],
      ["gate code is with the office"],
      ["Total", "", "=SUM(C5:C7)"],
    ],
    columns: { A: "job", B: "bed", C: "length", D: "width", E: "depth", F: "stone", G: "waste" },
    beds: [5, 7],
    skipped: { 6: "blank", 8: "a note", 9: "totals" },
    wants: ["area", "border", "tons", "order"],
    source: BED,
    shows: { H5: 80, I5: 28, J5: 0.9, K5: 1, H7: 80, I7: 28, J7: 0.9, K7: 1 },
    formulas: {
      H4: "Area, sq ft",
      H5: "=BED.AREA_RECTANGLE(C5,D5)",
      I5: "=BED.EDGE_LENGTH(MAX(BED.FEET(C5),BED.FEET(D5))+2*MIN(BED.FEET(C5),BED.FEET(D5)))",
      J5: "=BED.STONE_TONS(H5,E5,F5,G5)",
      K5: "=BED.ORDER_UP(J5,0.5,1)",
    },
  },
  {
    name: "marks for units, other order, a column for tons",
    rows: [
      ["Rock", 'D"', "W'", "L'", "Where", "Rock (t)"],
      ["river rock", 2.5, 4, 20, "walk"],
      ["River Rock", `2 1/2"`, "48 in", "20 ft", "drive"],
      [],
      ["remember the gate"],
      ["Totals", "", "", "", "", "=SUM(F2:F3)"],
    ],
    columns: { A: "stone", B: "depth", C: "width", D: "length", E: "bed", F: "tons" },
    beds: [2, 3],
    skipped: { 4: "blank", 5: "a note", 6: "totals" },
    // 0.8333333 × 1.08 = 0.9: without a column of waste the usual 8 % is taken.
    source: BED,
    shows: { F2: 0.9, F3: 0.9, F6: 1.8 },
    formulas: { F2: "=BED.STONE_TONS(BED.AREA_RECTANGLE(D2,C2),B2,A2,0.08)" },
  },
  {
    name: "metric, with tape text among the numbers",
    rows: [
      ["Site", "L m", "W m", "Depth – cm", "Gravel type", "Waste (%)", "Rock (tons)", "Area m²"],
      ["Fir Lane", 6.096, 1.2192, 6.35, "river rock", 8],
      ["Fir Lane", "20'", "4'", `2.5"`, "river rock", 8],
      ["Fir Lane", "6.096", 1.2192, "63.5 mm", "river rock", 8],
      [],
      ["stone comes wet"],
      ["Sum", "", "", "", "", "", "=SUM(G2:G4)"],
    ],
    columns: {
      A: "job",
      B: "length m",
      C: "width m",
      D: "depth cm",
      E: "stone",
      F: "waste %",
      G: "tons",
      H: "area sq m",
    },
    beds: [2, 3, 4],
    skipped: { 5: "blank", 6: "a note", 7: "totals" },
    // 80 sq ft × 0.09290304 = 7.4322432 m².
    source: `${BED}; ${METRIC}`,
    shows: { G2: 0.9, G3: 0.9, G4: 0.9, H2: 7.4322432, H3: 7.4322432, H4: 7.4322432, G7: 2.7 },
  },
  {
    name: "inches throughout, percents as whole numbers",
    rows: [
      ["Client", "Bed name", "Len. in.", "Wid. in.", "Thick. in.", "Material", "Overage %", "Stone to order"],
      ["Ash", "one", 240, 48, 2.5, "river rock", 8],
      ["Ash", "two", 240, 48, 2.5, "river rock", 0.08],
      [],
      ["see photo"],
      ["Subtotal", "", "", "", "", "", "", "=SUM(H2:H3)"],
    ],
    columns: { A: "job", B: "bed", C: "length in", D: "width in", E: "depth", F: "stone", G: "waste %", H: "order" },
    beds: [2, 3],
    skipped: { 4: "blank", 5: "a note", 6: "totals" },
    source: `${BED}; 0.9 tons go up to 1`,
    shows: { H2: 1, H3: 1, H6: 2 },
    formulas: {
      H2: "=BED.ORDER_UP(BED.STONE_TONS(BED.AREA_RECTANGLE(C2/12,D2/12),E2,F2,IF(N(G2)<1,G2,G2/100)),0.5,1)",
    },
  },
  {
    name: "the area given, with no sides",
    rows: [
      ["Job name", "SF", "Depth", "Kind of rock", "Waste %", "Tons of rock"],
      ["Oak", 80, 2.5, "river rock", 8],
      [],
      ["Oak", 160, 2.5, "river rock", 8],
      ["no access from the street"],
      ["Total:", "=SUM(B2:B4)"],
    ],
    columns: { A: "job", B: "area", C: "depth", D: "stone", E: "waste %", F: "tons" },
    beds: [2, 4],
    skipped: { 3: "blank", 5: "a note", 6: "totals" },
    source: BED,
    shows: { F2: 0.9, F4: 1.8 },
    formulas: { F2: "=BED.STONE_TONS(B2,C2,D2,IF(N(E2)<1,E2,E2/100))" },
  },
  {
    name: "feet in one column and inches in the next",
    rows: [
      ["Bed", "Length ft", "Length in", "Width ft", "Width in", "Stone depth in", "Area sq ft"],
      ["a", 20, 0, 4, 0, 2.5],
      // 10 ft 6 in by 3 ft 4 in: 10.5 × 3 1/3 = 35 sq ft.
      ["b", 10, 6, 3, 4, 2.5],
      [],
      ["c is not measured yet"],
      ["Grand total", "", "", "", "", "", "=SUM(G2:G3)"],
    ],
    columns: {
      A: "bed",
      B: "length",
      C: "lengthInches in",
      D: "width",
      E: "widthInches in",
      F: "depth",
      G: "area",
    },
    beds: [2, 3],
    skipped: { 4: "blank", 5: "a note", 6: "totals" },
    source: `${BED}; 10.5 × 3 1/3 = 35 sq ft`,
    shows: { G2: 80, G3: 35, G6: 115 },
    formulas: { G3: "=BED.AREA_RECTANGLE(B3+C3/12,D3+E3/12)" },
  },
  {
    name: "a row of units below the headings",
    rows: [
      ["Section", "Length", "Width", "Depth", "Aggregate", "Area"],
      ["", "yd long", "ft", "mm", "", "sq yd"],
      // 20 ft are 6 2/3 yd; 2.5 in are 63.5 mm; 80 sq ft are 80/9 sq yd.
      ["x", "20 ft", 4, 63.5, "river rock"],
      ["y", 5, 4, 63.5, "river rock"],
      [],
      ["check with the owner"],
      ["Together", "", "", "", "", "=SUM(F3:F4)"],
    ],
    columns: { A: "bed", B: "length yd", C: "width", D: "depth mm", E: "stone", F: "area sq yd" },
    beds: [3, 4],
    skipped: { 5: "blank", 6: "a note", 7: "totals" },
    wants: ["area", "yards"],
    // Yards: 0.6172840 × 1.08 = 0.6666667; of 15 ft by 4 ft, 60 sq ft, 0.5.
    source: `${BED}; 6 2/3 yd by 4 ft are 80/9 sq yd`,
    shows: { F3: 80 / 9, F4: 60 / 9, G3: 2 / 3, G4: 0.5 },
  },
  {
    name: "rounded corners, border and pieces",
    rows: [
      [
        "Customer",
        "Zone",
        "Lgth",
        "Breadth",
        "Inches deep",
        "Corner radius (in)",
        "# of corners",
        "Perimeter (lf)",
        "Edging (pcs)",
      ],
      ["Yew", "1", 20, 4, 2.5, 24, 2],
      ["Yew", "2", 20, 4, 2.5, 0, 0],
      [],
      ["dog in the yard"],
      ["total", "", "", "", "", "", "", "=SUM(H2:H3)"],
    ],
    columns: {
      A: "job",
      B: "bed",
      C: "length",
      D: "width",
      E: "depth",
      F: "radius in",
      G: "corners",
      H: "border",
      I: "pieces",
    },
    beds: [2, 3],
    skipped: { 4: "blank", 5: "a note", 6: "totals" },
    // 28 − 2 × (2 − π/2) × 2 ft = 26.2831853; pieces of 8 ft with 2 in laps: 4 × 8 − 3/6 = 31.5 ft are enough, 3 are 23.67.
    source: `${BED}; two corners of 2 ft take 2 × (2 − π/2) × 2 ft off 28`,
    shows: { H2: 26.283185307, H3: 28, I2: 4, I3: 4 },
  },
  {
    name: "rates beside the list, and a column of names that is called area",
    rows: [
      ["Area", "Length, ft", "Width, ft", "Deep, in", "Kind of stone", "", "", "Rate", "Each"],
      ["by the door", 20, 4, 2.5, "river rock", "", "", "Roll", 64],
      [],
      ["by the gate", 20, 4, 2.5, "river rock", "", "", "Pins", 18],
      ["both are dry"],
      ["All beds", "=SUM(B2:B4)"],
    ],
    columns: { A: "bed", B: "length", C: "width", D: "depth", E: "stone" },
    beds: [2, 4],
    skipped: { 3: "blank", 5: "a note", 6: "totals" },
    wants: ["tons"],
    source: BED,
    shows: { F2: 0.9, F4: 0.9 },
  },
  {
    name: "centimeters and millimeters, results in pounds and square meters",
    rows: [
      ["Bed", "Length, cm", "Width, cm", "Depth, mm", "Stone type", "Area, m2", "Stone (lb)", "Stone (cu ft)"],
      ["p", 609.6, 121.92, 63.5, "river rock"],
      [],
      ["q", 304.8, 121.92, 63.5, "river rock"],
      ["soft ground"],
      ["Total", "", "", "", "", "=SUM(F2:F4)"],
    ],
    columns: {
      A: "bed",
      B: "length cm",
      C: "width cm",
      D: "depth mm",
      E: "stone",
      F: "area sq m",
      G: "tons lb",
      H: "yards cu ft",
    },
    beds: [2, 4],
    skipped: { 3: "blank", 5: "a note", 6: "totals" },
    // 0.9 tons are 1,800 lb; 2/3 cu yd are 18 cu ft; half the bed is half of each.
    source: `${BED}; ${METRIC}; 0.9 tons are 1,800 lb, 2/3 cu yd are 18 cu ft`,
    shows: { F2: 7.4322432, G2: 1800, H2: 18, F4: 3.7161216, G4: 900, H4: 9 },
    formulas: { G2: "=BED.STONE_TONS(F2/0.09290304,D2/25.4,E2,0.08)*2000" },
  },
  {
    name: "no column of stone or depth",
    rows: [
      ["Address", "Location", "Width ft", "Length ft", "Fabric rolls", "Staples", "Notes"],
      ["Birch 9", "side", 4, 20, "", "", "shade"],
      ["", "", "", "", "", "", ""],
      ["Birch 9", "rear", 4, 20, "", "", ""],
      ["Birch 9", "corner", 4, "", "", "", "not taped"],
      ["ask about the fence"],
      ["Total", "", "", "", "=SUM(E2:E5)"],
    ],
    columns: { A: "job", B: "bed", C: "width", D: "length", E: "rolls", F: "pins" },
    beds: [2, 4],
    skipped: { 3: "blank", 5: "no length", 6: "a note", 7: "totals" },
    wants: ["rolls", "pins", "tons"],
    // 80 × 2 × 1.35 ÷ 324 × 1.08 = 0.72 tons at 2 in: 4 in of border, less 1.5 in trench, less 0.5 in gap. Pins: 20
    // rows of 1 ft, one bay: 2 × (10 + 1) + 10 = 32.
    source: `${BED} and, at 2 in, 0.72 tons; 2 × (10 + 1) + 10 pins`,
    shows: { E2: 1, F2: 32, H2: 0.72, H4: 0.72 },
    formulas: { H2: '=BED.STONE_TONS(BED.AREA_RECTANGLE(D2,C2),2,"river rock",0.08)' },
  },
];

describe.each(lists)("a list with $name", ({ source, rows, columns, beds, skipped, wants, shows, formulas = {} }) => {
  let host: HeadlessHost;
  beforeAll(async () => {
    host = await createProductHost(officeOf(rows));
  });
  afterAll(() => host.dispose());

  outside(source, "is fitted, skips what is no bed, and comes out at these numbers", async () => {
    const { sheet, selection } = await readListSheet();
    const fit = fitList(sheet, selection)!;
    const usual = new Set(["ft", "sq ft", "cu yd", "tons", "pieces", "rolls", "pins", "each"]);
    const found = fit.columns.flatMap(({ column, role, unit }) => {
      const isUsual = !unit || usual.has(unit) || (unit === "in" && role === "depth");
      return role ? [[columnLetters(column), isUsual ? role : `${role} ${unit}`]] : [];
    });
    expect(Object.fromEntries(found)).toEqual(columns);
    expect(fit.columns.filter(({ sure }) => sure === "ask")).toEqual([]);

    const filling = fillOf(fit, wants ? { results: wants } : {});
    expect(filling.troubles).toEqual([]);
    expect(filling.beds.map(({ row }) => row + 1)).toEqual(beds);
    expect(filling.skipped.map(({ row }) => row + 1)).toEqual(Object.keys(skipped).map(Number));
    for (const { row, why } of filling.skipped) expect(why).toContain(skipped[row + 1]);

    const before = host.syncCount;
    await writeRows(fit, filling.changes);
    expect(host.syncCount - before).toBe(2);
    for (const [address, value] of Object.entries(shows)) {
      expect(host.value(address), `${address} ${host.formula(address)}`).toBeCloseTo(value, 6);
    }
    for (const [address, formula] of Object.entries(formulas)) {
      expect(host.formula(address) ?? host.value(address), address).toBe(formula);
    }
  });
});
