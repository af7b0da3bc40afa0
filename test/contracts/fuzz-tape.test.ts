import { describe, expect, test } from "vitest";
import { Problem } from "../../src/quantities/problem";
import { printTape, readTape } from "../../src/quantities/tape";
import { Chance } from "../fuzz/random";

const CALLS = 40_000;
/** What is in tape text, and what gets into it by typing error, other keyboards and copying. */
const PIECES = [
  ..."0123456789 '\"/-.,+x×°",
  ..."′″‘’“”´`½¼¾⅓⅔⅛⅜⅝⅞⁄−–‐‑",
  "''",
  "  ",
  "\u00a0",
  "\u200b",
  "\t",
  "\n",
  "٣",
  "１",
  "🪨",
  "\ud800",
  "e5",
  "NaN",
  ..."ft in yd m mm cm feet inches yards meter metres foot cows".split(" "),
  "12",
  "1/2",
  "18' 6\"",
  "9,8",
  "1,234",
];

const anyText = (chance: Chance) => chance.list(0, 12, () => chance.oneOf(PIECES)).join("");

/** The length a text says, or the message why it says none; anything else thrown is a fault. */
function read(text: string, unit: "ft" | "in"): number | string {
  try {
    return readTape(text, unit, "length");
  } catch (reason) {
    if (reason instanceof Problem) return reason.message;
    throw reason;
  }
}

describe("whatever text comes from a tape", () => {
  test("gives a length or a worded refusal that quotes it", () => {
    const chance = new Chance(3);
    let lengths = 0;
    for (let call = 0; call < CALLS; call++) {
      const text = anyText(chance);
      const length = read(text, "ft");
      if (typeof length === "number") {
        lengths++;
        if (!Number.isFinite(length) || Object.is(length, -0)) expect.fail(`“${text}” is read as ${length}`);
        // The same length in inches, to the last digits of the arithmetic; a bare number is in the argument's own unit.
        const inches = read(/['"a-zA-Z′″‘’“”´`]/.test(text) ? text : `${text} ft`, "in");
        // Feet and inches by a dash or a space are read where feet are typed only.
        const isShorthand = /^\s*[-\u2212\u2013]?\s*\d+[\s-]/.test(text) && typeof inches === "string";
        if (!isShorthand && Math.abs(Number(inches) - length * 12) > 1e-9 * Math.abs(length * 12))
          expect.fail(`“${text}” is ${length} ft, and ${inches} in`);
      } else if (!/^length: (?:can't read |in )?“/.test(length) || !length.endsWith(".")) {
        expect.fail(`“${text}” is refused as: ${length}`);
      }
    }
    // Both ways are taken often.
    expect(lengths).toBeGreaterThan(CALLS / 100);
    expect(lengths).toBeLessThan(CALLS / 2);
  });

  test("a length that is printed reads back, with any marks of any keyboard", () => {
    const chance = new Chance(5);
    const feet = ["'", "′", "’", " ft ", " feet ", "´"];
    const inches = ['"', "″", "”", "''", " in", " inches"];
    for (let call = 0; call < CALLS / 4; call++) {
      const sixteenths = chance.whole(1, 200_000);
      const printed = printTape(sixteenths / 192);
      const retyped = printed.replace("'", chance.oneOf(feet)).replace('"', chance.oneOf(inches));
      const again = read(retyped, "ft");
      if (Math.abs(Number(again) - sixteenths / 192) > 1e-9)
        expect.fail(`${printed} retyped as “${retyped}” is read as ${again}`);
    }
  });

  test("a long text is refused at once: it costs no more steps than a short one", () => {
    const chance = new Chance(9);
    for (let call = 0; call < 200; call++) {
      const text = Array.from({ length: 2000 }, () => chance.oneOf(PIECES)).join("");
      expect(read(text, "ft")).toMatch(/^length: can't read “[\s\S]{38,39}…”/);
    }
  });
});
