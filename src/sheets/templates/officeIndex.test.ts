import { describe, expect, test } from "vitest";
import { readOfficeIndex } from "./officeIndex";

const index = (...templates: unknown[]) =>
  readOfficeIndex(JSON.stringify({ format: "bedrow-template-index", version: 1, templates }));

describe("the office's list of templates", () => {
  test("names files of its own folder, each once", () => {
    expect(index("front-bed.json", "Crew day 2.bedrow.json", "front-bed.json")).toEqual({
      ok: true,
      files: ["front-bed.json", "Crew day 2.bedrow.json"],
    });
  });

  test.each([
    "../secret.json",
    "sub/bed.json",
    "https://example.com/bed.json",
    "//example.com/bed.json",
    "..json/..%2f.json",
    "bed.html",
    ".json",
    "index.json",
    "",
    7,
    null,
  ])("and nothing else: %s", (file) => {
    expect(index("good.json", file)).toMatchObject({ ok: false, why: expect.stringMatching(/a file in that folder/) });
  });

  test.each([
    ["{", /isn't a list of templates, or is damaged/],
    ["[]", /isn't a list of templates/],
    ["null", /isn't a list of templates/],
    [`{"format":"bedrow-template-index","version":2,"templates":[]}`, /from a version this add-in can't read/],
    [`{"format":"bedrow-template-index","version":1}`, /names no templates/],
  ])("%s is refused in words", (text, words) => {
    const read = readOfficeIndex(text);
    expect(read.ok ? "" : read.why).toMatch(words);
  });

  test("names 50 at most", () => {
    expect(index(...Array.from({ length: 51 }, (_, number) => `${number}.json`))).toMatchObject({ ok: false });
  });

  test("may name the file of the office's settings, in its own folder as well", () => {
    const named = (officeSettings: unknown) =>
      readOfficeIndex(JSON.stringify({ format: "bedrow-template-index", version: 1, templates: [], officeSettings }));
    expect(named("our settings 3.json")).toEqual({ ok: true, files: [], officeSettings: "our settings 3.json" });
    for (const wrong of ["../settings.json", "https://example.com/settings.json", "index.json", 7])
      expect(named(wrong)).toMatchObject({ ok: false, why: expect.stringMatching(/a file in that folder/) });
  });
});
