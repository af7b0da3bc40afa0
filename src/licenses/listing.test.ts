import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { packagesInside } from "./inside.mjs";
import { licenseTrouble, listing } from "./listing.mjs";
import { packageFacts, packageFolder } from "./packageFacts.mjs";

const MODULES = resolve(import.meta.dirname, "../../node_modules");
const shipped = { name: "trowel", version: "1.2.3", license: "MIT", text: "Copyright A. Mason", parts: ["pane"] };

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
    const { license, text } = packageFacts("elliptic", "/nowhere");
    expect(license).toBe("MIT");
    expect(text).toMatch(/^Copyright Fedor Indutny, 2014 \(its README\)\n\nPermission is hereby granted/);
  });

  test("is nothing where nobody knows", () => {
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
