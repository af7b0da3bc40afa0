import { expect, test } from "vitest";
import type { Template } from "../../sheets/templates/template";
import { savedWords, shownName, shownValue, sizeWords } from "./words";

test("a template's size is counted in rows and columns", () => {
  expect(sizeWords({ rows: 61, columns: 1 })).toBe("61 rows by 1 column");
});

test.each([
  [{}, ""],
  [{ saved: "2026-11-29" }, "Saved on 2026-11-29."],
  [{ by: "A. Reed" }, "Saved by A. Reed."],
  [{ saved: "2026-11-29", by: "A. Reed" }, "Saved on 2026-11-29 by A. Reed."],
])("a template with %j says %j", (told, words) => {
  expect(savedWords(told as Template)).toBe(words);
});

test.each([
  [1234.5678, "1,234.5678"],
  [0.1 + 0.2, "0.3"],
  [true, "true"],
  ["river rock", "river rock"],
])("the value %j is shown as %s", (value, text) => {
  expect(shownValue(value)).toBe(text);
});

test("a name of hidden characters alone is shown as none", () => {
  expect(shownName("\u200b\u202e ")).toBe("(unnamed)");
  expect(shownName(" Front walk ")).toBe("Front walk");
});
