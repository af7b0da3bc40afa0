import Qty from "js-quantities";
import { expect } from "vitest";
import { figure, type OutsideCheck } from "../../outside";

const NIST = "NIST Handbook 44, Appendix C: 1 yd = 0.9144 m exactly, seen";
const texts = ["32 ft", "6.5 in", "9.8 m", "75 mm", "40 cm", "2 yd", "123.456 m", "0.3 mm", "17.25 yd"];

export const checks: readonly OutsideCheck[] = [
  figure(NIST, (BED) => BED.FEET("0.9144 m"), 3),
  figure(NIST, (BED) => BED.FEET("2 yd"), 6),
  figure(NIST, (BED) => BED.FEET("9.8 m"), 9.8 / 0.3048),
  figure(NIST, (BED) => BED.FEET("40 cm"), 0.4 / 0.3048),
  figure(NIST, (BED) => BED.INCHES("25.4 mm"), 1),
  figure(NIST, (BED) => BED.INCHES("75 mm"), 75 / 25.4),
  figure(NIST, (BED) => BED.INCHES("2 yd"), 72),
  ...texts.map(
    (text) =>
      ({
        what: `${text} in feet and in inches`,
        source: "js-quantities",
        compare: (BED) => {
          expect(BED.FEET(text) / Qty(text).to("ft").scalar).toBeCloseTo(1, 9);
          expect(BED.INCHES(text) / Qty(text).to("in").scalar).toBeCloseTo(1, 9);
        },
      }) satisfies OutsideCheck,
  ),
  {
    what: "feet and inches together",
    source: "js-quantities",
    compare: (BED) => expect(BED.FEET(`32' 6 1/2"`)).toBeCloseTo(Qty("32 ft").add(Qty("6.5 in")).to("ft").scalar, 9),
  },
];
