import { digYards } from "../../quantities/digging";
import { may, needs } from "../argument";
import { area } from "../arguments";
import { declare } from "../declare";
import { feetOf } from "../native/arithmetic";
import { feetOrZero, inches, inchesOrZero } from "../read";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const DIG_YARDS = worksheetFunction(
  digYards,
  area,
  needs("depth_in", inches),
  may("trench_length", feetOrZero, 0),
  may("trench_width_in", inches, 4),
  may("trench_depth_in", inchesOrZero, 0),
);

export const digYardsDeclared = /* @__PURE__ */ declare(DIG_YARDS, {
  name: "DIG_YARDS",
  purpose: "Dig and haul",
  about: "Soil to dig, bank measure: the scrape plus the edging trench below it.",
  gives: "soil to dig, bank",
  returns: "Bank cubic yards (in the ground).",
  kind: "cu yd",
  rule: "Area times depth over 324 (a cubic yard covers 324 sq ft an inch deep), plus the trench.",
  example: "=BED.DIG_YARDS(400, 3) gives 3.7037",
  source: "27 cubic feet are a cubic yard (NIST Handbook 44, Appendix C). A trench 4 in wide: common practice.",
  related: ["SPOIL_YARDS", "LOADS"],
  arguments: {
    depth_in: { about: 'Scrape depth: inches, or text like 2 1/2".', usual: [1, 12], role: "scrape" },
    trench_length: { about: `Length of the edging trench: feet, or text like 26' 9". Default: 0.` },
    trench_width_in: { about: "Trench width: inches or text. Default: 4." },
    trench_depth_in: {
      about: 'Trench depth below the scrape: inches, or text like 1 1/2". Default: 0.',
      role: "trench depth",
    },
  },
  native: (area, depth, trench, wide, deep) => {
    const scrape = `${area.text}*${depth.text}/324`;
    if (trench.constant === 0 || deep.constant === 0) return { text: scrape };
    return { text: `${scrape}+${trench.text}*(${feetOf(wide)})*(${feetOf(deep)})/27` };
  },
  working: (answer, area, depth, length, wide, deep) => {
    const scrape = digYards(area, depth);
    const trench = answer - scrape;
    const lines = [`scrape: ${shown(area)} × ${shown(depth)} ÷ 324 = ${shown(scrape)} cu yd`];
    if (length * wide * deep > 0)
      lines.push(
        `trench: ${shown(length)} × ${shown(wide)}/12 × ${shown(deep)}/12 ÷ 27 = ${shown(trench)} cu yd`,
        `${shown(scrape)} + ${shown(trench)} = ${shown(answer)} cu yd bank`,
      );
    return lines;
  },
});
