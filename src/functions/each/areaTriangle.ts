import { areaTriangle } from "../../quantities/area";
import { needs } from "../argument";
import { declare } from "../declare";
import { feet } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const AREA_TRIANGLE = worksheetFunction(
  areaTriangle,
  needs("side_a", feet),
  needs("side_b", feet),
  needs("side_c", feet),
);

export const areaTriangleDeclared = /* @__PURE__ */ declare(AREA_TRIANGLE, {
  name: "AREA_TRIANGLE",
  purpose: "Measure the bed",
  about: "Area of a triangular bed from its three sides.",
  gives: "area of a triangle",
  returns: "Square feet.",
  kind: "sq ft",
  rule: "By Heron's formula: s is half the sum of the sides, and the area is √(s(s − a)(s − b)(s − c)).",
  example: "=BED.AREA_TRIANGLE(3, 4, 5) gives 6",
  source: "Heron's formula, as W. Kahan writes it for thin triangles (Miscalculating Area of a Needle-like Triangle).",
  related: ["AREA_POINTS", "AREA_RECTANGLE"],
  arguments: {
    side_a: { about: `First side: feet, or text like 10' 6".` },
    side_b: { about: "Second side: feet, or text like 15'." },
    side_c: { about: `Third side: feet, or text like 7' 3".` },
  },
  native: (...sides) => {
    const all = sides.map(({ text }) => text).join(",");
    const [longest, middle, shortest] = [`MAX(${all})`, `MEDIAN(${all})`, `MIN(${all})`];
    const spare = `(${shortest}-(${longest}-${middle}))`;
    const product = `(${longest}+(${middle}+${shortest}))*${spare}*(${shortest}+(${longest}-${middle}))*(${longest}+(${middle}-${shortest}))`;
    return { text: `SQRT(${product})/4`, when: [[`${spare}>${FLAT}*${longest}`]] };
  },
  working: (answer, a, b, c) => {
    const half = (a + b + c) / 2;
    const factors = [half, half - a, half - b, half - c].map(shown).join(" × ");
    return [
      `s = (${shown(a)} + ${shown(b)} + ${shown(c)}) ÷ 2 = ${shown(half)}`,
      `√(${factors}) = ${shown(answer)} sq ft`,
    ];
  },
});

/** A triangle flatter than this share of its longest side encloses nothing. */
const FLAT = "1E-12";
