import { afterEach, beforeEach, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({ office: { sheets: [{ name: "Job", cells: { A1: 1 } }] } });
});
afterEach(() => host.dispose());

const onRows = (address: string, work: (rows: Excel.Range) => void) =>
  Excel.run(async (context) => {
    work(context.workbook.worksheets.getItem("Job").getRange(address));
    await context.sync();
  });
const group = (address: string) => onRows(address, (rows) => rows.group(Excel.GroupOption.byRows));
const groups = () => host.grid.groups.list(host.grid.sheets.activeId());

test("groups of rows go with their rows and are kept over a reload", async () => {
  await group("5:9");
  await group("A12:C13");
  await onRows("7:8", (rows) => rows.insert("Down"));
  await onRows("2:3", (rows) => rows.delete("Up"));
  expect(groups()).toEqual([
    { row: 2, rowCount: 7 },
    { row: 11, rowCount: 2 },
  ]);
  const kept = host.save();
  host.dispose();
  host = await createHost({ kept });
  expect(groups()).toHaveLength(2);
  await onRows("12:13", (rows) => rows.delete("Up"));
  expect(groups()).toEqual([{ row: 2, rowCount: 7 }]);
});

test("rows of a protected sheet can't be grouped, and columns can't be here", async () => {
  await expect(onRows("5:9", (rows) => rows.group("ByColumns"))).rejects.toMatchObject({ code: "InvalidArgument" });
  await onRows("A1", (cell) => cell.worksheet.protection.protect());
  await expect(group("5:9")).rejects.toMatchObject({ code: "AccessDenied" });
  expect(groups()).toEqual([]);
});
