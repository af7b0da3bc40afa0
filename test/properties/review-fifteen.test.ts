import { parseA1Ref, toCol } from "@borgar/fx";
import { expect, test } from "vitest";
import type { CellValue } from "../../src/review/facts";
import type { Change, Finding } from "../../src/review/finding";
import { reviewAtOnce } from "../../src/review/review";
import { callFunction } from "../callFunction";
import { type CellText, factsOf, knowledge, type SheetInput, type WorkbookInput } from "../reviewWorkbook";
import { jobRows } from "./review-workbooks/jobRows";

/** Fifteen mistakes on the sheet of spring beds, most of them with a price to it. */
const MISTAKES: Readonly<Record<string, CellValue>> = {
  "Jobs!E9": 0.17, // 2 in, typed in feet
  "Jobs!F11": 2700, // pounds a cubic yard for crushed granite
  "Jobs!I10": "", // the formula was cleared
  "Jobs!D17": "", // a width was never typed
  "Jobs!L12": "'30", // came in as text
  "Jobs!L20": "=SUM(L5:L19)+L7", // one bed twice in the total
  "Jobs!R15": "=ROUNDDOWN(I15/DeliveryTons,0)",
  "Jobs!T6":
    "=I6*StonePrice+J6*RollPrice+ROUNDUP(K6/100,0)*PinPrice+M6*PiecePrice+Q6*LoadPrice+R6*DeliveryPrice+S6*47.5",
  "Jobs!T14":
    "=I14*StonePrice+J14*RollPrice+ROUNDUP(K14/100,0)*PinPrice+M14*PiecePrice+Q13*LoadPrice+R14*DeliveryPrice+S14*CrewRate",
  "Jobs!T20": "=SUM(T5:T9,T11:T19)",
  "Jobs!U13": 35, // for 35%
  "Jobs!V8": 1400, // typed over
  "Jobs!V16": "=T16/(1-U16)", // a margin, below the heading Markup
  "Jobs!V20": "=SUM(V5:V17)",
  "Rates!B2": 7, // for 7%
};

/** What only a person can put back, since no formula knows it. */
const FROM_THE_NOTES: Readonly<Record<string, CellValue>> = { "Jobs!F11": "crushed granite", "Jobs!D17": 3 };

const PRICE = "Jobs!V20";

/** The beds, with one of them entered twice below the others: the sixteenth mistake, as it were. */
function beds(): WorkbookInput {
  const input = jobRows();
  const [jobs, rates] = input.sheets as [SheetInput, SheetInput];
  const again = jobs.rows[9]!.map((cell, column) =>
    typeof cell === "string" && cell.startsWith("=")
      ? cell.replaceAll(/(?<![A-Za-z.])([A-Z])10(?!\d)/g, "$119")
      : column === 0
        ? 15
        : cell,
  );
  const total = jobs.rows[18]!.map((cell) =>
    typeof cell === "string" ? cell.replaceAll(/([A-Z])18\)/g, "$119)") : cell,
  );
  return { ...input, sheets: [{ ...jobs, rows: [...jobs.rows.slice(0, 18), again, total] }, rates] };
}

test("whoever follows the findings comes to the right price", () => {
  const right = shownAt(jobRows(), "Jobs!V19");
  let input = changed(beds(), MISTAKES);
  expect(shownAt(input, PRICE)).not.toBe(right);

  const first = check(input);
  for (const address of Object.keys(MISTAKES)) expect(told(first, address), address).toBe(true);
  expect(told(first, "Jobs!B19"), "the bed that stands there twice").toBe(true);

  for (let round = 0; round < 6; round++) {
    const findings = check(input);
    if (findings.length === 0) break;
    for (const finding of findings) input = changed(input, mended(finding));
  }
  expect(check(input)).toEqual([]);
  expect(shownAt(input, PRICE)).toBeCloseTo(right as number, 6);
});

/** What a person does about a finding: takes the fix, types from the notes, or deletes the second bed. */
function mended({ rule, fix, places }: Finding): Record<string, CellValue> {
  if (rule === "same-bed")
    return Object.fromEntries(Array.from({ length: 22 }, (_, column) => [`Jobs!${toCol(column)}19`, ""]));
  if (fix) return Object.fromEntries(fix.map((change: Change) => [addressOf(change), change.after]));
  return Object.fromEntries(
    places.flatMap((place) => {
      const typed = FROM_THE_NOTES[addressOf(place)];
      return typed === undefined ? [] : [[addressOf(place), typed] as const];
    }),
  );
}

const check = (input: WorkbookInput) =>
  reviewAtOnce(factsOf(input), knowledge, { call: callFunction }).findings.filter(({ level }) => level !== "question");

const addressOf = ({ sheet, row, column }: { sheet: string; row: number; column: number }) =>
  `${sheet}!${toCol(column)}${row + 1}`;

function spotOf(address: string) {
  const read = parseA1Ref(address);
  if (!read || !("range" in read)) throw new RangeError(address);
  return { sheet: read.context![0]!, row: read.range.top!, column: read.range.left! };
}

function told(findings: readonly Finding[], address: string): boolean {
  const { sheet, row, column } = spotOf(address);
  return findings.some(({ places, related }) =>
    [...places, ...related].some(
      (place) =>
        place.sheet === sheet &&
        row >= place.row &&
        row < place.row + place.rows &&
        column >= place.column &&
        column < place.column + place.columns,
    ),
  );
}

function changed(input: WorkbookInput, cells: Readonly<Record<string, CellValue>>): WorkbookInput {
  const sheets = input.sheets.map((sheet) => {
    const rows: CellText[][] = sheet.rows.map((row) => [...row]);
    for (const [address, content] of Object.entries(cells)) {
      const spot = spotOf(address);
      if (spot.sheet === sheet.name) rows[spot.row]![spot.column] = content;
    }
    return { ...sheet, rows };
  });
  return { ...input, sheets };
}

function shownAt(input: WorkbookInput, address: string): CellValue {
  const { sheet, row, column } = spotOf(address);
  return factsOf(input).sheets.find(({ name }) => name === sheet)!.used!.values[row]![column]!;
}
