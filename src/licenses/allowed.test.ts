import { describe, expect, test } from "vitest";
import { chosenLicense } from "./allowed.mjs";

describe("the license under which a package is taken", () => {
  test("is its own, where it is permissive", () => {
    expect(chosenLicense("ISC")).toBe("ISC");
    expect(chosenLicense("MIT AND BSD-3-Clause")).toBe("MIT AND BSD-3-Clause");
  });

  test("is the first permissive one, where there is a choice", () => {
    expect(chosenLicense("(MIT OR GPL-3.0-or-later)")).toBe("MIT");
    expect(chosenLicense("(GPL-2.0 OR Apache-2.0)")).toBe("Apache-2.0");
  });

  test("is read by its parentheses", () => {
    expect(chosenLicense("GPL-3.0-only AND (MIT OR BSD-3-Clause)")).toBeUndefined();
    expect(chosenLicense("(MIT OR BSD-3-Clause) AND GPL-3.0-only")).toBeUndefined();
    expect(chosenLicense("MIT AND (GPL-2.0 OR ISC)")).toBe("MIT AND ISC");
    // What holds together binds closer than a choice.
    expect(chosenLicense("GPL-2.0 AND MIT OR Apache-2.0 AND ISC")).toBe("Apache-2.0 AND ISC");
    expect(chosenLicense("GPL-2.0-only WITH Classpath-exception-2.0 OR MIT")).toBe("MIT");
  });

  test.each([["MIT OR"], ["(MIT"], ["MIT)"], ["MIT ISC"], ["OR MIT"], ["()"], ["MIT/X11"]])(
    "is none, where %j cannot be read",
    (expression) => {
      expect(chosenLicense(expression)).toBeUndefined();
    },
  );

  test.each([[{ type: "MIT" }], [["MIT"]], [null]])("is none, where %j is no text", (expression) => {
    expect(chosenLicense(expression)).toBeUndefined();
  });

  test.each([["GPL-3.0-only"], ["LGPL-2.1"], ["(MIT AND GPL-2.0)"], ["BUSL-1.1"], ["UNLICENSED"], [""], [undefined]])(
    "is none, where it says %j",
    (expression) => {
      expect(chosenLicense(expression)).toBeUndefined();
    },
  );
});
