import { afterEach, expect, test } from "vitest";
import { differences, noteBeyond } from "../../src/practice/xlsx/openedMessage";
import { reviewAtOnce } from "../../src/review/review";
import { readForCheck } from "../../src/workbook/read/workbook";
import { callFunction } from "../callFunction";
import { openFile, savedFile, withParts } from "../files";
import type { HeadlessHost } from "../headlessHost";
import { createProductHost } from "../productHost";
import { knowledge } from "../reviewWorkbook";

/*
 * A file can hold formulas that this grid doesn't know. It keeps what they showed, and so the check can tell an error
 * of the workbook's from one that only the grid shows.
 */
let hosts: HeadlessHost[] = [];
afterEach(() => {
  for (const host of hosts) host.dispose();
  hosts = [];
});

/** Opens a sheet whose B3 calls a function that the grid doesn't know; its result in the file is given. */
async function opened(result: string): Promise<HeadlessHost> {
  const host = await createProductHost({ sheets: [{ name: "Jobs", cells: {} }] });
  hosts.push(host);
  await host.type({
    A1: "Line",
    B1: "Cost",
    A2: "Plans",
    B2: 412,
    A3: "Permits",
    B3: "=SUM(B2:B2)",
    A4: "Both",
    B4: "=B2+B3",
  });
  const { bytes } = await savedFile(host);
  const changed = await withParts(bytes, {
    "xl/worksheets/sheet1.xml": (xml) =>
      xml.replace(/<c r="B3".*?<\/c>/, `<c r="B3" ${result}</c>`).replace(/(<c r="B4".*?<v>)[^<]*/, "$1824"),
  });
  const file = await openFile(host, changed);
  hosts.push(file.host);
  noteBeyond(file.host.grid.cells, differences(file.host.grid.cells, file.opened.shown));
  return file.host;
}

const FORMULA = '<f>IF(_xlfn.REGEXTEST("412","4"),412,0)</f>';
const IN_FILE = `>${FORMULA}<v>412</v>`;
const ERROR_IN_FILE = `t="e">${FORMULA}<v>#NAME?</v>`;

async function found(): Promise<string[]> {
  const { facts } = await readForCheck();
  return reviewAtOnce(facts, knowledge, { call: callFunction }).findings.map(({ rule, where }) => `${rule} ${where}`);
}

test("a formula that only this grid can't work out is no error, nor is what reads it", async () => {
  const host = await opened(IN_FILE);
  expect([host.value("B3"), host.value("B4")]).toEqual(["#NAME?", "#NAME?"]);
  expect(await found()).toEqual([]);
});

test("an error that the file shows, too, is one", async () => {
  await opened(ERROR_IN_FILE);
  expect(await found()).toEqual(["error Jobs!B3"]);
});

test("another formula that is typed into the cell is the person's own", async () => {
  const host = await opened(IN_FILE);
  await host.type({ B3: "=NOTHINGLIKEIT(B2)" });
  expect(await found()).toEqual(["error Jobs!B3"]);
});

test("what was noted is kept with the workbook", async () => {
  const host = await opened(IN_FILE);
  const again = await createProductHost(undefined, host.save());
  hosts.push(again);
  await again.grid.settled();
  expect(again.value("B3")).toBe("#NAME?");
  expect(await found()).toEqual([]);
});
