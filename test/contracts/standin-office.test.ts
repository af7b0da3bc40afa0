import { afterAll, beforeAll, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeAll(async () => {
  host = await createHost();
});
afterAll(() => host.dispose());

test("the host says which it is, to a callback and to whoever waits", async () => {
  const heard: unknown[] = [];
  const info = await Office.onReady((told) => {
    heard.push(told);
  });
  expect(info).toMatchObject({ host: "Excel", platform: "OfficeOnline" });
  expect(heard).toEqual([info]);
  expect(info.host === Office.HostType.Excel).toBe(true);
});

test.each([
  ["ExcelApi", "1.1", true],
  ["ExcelApi", "1.14", true],
  ["ExcelApi", "1.15", false],
  ["ExcelApi", "1.9", true],
  ["ExcelApi", undefined, true],
  ["CustomFunctionsRuntime", "1.3", true],
  ["CustomFunctionsRuntime", "1.4", false],
  ["WordApi", "1.1", false],
])("the set %s %s is supported: %s", (name, version, expected) => {
  expect(Office.context.requirements.isSetSupported(name, version)).toBe(expected);
});

test("there is no theme of the host, so that an add-in asks the browser", () => {
  expect(Office.context.officeTheme).toBeUndefined();
});

test("the globals are gone once the host is disposed of, as they were before", async () => {
  const other = await createHost();
  expect(globalThis.Excel).toBe(other.Excel);
  other.dispose();
  expect(globalThis.Excel).toBe(host.Excel);
});
