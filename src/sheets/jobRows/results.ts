import { conversion } from "../../headings/units";
import { liesAlong } from "../../quantities/bed/amounts";
import { quoted } from "../../quantities/bed/evaluate";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import { LAYOUT_COLUMNS } from "../../quantities/bed/inPlan";
import { type RateKey, rateNames } from "../../quantities/bed/rates";
import { hasPieces, METAL } from "../../quantities/edgingKinds";
import { TON } from "../../quantities/soldBy";
import { cellAddress } from "../../spreadsheet/areas";
import { followingFormula, NO_RATE, stoneWeightFormula } from "../estimate/rateFormulas";
import type { FormatName } from "../plan";
import {
  byEdging,
  edgingRule,
  fastenersOf,
  piecesOf,
  productPrice,
  productSize,
  sandOf,
  scrapeDepth,
  settingHours,
  stoneDepth,
  trenchOf,
} from "./edging";
import { namesProducts, ofProduct, without } from "./products";
import { ownUnit, type ResultRole, resultLabels } from "./roles";
import {
  cornerArguments,
  decimalFeet,
  guarded,
  type ListSetting,
  lengthArgument,
  type Row,
  rate,
  stoneArgument,
  wasteArgument,
} from "./setting";
import { bySold, ofStone, orderAsSold, priceAsSold, tonsAsSold } from "./sold";

/** How one result of a bed is worked out from its row. */
export interface Result {
  /** The heading of a new column; it reads back as this result. */
  readonly heading: string;
  readonly format: FormatName;
  /** What a bed's row must tell; area and border may be in a column of their own instead. */
  readonly needs: "area" | "border" | "sides" | "stone" | "nothing";
  /** Results that have to be in columns of their own, so that the formula can be read. */
  readonly columns: readonly ResultRole[];
  /** Rates without which it would rest on invented prices or paces. */
  readonly rates: readonly RateKey[];
  readonly formula: (row: Row) => string;
  /** What it is, and what is taken for granted, for the person. */
  readonly note: string;
}

const result = (
  heading: string,
  format: FormatName,
  needs: Result["needs"],
  note: string,
  formula: Result["formula"],
  more: Partial<Pick<Result, "columns" | "rates">> = {},
): Result => ({ heading, format, needs, note, formula, columns: [], rates: [], ...more });

const initial = (key: FieldKey) => fields[key].initial;

const sides = (at: Row) => bothWays(at)[0];
/** Length and width as two arguments, and the other way round. */
const bothWays = ({ setting, row }: Row): readonly [string, string] => {
  const [length, width] = [lengthArgument(setting, "length", row, "ft"), lengthArgument(setting, "width", row, "ft")];
  return [`${length},${width}`, `${width},${length}`];
};
const density = ({ setting, row, of }: Row) => {
  return setting.shown.has("density") || setting.weighsStone
    ? of("density")
    : `BED.STONE_DENSITY(${stoneArgument(setting, row)})`;
};
/** Weighed stone, where the office has weighed any, else the kind by its name. */
const stone = ({ setting, row, of }: Row) => {
  return setting.shown.has("density") || setting.weighsStone ? of("density") : stoneArgument(setting, row);
};
const times = (count: number, what: string | undefined) => (count === 1 ? String(what) : `${count}*${what}`);

const isClosed = ({ longBorders, shortBorders }: ListSetting["assumed"]) => longBorders + shortBorders === 4;
const closing = ({ assumed }: ListSetting) => (isClosed(assumed) ? ",TRUE" : "");
/** Edging along two opposite sides alone is two runs; anything else of a rectangle is one. */
const runsOf = ({ longBorders, shortBorders }: ListSetting["assumed"]) =>
  Math.abs(longBorders - shortBorders) === 2 ? 2 : 1;
const halved = (run: string, runs: number) => (runs === 1 ? run : `${run}/${runs}`);

/**
 * A count of a bed with rounded corners on its layout in plan, as its estimate has it; undefined for plain rectangles.
 *
 * @param kind what it's edged with, where that matters.
 */
