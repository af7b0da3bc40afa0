import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { compose } from "../../src/sheets/compose";
import { insertPlan } from "../../src/workbook/change/insert";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost();
  host.isEditing = true;
});
afterEach(() => {
  vi.restoreAllMocks();
  host.dispose();
});

const insert = () =>
  insertPlan((at) => compose("one cell", [{ cells: [{ content: 5 }] }], [8], at), { kind: "selection" });

/** A program that can't have a request wait doesn't report the set for it. */
function withoutDelay(): void {
  const { requirements } = Office.context;
  const isSetSupported = requirements.isSetSupported.bind(requirements);
  vi.spyOn(requirements, "isSetSupported").mockImplementation(
    (name, version) => name !== "DelayForCellEdit" && isSetSupported(name, version),
  );
}

test("an insert waits for the end of typing where the program can wait", async () => {
  const inserted = insert();
  await new Promise((resolve) => setTimeout(resolve, 50));
  expect(host.value("A1")).toBe("");
  host.isEditing = false;
  expect(await inserted).toMatchObject({ done: true });
  expect(host.value("A1")).toBe(5);
});

test("an insert says what to do where the program can't wait, and works after that", async () => {
  withoutDelay();
  await expect(insert()).rejects.toThrow(
    "A cell is being edited. Nothing was changed. Press Enter or Esc on the sheet, then try again.",
  );
  host.isEditing = false;
  expect(await insert()).toMatchObject({ done: true });
  expect(host.value("A1")).toBe(5);
});
