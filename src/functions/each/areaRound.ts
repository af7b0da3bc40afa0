import { areaRound } from "../../quantities/area";
import { may, needs } from "../argument";
import { declare } from "../declare";
import { feet, feetOrZero } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const AREA_ROUND = worksheetFunction(areaRound, needs("diameter", feet), may("inner_diameter", feetOrZero, 0));

export const areaRoundDeclared = /* @__PURE__ */ declare(AREA_ROUND, {
  name: "AREA_ROUND",
  purpose: "Measure the bed",
  about: "Area of a round bed, or a ring around a tree.",
  gives: "area of a circle or ring",
  returns: "Square feet.",
  kind: "sq ft",
  rule: "π/4 times the diameter squared, minus the same for the open middle.",
  example: "=BED.AREA_ROUND(10, 3) gives 71.4712",
  source: "Plane geometry.",
  related: ["LAYOUT_ROUND", "STONE_TONS"],
  arguments: {
    diameter: { about: "Distance across the bed: feet, or text like 10'." },
    inner_diameter: { about: 'Distance across the open middle: feet, or text like 30". Default: 0.' },
  },
  native: (across, inner) => {
    if (inner.constant === 0) return { text: `PI()/4*${across.text}^2` };
    return {
      text: `PI()/4*(${across.text}+${inner.text})*(${across.text}-${inner.text})`,
      when: [[`${inner.text}<${across.text}`]],
    };
  },
  working: (answer, outer, inner) => {
    const squares = inner > 0 ? `(${shown(outer)}² − ${shown(inner)}²)` : `${shown(outer)}²`;
    return [`π/4 × ${squares} = ${shown(answer)} sq ft`];
  },
});
