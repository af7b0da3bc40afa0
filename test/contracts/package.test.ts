import { describe, expect, test } from "vitest";
import { installGuide } from "../../src/packaging/installGuide.mjs";
import { fourParts, isHigher, readWishes } from "../../src/packaging/wishes.mjs";

describe("a package for the office", () => {
  test("takes an https origin, and the version in the four parts of a manifest", () => {
    expect(readWishes(["--origin", "https://tools.example", "--version", "1.4"], "0.1.0")).toEqual({
      origin: "https://tools.example",
      version: "1.4.0.0",
      from: undefined,
    });
    expect(readWishes(["--origin", "https://tools.example:8443/"], "0.1.0").origin).toBe("https://tools.example:8443");
  });

  test.each([
    [["--origin", "http://tools.example"], /not https/],
    [["--origin", "tools.example"], /not an address/],
    [["--origin", "https://tools.example/bedrow"], /has a path/],
    [["--origin", "https://tools.example/?a=1"], /has a path/],
    [["--origin", "https://localhost:3000"], /this machine alone/],
    [["--origin", "https://127.0.0.1"], /this machine alone/],
    [[], /Say where/],
    [["--origin"], /needs a value/],
    [["--origin", "--version"], /needs a value/],
    [["--folder", "x"], /not known/],
    [["--origin", "https://tools.example", "--version", "new"], /no version/],
  ])("refuses %j in words", (given, words) => {
    expect(() => readWishes(given, "0.1.0")).toThrow(words);
  });

  test("comes after the one before it", () => {
    expect(isHigher(fourParts("1.10"), fourParts("1.9.9"))).toBe(true);
    expect(isHigher("1.0.0.0", "1.0.0.0")).toBe(false);
    expect(isHigher("0.9.0.0", "1.0.0.0")).toBe(false);
  });

  test("has a guide that names its origin and runs no script", () => {
    const guide = installGuide({ origin: "https://tools.example", version: "1.4.0.0" });
    expect(guide).toContain("https://tools.example/pane.html");
    expect(guide).not.toMatch(/<script|javascript:| on\w+=/i);
  });
});
