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
  about: "Soil to haul, loose: dug soil swells and takes more room than in the ground.",
  gives: "soil to haul, loose",
  returns: "Loose cubic yards.",
  kind: "cu yd",
  rule: "Bank yards times 1 + swell, since soil takes more room once it's dug.",
  example: '=BED.SPOIL_YARDS(3.7037, "loam") gives 4.6296',
  source: "Swell of the soils by name: US Army FM 5-434 (2000), Table 1-1 (from memory).",
  related: ["DIG_YARDS", "LOADS"],
  arguments: {
    bank_yards: { about: "Bank cubic yards, from BED.DIG_YARDS.", kind: "cu yd" },
    soil: { about: 'Swell, like 25%, or a soil: "sand", "loam", "clay", "blasted rock". Default: "loam".' },
  },
  native: (bank, swell) => ({
    text: withShare(bank.text, swell),
    least: "0 or more",
  }),
  working: (answer, bank, swell) => [`${shown(bank)} × (1 + ${shown(swell)}) = ${shown(answer)} cu yd loose`],
});
