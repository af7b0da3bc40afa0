import { needs } from "../argument";
import { declare } from "../declare";
import { measureInFeet } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const FEET = worksheetFunction((value) => value, needs("measure", measureInFeet));

export const feetDeclared = /* @__PURE__ */ declare(FEET, {
  name: "FEET",
  purpose: "Read the tape",
  about: "A measure from the tape in decimal feet.",
  gives: "a measure in feet",
  returns: "Feet.",
  kind: "ft",
  rule: "A measure from the tape as decimal feet; a bare number is feet already.",
  example: `=BED.FEET("32' 6 1/2""") gives 32.5417`,
  source: "Exact units: a foot is 0.3048 m (NIST Handbook 44, Appendix C).",
  related: ["INCHES"],
  arguments: { measure: { about: `Text such as 32' 6 1/2", 9.8 m or 75 mm, or a number, which is feet.` } },
  native: (taped) => ({ text: taped.text, least: taped.least }),
  working: (answer) => [`${shown(answer)} ft`],
});
