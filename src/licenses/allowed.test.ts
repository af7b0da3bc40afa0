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

  test.each([["GPL-3.0-only"], ["LGPL-2.1"], ["(MIT AND GPL-2.0)"], ["BUSL-1.1"], ["UNLICENSED"], [""], [undefined]])(
    "is none, where it says %j",
    (expression) => {
      expect(chosenLicense(expression)).toBeUndefined();
    },
  );
});
