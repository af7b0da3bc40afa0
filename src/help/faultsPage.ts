import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { FaultCell, FaultTable, TroubleGroup } from "./faultTable";
import { escaped, section, table } from "./html";
import { many } from "./numbers/stated";
import type { Page } from "./page";

/** What the test found, which writes it beside this page. */
export function readFaults(root: string): FaultTable {
  return JSON.parse(readFileSync(join(root, "test/generated/faults.json"), "utf8")) as FaultTable;
}

/** What goes wrong, by its kind, in the order of the page. */
const GROUPS: readonly { readonly group: TroubleGroup; readonly title: string; readonly about: string }[] = [
  {
    group: "fails",
    title: "The spreadsheet program fails or stalls",
    about:
      "Each action takes a few steps. We made each step fail in turn: before it changed anything, after some of its changes, and after all of them, when only the reply is lost.",
  },
  { group: "protected", title: "Something is protected", about: "Anything protected stays the way it is." },
  {
    group: "selected",
    title: "Something unusual is selected",
    about: "This lists only actions that use the selection, and ones that could be mistaken for it.",
  },
  {
    group: "others",
    title: "Someone else changes the workbook at the same time",
    about: "A sheet is deleted or renamed between two steps of an action.",
  },
];

/** What happens to a workbook when something goes wrong, as the tests found it. */
export function faultsPage(found: FaultTable): Page {
  return {
    address: "faults.html",
    title: "When something goes wrong",
    about: "What happens to your workbook, and what the pane tells you, in every failure we test.",
    content: [
      intro(found),
      ...GROUPS.map(({ group, title, about }) => groupSection(found, group, title, about)),
      section("Two panes of one workbook", PANES_NOTE, panesTable(found)),
      section("What we can't promise", NOT_HELD),
    ].join("\n"),
  };
}

const PANES_NOTE =
  "<p>Two people, or two windows, with the add-in open in the same workbook. “At the same moment” means the spreadsheet program gets steps from both, in turn.</p>";

const NOT_HELD = `<ul>
<li>We tested all of this on the practice workbook, which stands in for the spreadsheet program and fails the way the program's documentation says it does. We didn't test every version of the program itself.</li>
<li>If the program fails for good in the middle of an action, nothing can be put back, and the pane says so. Undo on the sheet (Ctrl+Z) may not help: only newer versions document that it undoes what an add-in did (ExcelApi 1.20), and deleting a sheet clears the undo list. Go back to an earlier version of the file, or close it without saving. Closing doesn't help if AutoSave is on.</li>
<li>If someone types into the same cells at the same moment, their typing can be overwritten in the program itself. Between two windows of the add-in we catch it, as above.</li>
<li>If someone inserts rows or columns at the moment a list becomes a table or an insert is undone, part of it can stay where it was. The pane says so and tells you where to look. No cell contents are lost.</li>
</ul>`;

/** What of a workbook is compared before and after each try. */
const COMPARED =
  "cell values and formulas; formats, borders, and locks; column widths and row heights in the used range, and which are hidden; merged cells, conditional formats, and drop-down lists; tables, names, and pictures; page setup and frozen rows; the sheets, their names, order, visibility, and protection; what the add-in stores in the workbook; and the selection";

function intro({ operations, troubles }: FaultTable): string {
  const tries = operations.flatMap(({ cells }) => Object.values(cells));
  const count = (of: (cell: FaultCell) => number) => tries.reduce((sum, cell) => sum + of(cell), 0);
  const all = count(({ asBefore, done, told }) => asBefore + done + told);
  const pairs = operations.length * troubles.length;
  return `<p>The rule: <strong>either it all gets done, or your workbook is unchanged</strong>, and the pane says what happened and what to do. “Unchanged” means all of this matches before and after: ${COMPARED}. We don't compare comments, charts, or anything else the add-in doesn't write.</p>
<p>A test runs each of ${operations.length} actions that write to a workbook through each of ${troubles.length} failures, wherever that failure can happen: ${many(tries.length)} of ${many(pairs)} pairs. The rest are marked “–” or not listed. Of ${many(all)} tries, ${many(count(({ asBefore }) => asBefore))} left the workbook unchanged. In ${many(count(({ done }) => done))} the pane said it was done, and the workbook came out the same as without the failure; only the final selection, and the noted place of something that moved, may differ. In ${many(count(({ told }) => told))} the program failed for good, a sheet was locked, or rows were inserted mid-action, so not everything could be put back; the pane said so each time. The tables below are what the test found, and the test fails if they stop being true.</p>`;
}

function groupSection(found: FaultTable, group: TroubleGroup, title: string, about: string): string {
  const troubles = found.troubles.filter((trouble) => trouble.group === group);
  const touched = found.operations.filter(({ cells }) => troubles.some(({ key }) => cells[key]));
  const meanings = troubles.map((one) => `<dt>${escaped(one.title)}</dt><dd>${escaped(one.about)}</dd>`).join("\n");
  return section(
    title,
    `<p>${escaped(about)}</p>`,
    `<dl>\n${meanings}\n</dl>`,
    table(
      ["Action", ...troubles.map((one) => one.title)],
      touched.map(({ title: action, cells }) => [escaped(action), ...troubles.map(({ key }) => cellWords(cells[key]))]),
    ),
    "<h3>What the pane says</h3>",
    table(
      ["When", "What the pane says"],
      troubles.flatMap(({ key, title: when }) => sentencesOf(found, key).map((text) => [escaped(when), escaped(text)])),
    ),
  );
}

/** What came of a action in a trouble, in few words. */
export function cellWords(cell: FaultCell | undefined): string {
  if (!cell) return "–";
  const { asBefore, done, told } = cell;
  const parts = [
    { count: asBefore, words: "unchanged" },
    { count: done, words: "done" },
    { count: told, words: "says what is left" },
  ].filter(({ count }) => count > 0);
  const tries = asBefore + done + told;
  if (tries === 1) return parts[0]?.words ?? "–";
  return parts.map(({ count, words }) => `${count} of ${tries} ${words}`).join(", ");
}

/** Each sentence once, in the order in which they came up. */
function sentencesOf({ operations, sentences }: FaultTable, key: string): string[] {
  const places = new Set(operations.flatMap(({ cells }) => cells[key]?.says ?? []));
  return [...places].map((place) => sentences[place] ?? "");
}

function panesTable({ panes, sentences }: FaultTable): string {
  return table(
    ["What happens", "Result", "What the pane says"],
    panes.map(({ title, outcome, says }) => [
      escaped(title),
      escaped(outcome),
      escaped(says.map((place) => sentences[place] ?? "").join(" ")),
    ]),
  );
}
