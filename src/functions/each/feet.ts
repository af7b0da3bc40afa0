import { needs } from "../argument";
import { declare } from "../declare";
import { measureInFeet } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const FEET = worksheetFunction((value) => value, needs("measure", measureInFeet));

export const feetDeclared = /* @__PURE__ */ declare(FEET, {
  name: "FEET",
  purpose: "Read tape measurements",
  about: "A tape measurement in decimal feet.",
  gives: "a measurement in feet",
  returns: "Feet.",
  kind: "ft",
  rule: "Converts a tape measurement to decimal feet; a bare number is already feet.",
  example: `=BED.FEET("32' 6 1/2""") gives 32.5417`,
  source: "Exact units: a foot is 0.3048 m (NIST Handbook 44, Appendix C).",
  related: ["INCHES"],
  arguments: { measure: { about: `Text like 32' 6 1/2", 18-6, 9.8 m, or 75 mm, or a number in feet.` } },
  native: (taped) => ({ text: taped.text, least: taped.least }),
  working: (answer) => [`${shown(answer)} ft`],
});
