import { expect, test } from "vitest";
import { type NoticeFacts, noticeSheet } from "./noticeSheet";

const facts: NoticeFacts = {
  job: "Alder Court",
  place: "12 Alder Court",
  start: "12/7/2026 (Mon)",
  noticeDays: 2,
  lastNotice: "12/2/2026 (Wed)",
  noticeOn: "12/1/2026 (Tue)",
  earliestDig: "12/4/2026 (Fri)",
  marksGoodTo: "",
  holidays: [{ date: "11/26/2026 (Thu)", name: "Thanksgiving Day" }],
  warnings: ["The start is close."],
  beds: [
    { name: "Front", areaSqFt: 92.4, extent: "within 19 by 5 ft" },
    { name: "", areaSqFt: 40.5, extent: "within 10 by 5 ft" },
  ],
  deepest: "4.5 in",
};

const rows = noticeSheet(facts, "letter", { row: 0, column: 0 }).formulas;
const plain = (cell: unknown) => String(cell ?? "").replace(/^'/, "");
const factOf = (label: string) => rows.filter(([first]) => plain(first) === label).map(([, fact]) => plain(fact));

test.each([
  ["First", "Call 811 before you dig. Your ticket and your state's rule come before this count."],
  ["Note", "The start is close."],
  ["Start date", "12/7/2026 (Mon)"],
  ["Full business days", "2, not counting the day you call"],
  ["Give notice by", "12/2/2026 (Wed)"],
  ["Notice on", "12/1/2026 (Tue)"],
  ["Dig from", "12/4/2026 (Fri)"],
  ["Marks are good through", ""],
  ["Not counted", "11/26/2026 (Thu): Thanksgiving Day"],
  ["Dig site", "12 Alder Court"],
  ["Front", "about 92 sq ft, within 19 by 5 ft"],
  ["Bed", "about 41 sq ft, within 10 by 5 ft"],
  ["Depth below grade", "4.5 in"],
  ["Ticket number", ""],
])("the dig notice says %s: %s", (label, fact) => {
  expect(factOf(label)).toEqual([fact]);
});
