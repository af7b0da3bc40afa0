import { spoilYards } from "../../quantities/digging";
import { may, needs } from "../argument";
import { declare } from "../declare";
import { withShare } from "../native/arithmetic";
import { positiveOrZero } from "../read";
import { soilSwell } from "../readNamed";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const SPOIL_YARDS = worksheetFunction(spoilYards, needs("bank_yards", positiveOrZero), may("soil", soilSwell));

export const spoilYardsDeclared = /* @__PURE__ */ declare(SPOIL_YARDS, {
  name: "SPOIL_YARDS",
  purpose: "Dig and haul",
  about: "Soil to haul: dug soil swells and takes more room than it did in the ground.",
  gives: "soil to haul, loose",
  returns: "Loose cubic yards.",
  kind: "cu yd",
  rule: "Soil takes more room once it is dug: the yards in the ground and its swell on top.",
  example: '=BED.SPOIL_YARDS(3.7037, "loam") gives 4.6296',
  source: "Swell of the soils by name: US Army FM 5-434 (2000), Table 1-1 (from memory).",
  related: ["DIG_YARDS", "LOADS"],
  arguments: {
    bank_yards: { about: "Cubic yards measured in the ground, as from BED.DIG_YARDS.", kind: "cu yd" },
    soil: { about: 'Swell such as 25%, or a soil: "sand", "loam", "clay", "blasted rock". Left out: "loam".' },
  },
  native: (bank, swell) => ({
    text: withShare(bank.text, swell),
    least: "0 or more",
  }),
  working: (answer, bank, swell) => [`${shown(bank)} × (1 + ${shown(swell)}) = ${shown(answer)} cu yd loose`],
});
