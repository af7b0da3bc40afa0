import { expect, test } from "vitest";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { fitList } from "../../src/sheets/jobRows/fit";
import { type ResultRole, roleLabel } from "../../src/sheets/jobRows/roles";
import { usualAssumed } from "../../src/sheets/jobRows/setting";
import { offeredResults } from "../../src/sheets/jobRows/wanted";
import { ratesSheet } from "../../src/sheets/rates/ratesSheet";
import { insertPlan } from "../../src/workbook/change/insert";
import { readListSheet, writeRows } from "../../src/workbook/jobRows";
import { fillOf, officeOf } from "../listSheets";
import { createProductHost } from "../productHost";
import { resultsOf } from "../resultsOf";

/*
 * A bed that was taped once has one answer, whether it is a row of a list or an estimate of its own: the formulas that are
 * copied down are held to the amounts of the estimate.
 */

interface Taped {
  readonly length: number | string;
  readonly width: number | string;
  readonly radius?: number;
  readonly corners?: number;
}

const SQUARE_CORNERS: readonly Taped[] = [
  { length: 18.5, width: 5 },
  { length: 5, width: 18.5 },
  { length: `32' 6 1/2"`, width: 3 },
  { length: 3, width: `32' 6 1/2"` },
  { length: 12, width: 12 },
  { length: 12.02, width: 12 },
  { length: 12, width: 12.02 },
  { length: 11, width: 20 },
  { length: 40, width: 7 },
  { length: 7, width: 40 },
  // Strips along the short side take fewer rolls: 11 of 25 ft are seven rolls, and five of 60 ft are six of them.
  { length: 60, width: 25 },
  { length: 26, width: 55 },
  { length: 1.5, width: 0.5 },
];

const ROUNDED_CORNERS: readonly Taped[] = [
  { length: 18.5, width: 5, radius: 0, corners: 2 },
  ...[1, 2, 3, 4].flatMap((corners): Taped[] => [
    { length: 18.5, width: 5, radius: 2, corners },
    { length: 5, width: 18.5, radius: 2, corners },
    { length: 26, width: 55, radius: 3.5, corners },
    { length: 12, width: 12, radius: 1, corners },
  ]),
];

function estimateOf({ length, width, radius = 0, corners = 0 }: Taped, longBorders: number, shortBorders: number) {
  const typed = {
    ...{ length: String(length), width: String(width), cornerRadius: String(radius), roundedCorners: String(corners) },
    ...{ longBorders: String(longBorders), shortBorders: String(shortBorders) },
  };
  const { bed, problems } = readForm({ ...blankForm(), typed });
  if (!bed) throw new Error(problems.map(({ message }) => message).join(" "));
  return estimateBed(bed, countsInPlan(bed));
}

type Sides = readonly [long: number, short: number];
const ALL_SIDES = [0, 1, 2].flatMap((long) => [0, 1, 2].map((short): Sides => [long, short]));
const SOME_SIDES: readonly Sides[] = [
  [0, 0],
  [0, 2],
  [1, 2],
  [2, 1],
];
const PLAIN = ["Length (ft)", "Width (ft)"];
const ROUNDED = [...PLAIN, "Corner radius (ft)", "Rounded corners"];

test.each([
  ...SOME_SIDES.map((sides) => ["plain", ...sides, PLAIN, SQUARE_CORNERS] as const),
  ...ALL_SIDES.map((sides) => ["rounded", ...sides, ROUNDED, [...SQUARE_CORNERS, ...ROUNDED_CORNERS]] as const),
])(
  "a row of a list of %s beds has what its estimate has, with edging along %i long and %i short sides",
  async (_, long, short, headings, beds) => {
    const rows = beds.map(({ length, width, radius = 0, corners = 0 }) =>
      [length, width, radius, corners].slice(0, headings.length),
    );
    const host = await createProductHost(officeOf([headings, ...rows]));
    try {
      await insertPlan(ratesSheet, { kind: "new sheet", name: "Rates" });
      await Excel.run(async (context) => {
        context.workbook.worksheets.getItem("List").activate();
        await context.sync();
      });
      const { sheet, selection } = await readListSheet();
      const fit = fitList(sheet, selection);
      if (!fit) throw new Error("No heading row was found.");
      const filling = fillOf(fit, {
        results: offeredResults,
        assumed: { ...usualAssumed, longBorders: long, shortBorders: short },
      });
      expect(filling.troubles).toEqual([]);
      await writeRows(fit, filling.changes);
      const values = await Excel.run(async (context) => {
        const range = context.workbook.worksheets.getItem("List").getUsedRange();
        range.load("values");
        await context.sync();
        return range.values;
      });
      beds.forEach((bed, at) => {
        const expected: Readonly<Partial<Record<ResultRole, number>>> = resultsOf(estimateOf(bed, long, short));
        const found = Object.fromEntries(
          filling.columns.flatMap(({ role }, place) =>
            role in expected ? [[roleLabel(role), values[at + 1]?.[headings.length + place]]] : [],
          ),
        );
        const wanted = Object.fromEntries(
          filling.columns.flatMap(({ role }) =>
            role in expected ? [[roleLabel(role), expect.closeTo(Number(expected[role]), 6)]] : [],
          ),
        );
        expect({ ...bed, ...found }).toEqual({ ...bed, ...wanted });
      });
    } finally {
      host.dispose();
    }
  },
);
