import { needs } from "../argument";
import { declare } from "../declare";
import { measureInInches } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const INCHES = worksheetFunction((value) => value, needs("measure", measureInInches));

export const inchesDeclared = /* @__PURE__ */ declare(INCHES, {
  name: "INCHES",
  purpose: "Read tape measurements",
  about: "A tape measurement in decimal inches.",
  gives: "a measurement in inches",
  returns: "Inches.",
  kind: "in",
  rule: "Converts a tape measurement to decimal inches; a bare number is already inches.",
  example: `=BED.INCHES("1' 2 1/2""") gives 14.5`,
  source: "Exact units: an inch is 0.0254 m (NIST Handbook 44, Appendix C).",
  related: ["FEET"],
  arguments: { measure: { about: `Text like 1' 2 1/2", 75 mm, or 40 cm, or a number in inches.` } },
  native: (taped) => ({ text: taped.text, least: taped.least }),
  working: (answer) => [`${shown(answer)} in`],
});
