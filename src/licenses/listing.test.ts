import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { packagesInside } from "./inside.mjs";
import known from "./known.json";
import { licenseTrouble, listing } from "./listing.mjs";
import { packageFacts, packageFolder } from "./packageFacts.mjs";

const MODULES = resolve(import.meta.dirname, "../../node_modules");
const shipped = { name: "trowel", version: "1.2.3", license: "MIT", text: "Copyright A. Mason", parts: ["pane"] };

const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true });
});

/** The folder of a package that tells its license so. */
function packageOf(license: unknown): string {
  const folder = mkdtempSync(join(tmpdir(), "license-"));
  folders.push(folder);
  writeFileSync(join(folder, "package.json"), JSON.stringify({ version: "1.0.0", license }));
  return folder;
}

describe("the list of licenses", () => {
  test("tells each package with its license and where it is, and a text that several have once", () => {
    const text = listing([
      { ...shipped, name: "zinc" },
      { ...shipped, license: "(GPL-3.0 OR MIT)", within: "barrow" },
    ]);
    expect(text).toContain(
      "trowel: MIT (offered as (GPL-3.0 OR MIT)). In: pane, packed into barrow.\nzinc 1.2.3: MIT. In: pane.\n\nCopyright A. Mason",
    );
    expect(text.match(/Copyright A\. Mason/g)).toHaveLength(1);
    expect(text).toContain("Packages: 2.");
  });

  test("takes what is permissive and has its text", () => {
    expect(licenseTrouble(shipped)).toBeUndefined();
  });

  test.each([
    [{ license: "GPL-3.0-only" }, /^trowel has the license GPL-3\.0-only, which is not among those in/],
    [{ license: undefined }, /^trowel has no license that is told/],
    [{ license: "LGPL-2.1", within: "barrow" }, /^trowel, which is packed into barrow, has the license LGPL-2\.1/],
    [{ text: "" }, /^trowel comes without the text of its license/],
  ])("fails the build, in words, where it is %j", (part, words) => {
    expect(licenseTrouble({ ...shipped, ...part })).toMatch(words);
  });
});

describe("what a package says of its license", () => {
  test("is found from any file of it, also of a package within a package", () => {
    expect(packageFolder("/a/node_modules/@b/c/lib/d.js")).toBe("/a/node_modules/@b/c");
    expect(packageFolder("/a/node_modules/b/node_modules/c/d.js")).toBe("/a/node_modules/b/node_modules/c");
    expect(packageFolder("/a/src/d.ts")).toBeUndefined();
    expect(packageFolder(undefined)).toBeUndefined();
  });

  test("is its own text", () => {
    const { license, text } = packageFacts("preact", resolve(MODULES, "preact"));
    expect(license).toBe("MIT");
    expect(text).toContain("Jason Miller");
  });

  test("is the standard text with its author, where it only names its license", () => {
    const { license, text } = packageFacts("franc-min", "/nowhere");
    expect(license).toBe("MIT");
    expect(text).toMatch(/^Copyright \(c\) Titus Wormer \(its package\.json\)\n\nPermission is hereby granted/);
  });

  test("is its type, where it is told in the old way, and nothing where it is told in no way", () => {
    expect(packageFacts("old-way", packageOf({ type: "MIT", url: "https://example.com" })).license).toBe("MIT");
    expect(packageFacts("no-way", packageOf([{ type: "MIT" }])).license).toBeUndefined();
  });

  test("is what we found out, where it tells something that cannot be read", () => {
    expect(packageFacts("franc-min", packageOf("MIT/X11")).license).toBe("MIT");
  });

  test.each(Object.entries(known))("is told by %s itself as we know it, or not at all", (name, { license }) => {
    const file = resolve(MODULES, name, "package.json");
    // A later version under another license must not hide behind what was once found out.
    if (existsSync(file)) expect(JSON.parse(readFileSync(file, "utf8")).license ?? license).toBe(license);
  });

  test("is nothing where no one knows", () => {
    expect(packageFacts("nobody-knows", "/nowhere")).toMatchObject({ license: undefined, text: "" });
  });
});

test("what a file that came ready-made holds is told by its source map", () => {
  const inside = packagesInside(resolve(MODULES, "exceljs/dist/exceljs.min.js"));
  // Its own README names jszip; the others are those that jszip and the shims for the browser bring along.
  expect(inside).toEqual(
    expect.arrayContaining(["jszip", "readable-stream", "core-js", "elliptic", "@fast-csv/parse"]),
  );
  expect(packagesInside(resolve(MODULES, "preact/package.json"))).toEqual([]);
});