function laid(at: Row, column: keyof typeof LAYOUT_COLUMNS, kind = METAL): string | undefined {
  const { setting, row } = at;
  const round = cornerArguments(setting, row);
  if (!round) return undefined;
  const { longBorders, shortBorders } = setting.assumed;
  const list = `BED.LAYOUT_RECTANGLE(${sides(at)},${round.radius},${round.corners},${rollRule(at)},,,,,,${edgingRule(at, kind)},${longBorders},${shortBorders})`;
  return `INDEX(${list},2,${LAYOUT_COLUMNS[column]})`;
}

/** A count of edging on the layout; of edging that was typed it isn't known where it runs. */
const laidEdging = (at: Row, column: "edgingFt" | "pieces" | "stakes", kind = METAL) =>
  at.setting.typesEdging ? undefined : laid(without("fabric", at), column, kind);

/** A count of fabric or pins for strips that lie as in the estimate of the bed: on its layout, or by the rule. */
function alongStrips(at: Row, column: "fabricSqFt" | "pins", count: (sides: string) => string): string {
  const onPlan = laidFabric(at, column);
  if (onPlan) return onPlan;
  const { setting, row } = at;
  const [length, width] = [decimalFeet(setting, "length", row), decimalFeet(setting, "width", row)];
  const [along, across] = bothWays(at);
  return `IF(${liesAlong(`${length}<${width}`, along, across, rollRule(at))},${count(along)},${count(across)})`;
}

/** A count of fabric or pins on the layout. */
const laidFabric = (at: Row, column: "fabricSqFt" | "pins" | "rolls") => laid(without("edging", at), column);

type RollSize = "rollWidth" | "rollLength";
/** A size of the rolls: of the row's product, or the office's. */
const rollSize = ({ setting, of }: Row, key: RollSize, blankMatters = false) =>
  namesProducts(setting, "fabric") ? of(key) : rate(setting, key, blankMatters);
const productRoll = (at: Row, key: RollSize) => ofProduct(at, "fabric", key, rate(at.setting, key, true));

const rollRule = (at: Row) => `${rollSize(at, "rollWidth")},${rollSize(at, "rollLength")},${initial("overlap")}`;

/** The long and the short side of a bed in feet, whichever way round they were taped. */
function longAndShort({ setting, row }: Row): { long: string; short: string } {
  const [length, width] = [decimalFeet(setting, "length", row), decimalFeet(setting, "width", row)];
  // A list of one side a bed tells the long one.
  if (width === undefined) return { long: String(length), short: "" };
  return { long: `MAX(${length},${width})`, short: `MIN(${length},${width})` };
}

/** The sides that a run of edging along a rectangle takes turns with, the first one first, as in its plan. */
function sidesInTurn(at: Row): string {
  const { longBorders, shortBorders } = at.setting.assumed;
  const [length, width] = [decimalFeet(at.setting, "length", at.row), decimalFeet(at.setting, "width", at.row)];
  if (longBorders === shortBorders) return `${width},${length}`;
  const { long, short } = longAndShort(at);
  return longBorders > shortBorders ? `${long},${short}` : `${short},${long}`;
}

/** The office's price of a row's stone by the ton. */
const perTon = ({ setting, row }: Row): string => priceAsSold(setting, TON, row);

/** The order and the price that a row's stone is paid by. */
export const paidBy = ({ columns }: Pick<ListSetting, "columns">) =>
  columns.has("soldBy") ? (["orderSold", "soldPrice"] as const) : (["order", "stonePrice"] as const);

