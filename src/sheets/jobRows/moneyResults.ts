import { rateNames } from "../../quantities/bed/rates";
import { followingFormula } from "../estimate/rateFormulas";
import { stoneArgument } from "./inputs";
import { type Result, result, withStone } from "./result";
import type { ResultRole } from "./roles";
import { guarded } from "./setting";

/** What a bed costs and is sold for, at the office's rates: without them, nothing. */
export const moneyResults = {
  stonePrice: result(
    "Stone price a ton",
    "money",
    "stone",
    "by kind, else that of any other stone",
    ({ setting, row }) => withStone(followingFormula("stoneCost"), stoneArgument(setting, row)),
    { rates: ["stoneCost"] },
  ),
  materialCost: result(
    "Material cost",
    "money",
    "sides",
    "stone, border, stakes, fabric and pins at the office's rates",
    ({ of }) => {
      const { pieceCost, stakeCost, rollCost, pinBoxCost } = rateNames;
      return guarded(
        ["pieceCost", "stakeCost", "rollCost", "pinBoxCost"],
        `${of("order")}*${of("stonePrice")}+${of("pieces")}*${pieceCost}+${of("stakes")}*${stakeCost}+${of("rolls")}*${rollCost}+${of("boxes")}*${pinBoxCost}`,
        [of("stonePrice")],
      );
    },
    {
      columns: ["order", "stonePrice", "pieces", "stakes", "rolls", "boxes"],
      rates: ["stoneCost", "pieceCost", "stakeCost", "rollCost", "pinBoxCost"],
    },
  ),
  laborCost: result(
    "Labor cost",
    "money",
    "sides",
    "crew hours at the crew rate",
    ({ of }) => guarded(["crewRate"], `${of("hours")}*${rateNames.crewRate}`),
    { columns: ["hours"], rates: ["crewRate"] },
  ),
  haulingCost: result(
    "Hauling cost",
    "money",
    "area",
    "spoil with its dump fee, and deliveries",
    ({ of }) => {
      const { haulCost, dumpFee, deliveryCost } = rateNames;
      return guarded(
        ["haulCost", "dumpFee", "deliveryCost"],
        `${of("spoilLoads")}*(${haulCost}+${dumpFee})+${of("deliveries")}*${deliveryCost}`,
      );
    },
    { columns: ["spoilLoads", "deliveries"], rates: ["haulCost", "dumpFee", "deliveryCost"] },
  ),
  price: result(
    "Price before tax",
    "money",
    "sides",
    "with markups and overhead, before the smallest job charge",
    ({ of }) => {
      const { materialMarkup, laborMarkup, haulingMarkup, overhead } = rateNames;
      const costs = [of("materialCost"), of("laborCost"), of("haulingCost")];
      const marked = [materialMarkup, laborMarkup, haulingMarkup].map((name, index) => `${costs[index]}*(1+${name})`);
      return guarded(
        ["materialMarkup", "laborMarkup", "haulingMarkup", "overhead"],
        `ROUND(${marked.join("+")}+(${costs.join("+")})*${overhead},2)`,
      );
    },
    {
      columns: ["materialCost", "laborCost", "haulingCost"],
      rates: ["materialMarkup", "laborMarkup", "haulingMarkup", "overhead"],
    },
  ),
} as const satisfies Partial<Record<ResultRole, Result>>;
