import { needs } from "../argument";
import { declare } from "../declare";
import { stoneWeight } from "../readNamed";
import { shown } from "../working";
import { worksheetFunction } from "../worksheetFunction";

export const STONE_DENSITY = worksheetFunction((value) => value, needs("stone", stoneWeight));

export const stoneDensityDeclared = /* @__PURE__ */ declare(STONE_DENSITY, {
  name: "STONE_DENSITY",
  purpose: "Order stone",
  about: "Weight of a kind of stone, loose and dry. The supplier's scale ticket beats every table.",
  gives: "weight of a stone",
  returns: "Short tons a loose cubic yard.",
  kind: "tons/cu yd",
  rule: "From the table of common stone, loose and dry. The supplier's scale ticket beats every table.",
  example: '=BED.STONE_DENSITY("river rock") gives 1.35',
  source: "The table of stone, where each row names its source and how sure it is.",
  related: ["STONE_TONS", "STONE_COVERS", "BARROW_TRIPS"],
  arguments: { stone: { about: 'A kind of stone, such as "river rock" or "crushed limestone".', role: "density" } },
  native: (weight) => ({ text: weight.text }),
  working: (answer) => [`${shown(answer)} short tons a loose cubic yard`],
});
