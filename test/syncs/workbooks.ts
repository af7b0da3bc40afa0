import type { PracticeOffice } from "../../src/practice/grid/practiceOffice";
import { officeOf, type Rows } from "../listSheets";

/** The smallest PNG there is: one pixel (RFC 2083). */
export const ONE_PIXEL =
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

const LIST = "List";
const HEADINGS = ["Job", "Bed", "Length, ft", "Width, ft", "Depth, in", "Stone", "Waste", "Tons"];

const list = (beds: number): Rows => [
  HEADINGS,
  ...Array.from({ length: beds }, (_, place) => [
    `Job ${place % 40}`,
    `Bed ${place}`,
    20,
    4,
    2.5,
    "river rock",
    0.08,
    "",
  ]),
];

/** A workbook to count requests in: what is in it, and how many drawings lie on its last sheet. */
export interface Sized {
  readonly words: string;
  readonly office: PracticeOffice;
  readonly drawings: number;
}

export const TINY: Sized = { words: "1 sheet, 3 rows", office: officeOf(list(3)), drawings: 0 };

/** What an office books: no list of beds, but it has to be read by whatever reads a workbook. */
function ledger(rows: number): Record<string, string | number> {
  const cells: Record<string, string | number> = { A1: "Date", B1: "Paid for", C1: "Amount" };
  for (let row = 2; row < rows + 2; row++)
    Object.assign(cells, { [`A${row}`]: 45_000 + row, [`B${row}`]: "stone", [`C${row}`]: row % 700 });
  return cells;
}

/** A large office’s workbook: what is promised of requests is counted in it. */
export const LARGE: Sized = {
  words: "100 sheets, 10,000 rows, 50 drawings",
  office: {
    sheets: [
      ...officeOf(list(500)).sheets,
      { name: "Ledger", cells: ledger(10_000) },
      ...Array.from({ length: 98 }, (_, place) => ({
        name: `Job ${place + 1}`,
        cells: { A1: `Job ${place + 1}`, B2: place, C2: "=B2*2" },
      })),
    ],
  },
  drawings: 50,
};

/** Lays the drawings on the sheet of the list, as those of blocks that have gone since. */
export async function layDrawings({ drawings }: Sized): Promise<void> {
  if (drawings === 0) return;
  await Excel.run(async (context) => {
    const { shapes } = context.workbook.worksheets.getItem(LIST);
    for (let place = 0; place < drawings; place++) {
      const shape = shapes.addImage(ONE_PIXEL);
      shape.name = `Picture ${place}`;
      shape.left = 1000;
    }
    await context.sync();
  });
}
