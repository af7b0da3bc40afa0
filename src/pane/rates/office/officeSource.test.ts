import { expect, test } from "vitest";
import { officeOffer } from "./officeSource";

const index = (officeSettings?: string) =>
  JSON.stringify({ format: "bedrow-template-index", version: 1, templates: [], officeSettings });
const SETTINGS = JSON.stringify({
  format: "bedrow-office-settings",
  version: 1,
  office: "Fernlea Stone",
  saved: "2026-11-30",
  number: 3,
  texts: { terms: "Half on signing" },
});

/** The office's folder, by file. */
const folder = (files: Readonly<Record<string, string>>) => async (file: string) => files[file];

test("an office offers the settings that its list names, and no others", async () => {
  const files = { "index.json": index("ours.json"), "ours.json": SETTINGS };
  expect(await officeOffer(folder(files))).toMatchObject({ ok: true, file: { number: 3 } });
  expect(await officeOffer(folder({ ...files, "index.json": index() }))).toBeUndefined();
  expect(await officeOffer(folder({ "ours.json": SETTINGS }))).toBeUndefined();
  expect(await officeOffer(folder({ ...files, "index.json": "{half" }))).toBeUndefined();
});

test("settings that the list names and that can't be read are said", async () => {
  const missing = await officeOffer(folder({ "index.json": index("ours.json") }));
  expect(missing).toMatchObject({
    ok: false,
    why: [expect.stringMatching(/names ours\.json, and there's no such file/)],
  });
  const later = SETTINGS.replace('"version":1', '"version":4');
  expect(await officeOffer(folder({ "index.json": index("ours.json"), "ours.json": later }))).toMatchObject({
    ok: false,
    why: [expect.stringMatching(/A newer version of the add-in/)],
  });
});
