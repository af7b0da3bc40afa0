import { needs } from "../argument";
import { declare } from "../declare";
import { measureInInches } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const INCHES = worksheetFunction((value) => value, needs("measure", measureInInches));

export const inchesDeclared = /* @__PURE__ */ declare(INCHES, {
  name: "INCHES",
  purpose: "Read the tape",
  about: "A measure from the tape in decimal inches.",
  gives: "a measure in inches",
  returns: "Inches.",
  kind: "in",
  rule: "A measure from the tape as decimal inches; a bare number is inches already.",
  example: `=BED.INCHES("1' 2 1/2""") gives 14.5`,
  source: "Exact units: an inch is 0.0254 m (NIST Handbook 44, Appendix C).",
  related: ["FEET"],
  arguments: { measure: { about: `Text such as 1' 2 1/2", 75 mm or 40 cm, or a number, which is inches.` } },
  native: (taped) => ({ text: taped.text, least: taped.least }),
  working: (answer) => [`${shown(answer)} in`],
});
