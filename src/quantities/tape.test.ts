import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Problem } from "./problem";
import { printTape, readTape } from "./tape";

/** The message of the Problem that a call throws. */
function refusal(call: () => unknown): string {
  try {
    call();
  } catch (reason) {
    if (reason instanceof Problem) return reason.message;
    throw reason;
  }
  throw new Error("nothing was refused");
}

describe("a text from the tape, read in feet", () => {
  // Feet and inches by hand: inches / 12. Metric: 1 in = 0.0254 m and 1 yd = 0.9144 m exactly (NIST Handbook 44).
  test.each([
    [`32' 6 1/2"`, 32 + 6.5 / 12],
    ["32 ft 6 in", 32.5],
    ["32ft6in", 32.5],
    ["32 ft. 6 in.", 32.5],
    [`6'-8"`, 6 + 8 / 12],
    [`6' - 8"`, 6 + 8 / 12],
    [`6'-8 1/2"`, 6 + 8.5 / 12],
    [`6'-8-1/2"`, 6 + 8.5 / 12],
    ["18'6", 18.5],
    [`18' 6`, 18.5],
    ["5 feet", 5],
    ["1 foot 1 inch", 13 / 12],
    ["5 Feet, 6 Inches", 5.5],
    ["18′ 6″", 18.5],
    ["18’ 6”", 18.5],
    ["18' 6''", 18.5],
    [`18'6½"`, 18 + 6.5 / 12],
    [`½"`, 0.5 / 12],
    ["6 1/2", 6.5],
    ["6½", 6.5],
    ["6-1/2", 6.5],
    ["6 3⁄4", 6.75],
    [`18"`, 1.5],
    ["18 in", 1.5],
    ["7.25", 7.25],
    [".5", 0.5],
    ["6.1 ft", 6.1],
    ["2 yd", 6],
    ["2 yards 1 ft 6 in", 7.5],
    ["9.8 m", 9.8 / 0.3048],
    ["9,8 m", 9.8 / 0.3048],
    ["75 mm", 0.075 / 0.3048],
    ["40 cm", 0.4 / 0.3048],
    ["1 m 20 cm", 1.2 / 0.3048],
    ["2 metres", 2 / 0.3048],
    ["0,125 m", 0.125 / 0.3048],
    ["1,234.5 ft", 1234.5],
    ["  5' ", 5],
    ["5\u00a0ft", 5],
    [`0"`, 0],
    ["-3' 6\"", -3.5],
    ["- 3' 6\"", -3.5],
    ["2 yds", 6],
    ["1 yard 2 ft", 5],
    ["2 meters", 2 / 0.3048],
    ["1 metre", 1 / 0.3048],
    ["1 meter 5 mm", 1.005 / 0.3048],
    ["5 cm 5 mm", 0.055 / 0.3048],
    [" 5 ft", 5],
    ["6  1/2", 6.5],
    ["6\t1/2", 6.5],
    ["18-6", 18.5],
    ["28-0", 28],
    ["18 6", 18.5],
    ["18 - 6", 18.5],
    ["18\u20136", 18.5],
    [`18-6"`, 18.5],
    [`18-6 1/2"`, 18 + 6.5 / 12],
    ["18-6-1/2", 18 + 6.5 / 12],
    ["6-11¾", 6 + 11.75 / 12],
    ["4ft6", 4.5],
    ["4 lf", 4],
    ["6-½", 6.5],
    [`⅙"`, 1 / 72],
    [`3/4'`, 0.75],
    ["5 ft. 6", 5.5],
    ["5 ft .5 in", 5 + 0.5 / 12],
    ["11/16 ft", 0.6875],
    ["6″", 0.5],
    ["6''", 0.5],
    [`${" ".repeat(56)}5 ft`, 5],
    ["\u22123.5", -3.5],
  ])("%s", (text, feet) => {
    expect(readTape(text, "ft")).toBeCloseTo(feet, 12);
  });

  test("no length is less than none", () => {
    expect(readTape("-0", "ft")).toBe(0);
    expect(readTape("-0 in", "ft")).toBe(0);
  });

  test("a number in the asked unit keeps every digit", () => {
    expect(readTape("6.1 ft", "ft")).toBe(6.1);
    expect(readTape("6.1", "in")).toBe(6.1);
    expect(readTape("0.9", "ft")).toBe(0.9); // 0.9 × 3048 ÷ 3048 is 0.8999999999999999 in binary
    expect(readTape(`73.3"`, "in")).toBe(73.3);
  });
});

describe("a text from the tape, read in inches", () => {
  test.each([
    ["4", 4],
    ["2 1/2", 2.5],
    ["¼", 0.25],
    ["½", 0.5],
    ["¾", 0.75],
    ["⅓", 1 / 3],
    ["⅔", 2 / 3],
    ["⅛", 0.125],
    ["⅜", 0.375],
    ["⅝", 0.625],
    ["2⅞", 2.875],
    [`4"`, 4],
    ["1 ft", 12],
    [`1' 2"`, 14],
    ["75 mm", 75 / 25.4],
    ["10,16 cm", 4],
    ["1 yd", 36],
  ])("%s", (text, inches) => {
    expect(readTape(text, "in")).toBeCloseTo(inches, 12);
  });
});

