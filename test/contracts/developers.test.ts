import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
const text = readFileSync(resolve(ROOT, "DEVELOPERS.md"), "utf8");
const named = [...text.matchAll(/`((?:src|test|assets)\/[\w./-]+)`/g)].map(([, path = ""]) => path);

/** What a newcomer asks for, and the word by which they know that they have found it. */
const PIN = [
  ["src/quantities/pins.ts", "export function pins("],
  ["src/quantities/bed/amounts.ts", 'label: "Pins"'],
  ["src/sheets/estimate/block.ts", "export function estimateBlock("],
  ["src/layout/drawing/fabricPart.ts", "layout.pins"],
] as const;

describe("the guide for people who work on Bedrow", () => {
  test("names only files and folders that are there", () => {
    expect(named.length).toBeGreaterThan(20);
    expect(named.filter((path) => !existsSync(resolve(ROOT, path)))).toEqual([]);
  });

  test("fits on two pages", () => {
    expect(text.split(/\s+/).length).toBeLessThan(1200);
  });

  test.each(PIN)("says that a pin is found in %s", (path, word) => {
    expect(text).toContain(`\`${path}\``);
    expect(readFileSync(resolve(ROOT, path), "utf8")).toContain(word);
  });

  test("names a room for each folder of src that others import from", () => {
    const rooms = new Set(named.map((path) => path.split("/").slice(0, 2).join("/")));
    for (const room of [
      "quantities",
      "layout",
      "functions",
      "sheets",
      "workbook",
      "pane",
      "practice",
      "review",
      "help",
    ])
      expect(rooms, room).toContain(`src/${room}`);
  });
});
