import { reviewAtOnce } from "../../../src/review/review";
import { findJobRows } from "../../../src/sheets/jobRows/findJobRows";
import type { Region } from "../../../src/sheets/plain/region";
import { toPlain } from "../../../src/sheets/plain/toPlain";
import { callFunction } from "../../callFunction";
import { fillOf, fitOf, listSheet } from "../../listSheets";
import { factsOf, knowledge } from "../../reviewWorkbook";
import { type Growing, jobRows } from "./growing";

/** A list of measurements alone, as it is before results are filled in. */
const measured = (rows: number) =>
  listSheet([
    ["Job", "Bed", "Length, ft", "Width, ft", "Depth, in", "Stone", "Waste", "Tons"],
    ...Array.from({ length: rows }, (_, place) => {
      const tape = place % 2 === 0 ? `${12 + (place % 20)}' 6"` : 20 + (place % 30);
      return [`Job ${place % 40}`, `Bed ${place}`, tape, 4 + (place % 3), 2.5, "river rock", 0.08, ""];
    }),
  ]);

/** Loads by the day, with a number of its own in each formula and a sum of as many days as it happens to be. */
const unlikeRows = (rows: number) => [
  ["Day", "Loads", "Tons", "So far"],
  ...Array.from({ length: rows }, (_, place) => {
    const row = place + 2;
    return [
      `Day ${place}`,
      3 + (place % 5),
      `=B${row}*8.5+${place}`,
      `=SUM(B${Math.max(2, row - (place % 50))}:B${row})`,
    ];
  }),
];

/** The same list as it is read for a copy without the add-in. */
function region(rows: number): Region {
  const formulas = jobRows(rows);
  return {
    sheetName: "Jobs",
    row: 0,
    column: 0,
    formulas,
    values: formulas.map((row) => row.map((cell) => (String(cell).startsWith("=") ? 1 : cell))),
    formats: formulas.map((row) => row.map(() => "General")),
  };
}

/** What is done with sheets that were read, by their rows. */
export const ofSheets: readonly Growing[] = [
  {
    what: "Check a job list",
    of: "rows",
    least: 100,
    ready: (rows) => {
      const facts = factsOf({ sheets: [{ name: "Jobs", rows: jobRows(rows) }] });
      return () => reviewAtOnce(facts, knowledge, { call: callFunction });
    },
  },
  {
    what: "Check a list in which no two formulas are alike",
    of: "rows",
    least: 100,
    ready: (rows) => {
      const facts = factsOf({ sheets: [{ name: "Loads", rows: unlikeRows(rows) }] });
      return () => reviewAtOnce(facts, knowledge, { call: callFunction });
    },
  },
  {
    what: "Find the headings and read the columns",
    of: "rows",
    least: 100,
    ready: (rows) => {
      const sheet = measured(rows);
      return () => fitOf(sheet);
    },
  },
  {
    what: "Suggest results for a list",
    of: "rows",
    least: 100,
    ready: (rows) => {
      const fit = fitOf(measured(rows));
      return () => fillOf(fit);
    },
  },
  {
    what: "Read beds of a list for a job's documents",
    of: "rows",
    least: 100,
    ready: (rows) => {
      const sheet = measured(rows);
      return () => findJobRows(sheet);
    },
  },
  {
    what: "Make a copy for others",
    of: "rows",
    least: 100,
    ready: (rows) => {
      const cells = region(rows);
      return () => toPlain(cells);
    },
  },
];