describe("a text that cannot be read is refused with the text in the message", () => {
  test.each([
    "twelve",
    "12 cows",
    "1/0",
    "0/0",
    "6 3/2",
    "1 4/4",
    "2 yd 6",
    "2 cm 6",
    "x6",
    "6 1/0",
    "18-6'",
    "18-6 ft",
    "18.5-6",
    "18-6-2",
    "18, 6",
    "18--6",
    "18-6-",
    "5'.5",
    "5ft.5",
    "6 constructor",
    "6' 6'",
    `6" 6'`,
    `6.5' 3"`,
    "1 m 20",
    "1 m 2 in",
    "6'-",
    "6'--8",
    "1.2.3",
    "1.200,5",
    "1e3",
    "+5",
    "'",
    "ft",
    "",
    "-",
    "5' 6\" extra",
    "#VALUE!",
    "NaN",
    "Infinity",
    "6inch7",
  ])("%s", (text) => {
    expect(refusal(() => readTape(text, "ft", "width"))).toContain(`width: can't read “${text}” as a length. Try`);
  });

  test("a comma before three digits could be a thousands comma, and is asked about", () => {
    expect(refusal(() => readTape("1,200 m", "ft"))).toContain("could be 1200 or 1.200.");
    expect(refusal(() => readTape("1,200", "ft"))).toContain("could be 1200 or 1.200.");
  });

  test("a comma before what may be inches is asked about", () => {
    expect(refusal(() => readTape("18,6", "ft", "width"))).toBe(
      "width: “18,6” could be 18.6 or 18' 6\". Type the one you mean.",
    );
    expect(refusal(() => readTape("4,11", "in"))).toContain("could be 4.11 or 4' 11\".");
    expect(readTape("18,75", "ft")).toBe(18.75);
  });

  test("a fraction by itself is asked about where feet are typed, and is inches where inches are", () => {
    expect(refusal(() => readTape("3/4", "ft", "width"))).toBe(
      "width: “3/4” could be 3/4\" or 3/4'. Type the one you mean.",
    );
    expect(refusal(() => readTape("½", "ft"))).toContain(`could be 1/2" or 1/2'`);
    expect(readTape("3/4", "in")).toBe(0.75);
  });

  test("two numbers are feet and inches where feet are typed, and refused where inches are: they may be a range", () => {
    for (const text of ["4-6", "4 6", `4-6"`])
      expect(refusal(() => readTape(text, "in", "depth"))).toContain(`depth: can't read “${text}” as a length`);
    expect(refusal(() => readTape("18-12", "ft"))).toContain("has 12 in or more");
    expect(refusal(() => readTape("18 14", "ft"))).toContain("has 12 in or more");
  });

  test("inches after feet stay under 12, as on a tape: more is taken for a mistake", () => {
    expect(refusal(() => readTape(`5' 14"`, "ft"))).toContain("has 12 in or more");
    expect(refusal(() => readTape(`5' 12"`, "ft"))).toContain("has 12 in or more");
    expect(refusal(() => readTape("1 yd 3 ft", "ft"))).toContain("has 3 ft or more");
    expect(refusal(() => readTape("1 yd 36 in", "ft"))).toContain("has 36 ");
    expect(readTape("1 yd 35.5 in", "in")).toBeCloseTo(71.5, 12);
    expect(refusal(() => readTape("1 m 100 cm", "ft"))).toContain("has 100 ");
    expect(refusal(() => readTape("1 m 1000 mm", "ft"))).toContain("has 1000 ");
    expect(refusal(() => readTape("5 cm 10 mm", "ft"))).toContain("has 10 ");
    expect(readTape(`5' 11 15/16"`, "ft")).toBeCloseTo(5 + 11.9375 / 12, 12);
  });

  test("a very long text is refused without being worked through", () => {
    expect(refusal(() => readTape("9".repeat(500), "ft"))).toContain("…”");
    expect(refusal(() => readTape(`${" ".repeat(57)}5 ft`, "ft"))).toContain("as a length");
  });
});

describe("a length as printed for the tape", () => {
  test.each([
    [32 + 6.5 / 12, `32' 6 1/2"`],
    [18, "18'"],
    [18.5, `18' 6"`],
    [7 / 16 / 12, `7/16"`],
    [0.5, `6"`],
    [0, `0"`],
    [-3.5, `-3' 6"`],
    [9.8 / 0.3048, `32' 1 13/16"`], // 9.8 m = 385.827 in; 385 13/16 in is the nearest sixteenth
    [0.9999, "1'"],
    [0.0001, `0"`],
    [-0.0001, `0"`],
  ])("%d ft", (feet, text) => {
    expect(printTape(feet)).toBe(text);
  });

  test("may be a thousand million feet", () => {
    expect(printTape(1e9)).toBe("1000000000'");
  });

  test("what no tape can show is refused", () => {
    for (const feet of [Number.NaN, Number.POSITIVE_INFINITY, 1e12]) expect(() => printTape(feet)).toThrow(Problem);
  });

  test("any printed text reads back to the same sixteenth of an inch", () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (feet) => {
        const text = printTape(feet);
        const back = readTape(text, "ft");
        expect(Math.abs(back - feet)).toBeLessThanOrEqual(0.5 / 16 / 12 + 1e-9);
        expect(printTape(back)).toBe(text);
        expect(readTape(text, "in")).toBeCloseTo(back * 12, 6);
      }),
    );
  });

  test("any text at all is read as a number or refused with words", () => {
    const pieces = fc.constantFrom("1", "12", "'", '"', "ft", " in", " ", "/", "-", ",", ".", "½", "m", "yd", "x", "0");
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(pieces, { maxLength: 8 }).map((all) => all.join("")),
        ),
        (text) => {
          try {
            expect(Number.isFinite(readTape(text, "ft"))).toBe(true);
          } catch (reason) {
            expect(reason).toBeInstanceOf(Problem);
          }
        },
      ),
      { numRuns: 1000 },
    );
  });
});
