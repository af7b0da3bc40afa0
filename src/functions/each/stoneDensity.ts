import { needs } from "../argument";
import { declare } from "../declare";
import { stoneWeight } from "../readNamed";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const STONE_DENSITY = worksheetFunction((value) => value, needs("stone", stoneWeight));

export const stoneDensityDeclared = /* @__PURE__ */ declare(STONE_DENSITY, {
  name: "STONE_DENSITY",
  purpose: "Order stone",
  about: "Weight of a kind of stone, loose and dry. Your supplier's scale ticket beats any list.",
  gives: "stone weight",
  returns: "Tons per loose cubic yard.",
  kind: "tons/cu yd",
  rule: "From the stone list, loose and dry. Your supplier's scale ticket beats any list.",
  example: '=BED.STONE_DENSITY("river rock") gives 1.35',
  source: "The stone list; each row names its source and how sure it is.",
  related: ["STONE_TONS", "STONE_COVERS", "BARROW_TRIPS"],
  arguments: { stone: { about: 'A kind of stone, like "river rock" or "crushed limestone".', role: "density" } },
  native: (weight) => ({ text: weight.text }),
  working: (answer) => [`${shown(answer)} tons per loose cubic yard`],
});
