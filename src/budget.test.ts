import { randomBytes } from "node:crypto";
import { describe, expect, test } from "vitest";
import { overweight } from "./budget.mjs";

describe("a file that loads with every workbook", () => {
  // Random bytes cannot be packed: they weigh what they are, and a little for the packing.
  test("may weigh what its budget says, packed", () => {
    expect(overweight("functions.js", randomBytes(24_000), 25)).toBeUndefined();
    expect(overweight("functions.js", Buffer.alloc(10_000_000), 25)).toBeUndefined();
  });

  test("fails the build, in words, where it weighs more", () => {
    expect(overweight("functions.js", randomBytes(26_000), 25)).toMatch(
      /^functions\.js is 26\.0\d kB packed, and the limit is 25: it loads with every workbook\. Move what/,
    );
  });

  test("fails the build where it is not there at all, so that a new name does not lose its budget", () => {
    expect(overweight("pane.js", undefined, 60)).toMatch(/^pane\.js has a budget of 60 kB but isn't built\./);
  });
});
