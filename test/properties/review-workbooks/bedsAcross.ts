import { toCol } from "@borgar/fx";
import type { CellValue } from "../../../src/review/facts";
import type { WorkbookInput } from "../../reviewWorkbook";

/** Bed, length, width, depth, scrape, in the columns of the sheet. */
const BEDS: readonly (readonly [string, number, number, number, number])[] = [
  ["Entry left", 14, 4, 2, 2.5],
  ["Entry right", 11.5, 4, 2, 2.5],
  ["Drive strip", 58, 2.5, 3, 3],
  ["Well house", 9, 9, 2.5, 3],
  ["South wall", 37, 3, 2, 2.5],
  ["Arbor", 17.5, 6, 2.5, 2.5],
  ["Bin store", 12, 3.5, 3, 3],
  ["Orchard path", 64, 3, 2.5, 3],
];

/** One bed a column, what is measured and calculated down the side, a column of totals at the right. */
export function bedsAcross(): WorkbookInput {
  const columns = BEDS.map((_, index) => toCol(index + 2));
  const [first, last] = [columns[0]!, columns.at(-1)!];
  const rows: CellValue[][] = [["Item", "Unit", ...BEDS.map(([name]) => name), "All beds"]];
  const input = (label: string, unit: string, values: readonly CellValue[]) => rows.push([label, unit, ...values, ""]);
  const worked = (label: string, unit: string, formula: (column: string) => string) => {
    const row = rows.length + 1;
    rows.push([label, unit, ...columns.map((column) => `=${formula(column)}`), `=SUM(${first}${row}:${last}${row})`]);
  };
  input(
    "Length",
    "ft",
    BEDS.map((bed) => bed[1]),
  ); // 2
  input(
    "Width",
    "ft",
    BEDS.map((bed) => bed[2]),
  ); // 3
  input(
    "Stone depth",
    "in",
    BEDS.map((bed) => bed[3]),
  ); // 4
  input(
    "Scrape depth",
    "in",
    BEDS.map((bed) => bed[4]),
  ); // 5
  worked("Area", "sq ft", (c) => `${c}2*${c}3`); // 6
  worked("Border run", "ft", (c) => `${c}2+2*${c}3`); // 7
  worked("Stone", "cu yd", (c) => `${c}6*${c}4/324*(1+$B$30)`); // 8
  worked("Stone", "tons", (c) => `${c}8*$B$31`); // 9
  worked("Fabric rolls", "rolls", (c) => `ROUNDUP(${c}6/$B$32,0)`); // 10
  worked("Pins", "pins", (c) => `ROUNDUP(${c}6*$B$33,0)`); // 11
  worked("Edging pieces", "pieces", (c) => `ROUNDUP(${c}7/8,0)`); // 12
  worked("Stakes", "stakes", (c) => `${c}12*3+2`); // 13
  worked("Soil dug, loose", "cu yd", (c) => `${c}6*${c}5/324*(1+$B$34)`); // 14
  worked("Haul-off loads", "loads", (c) => `ROUNDUP(${c}14/$B$35,0)`); // 15
  worked("Labor", "h", (c) => `${c}14*$B$36+${c}6/$B$37+$B$38`); // 16
  worked("Materials", "$", (c) => `${c}9*$B$39+${c}10*$B$40+${c}11/100*$B$41+${c}12*$B$42`); // 17
  worked("Labor cost", "$", (c) => `${c}16*$B$43`); // 18
  worked("Hauling", "$", (c) => `${c}15*$B$44`); // 19
  worked("Cost", "$", (c) => `SUM(${c}17:${c}19)`); // 20
  input(
    "Markup",
    "share",
    BEDS.map(() => 0.4),
  ); // 21
  worked("Price", "$", (c) => `${c}20*(1+${c}21)`); // 22
  rows.push([]);
  rows.push(["Delivery of stone", "$", 264]); // 24
  rows.push(["Price with delivery", "$", `=${toCol(columns.length + 2)}22+C24`]); // 25
  rows.push(["Locate ticket 0417 runs out on 5/30"]); // 26
  rows.push([], []);
  rows.push(["Rates", "Value", "Unit"]); // 29
  const rates: readonly (readonly [string, number, string])[] = [
    ["Waste", 0.05, "share"],
    ["Stone weighs", 1.35, "tons/cu yd"],
    ["Fabric a roll covers", 275, "sq ft"],
    ["Pins a square foot", 0.45, "pins"],
    ["Swell", 0.3, "share"],
    ["Truck holds", 4.5, "cu yd"],
    ["Digging", 1.25, "h per cu yd"],
    ["Laying and spreading", 62, "sq ft per h"],
    ["Clean-up a bed", 0.4, "h"],
    ["Stone", 57, "per ton"],
    ["Roll of fabric", 66, "per roll"],
    ["Box of pins", 19, "per 100"],
    ["Edging piece", 26, "per piece"],
    ["Crew", 49, "per h"],
    ["Load and dump", 78, "per load"],
  ];
  for (const rate of rates) rows.push([...rate]);
  return {
    sheets: [
      {
        name: "Beds",
        rows,
        formats: {
          [`${first}21:${last}21`]: "0%",
          [`${first}17:${toCol(columns.length + 2)}20`]: "#,##0",
          B30: "0%",
          B34: "0%",
        },
      },
    ],
  };
}
