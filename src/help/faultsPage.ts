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
    title: "The spreadsheet program fails, or waits",
    about:
      "Each deed takes a few steps, and each step was made to fail in turn: before it changes anything, after some of its changes, and after all of them, when only the answer is lost.",
  },
  { group: "protected", title: "Something is protected", about: "What is protected stays as it is." },
  {
    group: "selected",
    title: "Something unusual is selected",
    about: "Only what goes by the selection is listed, and what could be taken for it.",
  },
  {
    group: "others",
    title: "Somebody changes the workbook meanwhile",
    about: "A sheet goes, or is called something else, between two steps of a deed.",
  },
];

/** What happens to a workbook when something goes wrong, as the tests found it. */
export function faultsPage(found: FaultTable): Page {
  return {
    address: "faults.html",
    title: "When something goes wrong",
    about: "What happens to the workbook, and what you are told, in everything that the tests make go wrong.",
    content: [
      intro(found),
      ...GROUPS.map(({ group, title, about }) => groupSection(found, group, title, about)),
      section("Two panes of one workbook", PANES_NOTE, panesTable(found)),
      section("What is not held", NOT_HELD),
    ].join("\n"),
  };
}

const PANES_NOTE =
  "<p>Two people, or two windows, with the add-in open in the same workbook. “At the same moment” means that the steps of both reach the spreadsheet program in turn.</p>";

const NOT_HELD = `<ul>
<li>All of this was tried against the practice workbook, which stands in for the spreadsheet program and fails as that is documented to. It was not tried in every version of the program itself.</li>
<li>Where the program fails for good in the middle of a deed, nothing can be put back any more. You are told so. Undo in the sheet (Ctrl+Z) may not reach it: that it undoes what an add-in did is documented of newer versions of the program alone (ExcelApi 1.20), and a sheet that is deleted clears the list of what can be undone. Go back to an earlier version of the file, or close it without saving. Closing does not help where the file is saved by itself (AutoSave).</li>
<li>What somebody types by hand into the very cells that are written, in the very moment, can be overtaken in the program itself. Between two windows of the add-in it is seen, as above.</li>
<li>Where somebody puts rows or columns in, in the very moment in which a list gets its table or what was inserted is taken back, a part can be left where it stood before. You are told so, and where to look. What stands in cells is not lost by it.</li>
</ul>`;

/** What of a workbook is compared before and after each try. */
const COMPARED =
  "what stands in the cells, as values and as formulas; their looks, borders and locks; the widths of the columns and the heights of the rows, up to the last that holds anything, and which of them are hidden; merged cells, color rules and lists of choices; tables, names and pictures; the page setup and frozen rows; the sheets, their names, order, hiding and protection; what the add-in keeps with the workbook; and what is selected";

function intro({ operations, troubles }: FaultTable): string {
  const tries = operations.flatMap(({ cells }) => Object.values(cells));
  const count = (of: (cell: FaultCell) => number) => tries.reduce((sum, cell) => sum + of(cell), 0);
  const all = count(({ asBefore, done, told }) => asBefore + done + told);
  const pairs = operations.length * troubles.length;
  return `<p>The rule is: <strong>either all of it is done, or the workbook is as it was</strong>, and the pane says what happened and what to do. “As it was” is this, compared before and after: ${COMPARED}. Comments, charts and whatever else the add-in does not write are not compared.</p>
<p>A test does each of ${operations.length} things that write to a workbook in each of ${troubles.length} troubles, wherever that trouble can happen to it: in ${many(tries.length)} of ${many(pairs)} pairs. The others are marked “–”, or not listed. Of ${many(all)} tries, ${many(count(({ asBefore }) => asBefore))} left the workbook as it was. In ${many(count(({ done }) => done))} the pane said that it was done, and the workbook was as the same deed leaves it without a trouble; only what is selected at the end, and what is noted of a place that moved meanwhile, may be other. In ${many(count(({ told }) => told))} the program was made to fail for good, or a sheet was locked, or rows were put in, in the middle of a deed, so that not all could be put back; the pane said so each time. The tables below are what the test found, and it fails where they are no longer true.</p>`;
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
      ["What is done", ...troubles.map((one) => one.title)],
      touched.map(({ title: deed, cells }) => [escaped(deed), ...troubles.map(({ key }) => cellWords(cells[key]))]),
    ),
    "<h3>What you are told</h3>",
    table(
      ["When", "What the pane says"],
      troubles.flatMap(({ key, title: when }) => sentencesOf(found, key).map((text) => [escaped(when), escaped(text)])),
    ),
  );
}

/** What came of a deed in a trouble, in few words. */
export function cellWords(cell: FaultCell | undefined): string {
  if (!cell) return "–";
  const { asBefore, done, told } = cell;
  const parts = [
    { count: asBefore, words: "as it was" },
    { count: done, words: "done" },
    { count: told, words: "told what is left" },
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
    ["What happens", "What comes of it", "What the pane says"],
    panes.map(({ title, outcome, says }) => [
      escaped(title),
      escaped(outcome),
      escaped(says.map((place) => sentences[place] ?? "").join(" ")),
    ]),
  );
}
