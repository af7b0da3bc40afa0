import { fields } from "../../quantities/bed/fields";
import { rateNames } from "../../quantities/bed/rates";
import { columnLetters } from "../../spreadsheet/areas";
import { type FittedColumn, holdsPercents } from "./fit";
import type { ListRow } from "./listRows";
import { namesProducts, productLists, takenColumns } from "./products";
import { results } from "./results";
import type { ResultRole, Role } from "./roles";
import { type Assumed, type ListSetting, rate } from "./setting";

/** What the formulas of a list take for granted, in words, so that nothing of it is a surprise. */
export function assumptions(
  setting: ListSetting,
  fitted: readonly FittedColumn[],
  roles: readonly ResultRole[],
  beds: readonly ListRow[],
): string[] {
  const { columns, assumed } = setting;
  const wants = (...some: ResultRole[]) => some.some((role) => roles.includes(role));
  const lacks = (role: Role) => !columns.has(role);
  const hidden = beds.filter((bed) => bed.hidden).length;
  const weighs = wants("yards", "tons", "orderSold", "order", "deliveries");
  return [
    ...fitted.flatMap(columnWords),
    ...(weighs && lacks("depth") ? [`No stone depth column: every bed gets ${assumed.depthIn} in.`] : []),
    ...(wants("tons", "orderSold", "order", "deliveries", "stonePrice", "soldPrice", "density", "hours") &&
    lacks("stone")
      ? [`No stone column: every bed gets ${assumed.stone}.`]
      : []),
    ...(weighs && lacks("waste") ? [wasteWords(setting)] : []),
    ...(wants("dig", "spoilLoads") && lacks("scrape") ? [`Scrape depth is ${assumed.scrapeIn} in.`] : []),
    ...(wants("border") || (wants("pieces", "stakes", "dig", "spoilLoads") && !setting.shown.has("border"))
      ? [`Edging runs along ${borderWords(assumed)}.`]
      : []),
    ...(roles.some((role) => takenColumns(role, setting).length > 0) ? productWords(setting) : []),
    ...(columns.has("edgingKind")
      ? [
          ...kindWords(wants("dig", "spoilLoads") && lacks("scrape")),
          ...(wants("materialCost") ? pricedWords(setting) : []),
        ]
      : []),
    ...(columns.has("soldBy") && wants("orderSold", "order", "materialCost")
      ? soldWords(setting, wants("materialCost"))
      : []),
    ...(setting.typesEdging && wants("pieces", "stakes") ? [typedEdgingWords(assumed)] : []),
    ...(lacks("radius") !== lacks("corners")
      ? ["Corners are square unless there's a radius and a number of rounded corners."]
      : []),
    ...(wants("deliveries", "orderSold", "order", "boxes", "rolls", "pieces")
      ? ["Quantities are rounded up bed by bed. Ordering the whole job together may take less."]
      : []),
    ...(hidden > 0
      ? [`${hidden} of the rows ${hidden === 1 ? "is" : "are"} hidden or filtered, and filled in too.`]
      : []),
    ...roles
      .filter((role) => ["rolls", "pins", "price", "hours"].includes(role))
      .map((role) => `${results[role].heading}: ${results[role].note}.`),
  ];
}

function columnWords({ column, heading, role, unit, facts }: FittedColumn): string[] {
  const name = `${columnLetters(column)} ${heading}`.trim();
  if (role === "waste") {
    return holdsPercents({ ...(unit && { unit }), facts }) ? [`${name}: 8 and 8% both mean 8 percent.`] : [];
  }
  if (!role || !unit || facts.tape === 0) return [];
  return [`${name}: plain numbers are ${unit}; text is read in its own unit, such as 9.8 m or 6'-8".`];
}

function wasteWords(setting: ListSetting): string {
  const { rates, assumed } = setting;
  const followed = assumed.waste === undefined && rates.has("waste");
  const share = assumed.waste ?? Number(rate(setting, "waste"));
  const taken = followed ? `your rate, ${rateNames.waste},` : `${Number((share * 100).toFixed(4))}%`;
  return `No waste column: every bed gets ${taken}.`;
}

/** What is taken from the products that rows name. */
function productWords(setting: ListSetting): string[] {
  const named = productLists.filter((list) => namesProducts(setting, list)).join(" and ");
  return [
    `Sizes and prices of ${named} are those of each row's product in Rates. A row without a product, and what its product leaves blank, has your usual rates.`,
  ];
}

/** Which kinds of edging have a price. */
function pricedWords(setting: ListSetting): string[] {
  const { sandCost, edgingProduct } = fields;
  if (namesProducts(setting, "edging"))
    return [
      `Plastic, pavers, and timber are priced by their product: without one that has prices in Rates, a row has no material cost. Sand under pavers is $${sandCost.initial} ${sandCost.unit}.`,
    ];
  if (setting.products?.edging)
    return [
      `Your single rates are for metal. To price plastic, pavers, and timber, add a column ${edgingProduct.label} with names from Rates: without it, those rows have no material cost.`,
    ];
  return ["Your rates have no price for plastic, pavers, or timber, so those rows have no material cost."];
}

/** What is taken for the kinds of edging that rows name. */
function kindWords(scrapes: boolean): string[] {
  return [
    "A row without an edging kind has metal. Other kinds have their usual sizes and paces.",
    ...(scrapes
      ? [`With a spade-cut edge or no edging, the scrape is ${fields.topGap.initial} in deeper than the stone.`]
      : []),
  ];
}

const STONE_LIST = "Stone by kind in Rates";

/** What is taken for what rows say that stone is sold by. */
function soldWords({ stonesHaveUnits }: ListSetting, prices: boolean): string[] {
  const [bag, bulk] = [fields.bagSize, fields.bulkBagSize].map(({ initial, unit }) => `${initial} ${unit}`);
  return [
    `A row that doesn't say what its stone is sold by is in tons. A bag is ${bag}, and a bulk bag ${bulk}.`,
    ...(stonesHaveUnits
      ? [
          `Increment and minimum come from ${STONE_LIST} where it sells the stone by the row's unit, and from your single rates for other stone by the ton. Any other unit has its usual ones.`,
        ]
      : []),
    ...(prices
      ? [
          stonesHaveUnits
            ? `So does the price. Where ${STONE_LIST} has none by the row's unit, type it under Stone price, as sold: without it, the row has no material cost.`
            : "Your rates are by the ton. Type the price of any other unit under Stone price, as sold: without it, the row has no material cost.",
        ]
      : []),
  ];
}

/** How edging is counted of which only the length is known, since it was typed. */
function typedEdgingWords({ longBorders, shortBorders }: Assumed): string {
  const runs =
    longBorders + shortBorders === 4
      ? "one run all around"
      : Math.abs(longBorders - shortBorders) === 2
        ? "two runs of the same length"
        : "one run";
  const corners = longBorders * shortBorders;
  return `Edging is as typed, so where it runs isn't known: ${runs}, with stakes for ${corners} corner${corners === 1 ? "" : "s"}.`;
}

/** Which sides of a bed have a border, in words. */
export function borderWords({ longBorders, shortBorders }: Pick<Assumed, "longBorders" | "shortBorders">): string {
  const long = ["", "one long side", "both long sides"][longBorders] ?? "";
  const short = ["", "one end", "both ends"][shortBorders] ?? "";
  return [long, short].filter(Boolean).join(" and ") || "no side";
}
