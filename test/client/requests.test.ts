import { afterEach, beforeEach, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

/*
 * What goes over the wire of the library, and what of it the add-in waits for.
 */
let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost();
});
afterEach(() => host.dispose());

/** Runs a batch, lets what the library sends afterwards arrive, and counts. */
async function countedIn(batch: (context: Excel.RequestContext) => Promise<unknown>) {
  const before = { ...host.wire! };
  await Excel.run(batch);
  const { awaited } = host.wire!;
  await new Promise((resolve) => setTimeout(resolve, 50));
  // Nothing that comes later counts as awaited.
  expect(host.wire!.awaited).toBe(awaited);
  return { awaited: awaited - before.awaited, cleanup: host.wire!.cleanup - before.cleanup };
}

test("each sync is one awaited request, and a run that used ranges sends one more that no one waits for", async () => {
  const counted = await countedIn(async (context) => {
    const range = context.workbook.worksheets.getItem("Sheet1").getRange("A1:B2").load("values");
    await context.sync();
    range.values = [
      [1, 2],
      [3, 4],
    ];
    await context.sync();
  });
  expect(counted).toEqual({ awaited: 2, cleanup: 1 });
  expect(host.syncCount).toBe(2);
  expect(host.values("A1:B2")).toEqual([
    [1, 2],
    [3, 4],
  ]);
});

test("a run that used no range has nothing to let go of", async () => {
  const counted = await countedIn(async (context) => {
    const sheets = context.workbook.worksheets.load("items/name");
    await context.sync();
    expect(sheets.items.map(({ name }) => name)).toEqual(["Sheet1"]);
  });
  expect(counted).toEqual({ awaited: 1, cleanup: 0 });
});

test("a run with nothing to do sends one request: the library asks for the workbook in its first sync", async () => {
  const counted = await countedIn(async (context) => {
    await context.sync();
    await context.sync();
  });
  expect(counted).toEqual({ awaited: 1, cleanup: 0 });
});