export const results: Readonly<Record<ResultRole, Result>> = {
  area: result("Area, sq ft", "two", "sides", "length by width, less rounded corners", (at) => {
    const round = cornerArguments(at.setting, at.row);
    return `BED.AREA_RECTANGLE(${sides(at)}${round ? `,${round.radius},${round.corners}` : ""})`;
  }),
  border: result("Edging, lin ft", "two", "sides", "along the sides with edging", (at) => {
    const { longBorders, shortBorders } = at.setting.assumed;
    const { long, short } = longAndShort(at);
    const run = [
      ...(longBorders > 0 ? [times(longBorders, long)] : []),
      ...(shortBorders > 0 ? [times(shortBorders, short)] : []),
    ].join("+");
    const all = laidEdging(at, "edgingFt") ?? (run === "" ? "0" : `BED.EDGE_LENGTH(${run})`);
    return byEdging(at.setting, at.row, ({ drawn }) => (drawn === "none" ? "0" : all));
  }),
  pieceLength: result("Piece length, ft", "two", "nothing", "of the edging product", (at) =>
    productSize(at, "pieceLength"),
  ),
  pieces: result("Edging pieces", "whole", "border", "lapped 2 in at each joint", (at) => {
    const { setting, row, of } = at;
    const runs = runsOf(setting.assumed);
    return byEdging(setting, row, (kind) => {
      if (!hasPieces(kind)) return "0";
      const each = piecesOf(at, kind, halved(of("border"), runs), closing(setting));
      return laidEdging(at, "pieces", kind) ?? times(runs, each);
    });
  }),
  stakesIncluded: result("Stakes included", "whole", "nothing", "with a piece of the edging product", (at) =>
    productSize(at, "stakesPerPiece"),
  ),
  stakes: result("Extra stakes", "whole", "border", "beyond those that come with the pieces", (at) => {
    const { setting, row, of } = at;
    const { longBorders, shortBorders } = setting.assumed;
    const runs = runsOf(setting.assumed);
    const corners = longBorders * shortBorders;
    const knowsCorners = corners > 0 && !setting.typesEdging;
    const turns = knowsCorners
      ? `,${isClosed(setting.assumed) ? "TRUE" : "FALSE"},${sidesInTurn(at)}`
      : closing(setting);
    return byEdging(setting, row, (kind) => {
      const each = `BED.STAKES(${halved(of("border"), runs)},${edgingRule(at, kind)},${corners}${turns})`;
      const all = laidEdging(at, "stakes", kind) ?? times(runs, each);
      return fastenersOf(at, kind, of("pieces"), all);
    });
  }),
  sand: result("Sand, cu yd", "two", "border", "under pavers, up to the next quarter yard", ({ setting, row, of }) =>
    byEdging(setting, row, (kind) => sandOf(kind, of("border"))),
  ),
  yards: result("Stone, cu yd", "two", "area", "area × depth ÷ 324, and waste", ({ setting, row, of }) => {
    return `BED.STONE_YARDS(${of("area")},${stoneDepth(setting, row)},${wasteArgument(setting, row)})`;
  }),
  density: result("Stone, tons/cu yd", "two", "stone", "your own weight, or from the table", (at) => {
    const { setting, row } = at;
    if (setting.weighsStone) return ofStone(stoneWeightFormula().slice(1), setting, row);
    return `BED.STONE_DENSITY(${stoneArgument(setting, row)})`;
  }),
  tons: result("Tons", "two", "area", "short tons, with waste", (at) => {
    const { setting, row, of } = at;
    return `BED.STONE_TONS(${of("area")},${stoneDepth(setting, row)},${stone(at)},${wasteArgument(setting, row)})`;
  }),
  orderSold: result("Order, as sold", "two", "area", "tons, cubic yards, or bags", ({ setting, row, of }) =>
    bySold(setting, row, (soldBy) => orderAsSold(setting, soldBy, row, [of("tons"), of("yards")])),
  ),
  order: result("Order, tons", "two", "area", "up to the yard's next step", (at) => {
    const { setting, row, of } = at;
    if (!setting.columns.has("soldBy")) return orderAsSold(setting, TON, row, [of("tons"), ""]);
    return bySold(setting, row, (soldBy) => tonsAsSold(soldBy, of("orderSold"), density(at)));
  }),
  rollWidth: result("Fabric roll width, ft", "two", "nothing", "of the fabric product", (at) =>
    productRoll(at, "rollWidth"),
  ),
  rollLength: result("Fabric roll length, ft", "two", "nothing", "of the fabric product", (at) =>
    productRoll(at, "rollLength"),
  ),
  rolls: result("Fabric rolls", "whole", "sides", "strips laid the way that takes fewer rolls, 6 in overlap", (at) => {
    const each = bothWays(at).map((way) => `BED.FABRIC_ROLLS(${way},${rollRule(at)})`);
    return laidFabric(at, "rolls") ?? `MIN(${each.join(",")})`;
  }),
  pins: result("Pins", "whole", "sides", "rows, laps, and corners", (at) =>
    alongStrips(at, "pins", (along) => `BED.PINS(${along},${rollSize(at, "rollWidth")},${initial("overlap")})`),
  ),
  boxes: result("Boxes of pins", "whole", "sides", "whole boxes for each bed", ({ setting, of }) => {
    const box = rate(setting, "pinsPerBox");
    return `BED.ORDER_UP(${of("pins")},${box})/${box}`;
  }),
  trench: result("Trench below scrape, in", "two", "nothing", "below the scrape, for the edging product", (at) =>
    productSize(at, "trenchDepth"),
  ),
  dig: result("Dig, cu yd", "two", "area", "the scrape and the trench below it", (at) => {
    const { setting, row, of } = at;
    return byEdging(setting, row, (kind) => {
      const trench = trenchOf(at, kind, of("border"));
      return `BED.DIG_YARDS(${of("area")},${scrapeDepth(setting, row, kind)}${trench})`;
    });
  }),
  spoilLoads: result("Spoil loads", "whole", "area", "loam; by volume and by weight", ({ setting, of }) => {
    const loose = `BED.SPOIL_YARDS(${of("dig")},${quoted(initial("soil"))})`;
    return `BED.LOADS(${loose},${rate(setting, "truckYards")},${initial("soilTonsPerYard")},${rate(setting, "truckPayload", true)})`;
  }),
  deliveries: result("Stone deliveries", "whole", "area", "loads for each bed by itself", (at) => {
    const { setting, of } = at;
    const limits = `${rate(setting, "deliveryYards")},${density(at)},${rate(setting, "deliveryPayload", true)}`;
    return `BED.LOADS(${of("order")}/${density(at)},${limits})`;
  }),
  hours: result(
    "Crew hours",
    "two",
    "sides",
    "scrape, edging, fabric, stone by wheelbarrow 60 ft, and 1 hr of cleanup",
    (at) => {
      const { setting, row, of } = at;
      const fabric = alongStrips(
        at,
        "fabricSqFt",
        (along) =>
          `BED.FABRIC_AREA(${along},${rollSize(at, "rollWidth")},${initial("overlap")},${rollSize(at, "rollLength", true)})`,
      );
      const barrow = `BED.HAUL_HOURS(BED.BARROW_TRIPS(${of("yards")},${stone(at)}),${initial("barrowDistance")})`;
      const edging = byEdging(setting, row, (kind) => settingHours(kind, of("border")));
      const { scrapeHours, fabricRate, rakeRate } = rateNames;
      return guarded(
        ["scrapeHours", "edgingRate", "fabricRate", "rakeRate"],
        `${of("dig")}*${scrapeHours}+${edging}+${fabric}/${fabricRate}+${barrow}+${of("area")}/${rakeRate}+${initial("cleanUpHours")}`,
      );
    },
    { columns: ["area", "border", "yards", "dig"], rates: ["scrapeHours", "edgingRate", "fabricRate", "rakeRate"] },
  ),
  // What a bed costs and is sold for, at the office's rates: without them, nothing.
  stonePrice: result("Stone price per ton", "money", "stone", "by kind, or the price for any other stone", perTon, {
    rates: ["stoneCost"],
  }),
  soldPrice: result(
    "Stone price, as sold",
    "money",
    "stone",
    "from Rates where it sells the stone by that unit: type any other",
    ({ setting, row }) => bySold(setting, row, (soldBy) => priceAsSold(setting, soldBy, row)),
    { rates: ["stoneCost"] },
  ),
  piecePrice: result(
    "Piece price",
    "money",
    "nothing",
    "of the edging product",
    (at) => productPrice(at, "pieceCost"),
    {
      rates: ["pieceCost"],
    },
  ),
  stakePrice: result(
    "Stake price",
    "money",
    "nothing",
    "of the edging product",
    (at) => productPrice(at, "stakeCost"),
    {
      rates: ["stakeCost"],
    },
  ),
  rollPrice: result(
    "Fabric roll price",
    "money",
    "nothing",
    "of the fabric product",
    (at) => ofProduct(at, "fabric", "rollCost", followingFormula({ key: "rollCost", single: "rollCost" }).slice(1)),
    { rates: ["rollCost"] },
  ),
  materialCost: result(
    "Material cost",
    "money",
    "sides",
    "stone, edging, stakes, fabric, and pins at your rates",
    ({ setting, row, of }) => {
      const [order, stonePrice] = paidBy(setting);
      const [ofEdging, ofFabric] = [namesProducts(setting, "edging"), namesProducts(setting, "fabric")];
      return byEdging(setting, row, (kind) => {
        if (hasPieces(kind) && kind !== METAL && !ofEdging) return quoted(NO_RATE);
        const sand = setting.shown.has("sand") ? of("sand") : sandOf(kind, of("border"));
        const bought: readonly (readonly [quantity: string, rate: RateKey, column?: ResultRole | false])[] = [
          ...(hasPieces(kind) ? [[of("pieces"), "pieceCost", ofEdging && "piecePrice"] as const] : []),
          ...(kind.fastened ? [[of("stakes"), "stakeCost", ofEdging && "stakePrice"] as const] : []),
          [of("rolls"), "rollCost", ofFabric && "rollPrice"],
          [of("boxes"), "pinBoxCost"],
        ];
        const costs = bought.map(([quantity, rate, column]) => `+${quantity}*${column ? of(column) : rateNames[rate]}`);
        return guarded(
          bought.flatMap(([, rate, column]) => (column ? [] : [rate])),
          `${of(order)}*${of(stonePrice)}${costs.join("")}${kind.inSand ? `+${sand}*${initial("sandCost")}` : ""}`,
          [of(stonePrice), ...bought.flatMap(([, , column]) => (column ? [of(column)] : []))],
        );
      });
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
    "spoil with dump fees, and deliveries",
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
    "with markups and overhead, before the minimum charge",
    ({ setting, of }) => {
      const { materialMarkup, laborMarkup, haulingMarkup, overhead } = rateNames;
      const costs = [of("materialCost"), of("laborCost"), of("haulingCost")];
      const marked = [materialMarkup, laborMarkup, haulingMarkup].map((name, index) => `${costs[index]}*(1+${name})`);
      return guarded(
        ["materialMarkup", "laborMarkup", "haulingMarkup", "overhead"],
        `ROUND(${marked.join("+")}+(${costs.join("+")})*${overhead},2)`,
        // What has no rate has no cost, either.
        (["edgingKind", "soldBy", "edgingProduct", "fabricProduct"] as const).some((role) => setting.columns.has(role))
          ? [of("materialCost")]
          : [],
      );
    },
    {
      columns: ["materialCost", "laborCost", "haulingCost"],
      rates: ["materialMarkup", "laborMarkup", "haulingMarkup", "overhead"],
    },
  ),
};

export const resultOrder = Object.keys(resultLabels) as ResultRole[];

/** The formula of a result in a row, with its "=", in the unit of the column that it goes to. */
export function resultFormula(setting: ListSetting, role: ResultRole, row: number): string {
  const expression = results[role].formula(rowOf(setting, row));
  const [own, unit] = [ownUnit(role), setting.columns.get(role)?.unit];
  const factor = own && unit ? conversion(own, unit) : "";
  return factor === "" ? `=${expression}` : `=${isOneCall(expression) ? expression : `(${expression})`}${factor}`;
}

function rowOf(setting: ListSetting, row: number): Row {
  const at: Row = {
    setting,
    row,
    of: (role) => {
      const column = setting.columns.get(role);
      if (!setting.shown.has(role) || !column) {
        const inside = results[role].formula(at);
        return isOneCall(inside) ? inside : `(${inside})`;
      }
      const [own, { unit }] = [ownUnit(role), column];
      return cellAddress({ row, column: column.column }) + (own && unit ? conversion(unit, own) : "");
    },
  };
  return at;
}

/** Whether an expression is a single call, which needs no brackets around it. */
function isOneCall(expression: string): boolean {
  return /^[A-Z][A-Z_.]*\((?:[^()]|\((?:[^()]|\([^()]*\))*\))*\)$/.test(expression);
}
