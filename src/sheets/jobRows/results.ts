import { quoted } from "../../quantities/bed/evaluate";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import { rateNames } from "../../quantities/bed/rates";
import { stoneWeightFormula } from "../estimate/rateFormulas";
import {
  cornerArguments,
  decimalFeet,
  depthArgument,
  lengthArgument,
  scrapeArgument,
  stoneArgument,
  wasteArgument,
} from "./inputs";
import { moneyResults } from "./moneyResults";
import { type Result, type Row, result, withStone } from "./result";
import { type ResultRole, resultLabels } from "./roles";

import { guarded, type ListSetting, rate } from "./setting";

const initial = (key: FieldKey) => fields[key].initial;

const sides = ({ setting, row }: Row) => {
  return `${lengthArgument(setting, "length", row, "ft")},${lengthArgument(setting, "width", row, "ft")}`;
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
const times = (count: number, what: string | undefined) => (count === 1 ? what : `${count}*${what}`);

/** Corners in which two sides with border meet. */
const metCorners = ({ longBorders, shortBorders }: ListSetting["assumed"]) => longBorders * shortBorders;
const isClosed = ({ longBorders, shortBorders }: ListSetting["assumed"]) => longBorders + shortBorders === 4;
const closing = ({ assumed }: ListSetting) => (isClosed(assumed) ? ",TRUE" : "");

export const results: Readonly<Record<ResultRole, Result>> = {
  area: result("Area, sq ft", "two", "sides", "length by width, less rounded corners", (at) => {
    const round = cornerArguments(at.setting, at.row);
    return `BED.AREA_RECTANGLE(${sides(at)}${round ? `,${round.radius},${round.corners}` : ""})`;
  }),
  border: result("Border, ft", "two", "sides", "along the sides that have a border", ({ setting, row }) => {
    const { longBorders, shortBorders } = setting.assumed;
    const run = [
      ...(longBorders > 0 ? [times(longBorders, decimalFeet(setting, "length", row))] : []),
      ...(shortBorders > 0 ? [times(shortBorders, decimalFeet(setting, "width", row))] : []),
    ].join("+");
    const round = cornerArguments(setting, row);
    const met = metCorners(setting.assumed);
    return `BED.EDGE_LENGTH(${run}${round && met > 0 ? `,${round.radius},MIN(${round.corners},${met})` : ""})`;
  }),
  pieces: result("Border pieces", "whole", "border", "lapped 2 in at each joint", ({ setting, of }) => {
    return `BED.EDGING_PIECES(${of("border")},${rate(setting, "pieceLength")},${initial("pieceLap")}${closing(setting)})`;
  }),
  stakes: result("Extra stakes", "whole", "border", "beyond those that come with the pieces", (at) => {
    const { setting, row, of } = at;
    const [round, met] = [cornerArguments(setting, row), metCorners(setting.assumed)];
    const square = round && met > 0 ? `MAX(0,${met}-${round.corners})` : String(met);
    const all = `BED.STAKES(${of("border")},${rate(setting, "pieceLength")},${initial("stakeSpacing")},${initial("pieceLap")},${square}${closing(setting)})`;
    return `MAX(0,${all}-${of("pieces")}*${rate(setting, "stakesPerPiece", true)})`;
  }),
  yards: result("Stone, cu yd", "two", "area", "area × depth ÷ 324, and waste", ({ setting, row, of }) => {
    return `BED.STONE_YARDS(${of("area")},${depthArgument(setting, row)},${wasteArgument(setting, row)})`;
  }),
  density: result("Stone, tons a cu yd", "two", "stone", "as weighed by the office, else from the table", (at) => {
    const name = stoneArgument(at.setting, at.row);
    return at.setting.weighsStone ? withStone(stoneWeightFormula(), name) : `BED.STONE_DENSITY(${name})`;
  }),
  tons: result("Tons", "two", "area", "short tons, with waste", (at) => {
    const { setting, row, of } = at;
    return `BED.STONE_TONS(${of("area")},${depthArgument(setting, row)},${stone(at)},${wasteArgument(setting, row)})`;
  }),
  order: result("Order, tons", "two", "area", "up to the yard's next step", ({ setting, of }) => {
    return `BED.ORDER_UP(${of("tons")},${rate(setting, "orderStep")},${rate(setting, "orderMinimum", true)})`;
  }),
  rolls: result("Fabric rolls", "whole", "sides", "strips along the length, 6 in overlap", (at) => {
    const { setting } = at;
    return `BED.FABRIC_ROLLS(${sides(at)},${rate(setting, "rollWidth")},${rate(setting, "rollLength")},${initial("overlap")})`;
  }),
  pins: result("Pins", "whole", "sides", "by the rule for a plain rectangle", (at) => {
    return `BED.PINS(${sides(at)},${rate(at.setting, "rollWidth")},${initial("overlap")})`;
  }),
  boxes: result("Boxes of pins", "whole", "sides", "whole boxes for each bed", ({ setting, of }) => {
    const box = rate(setting, "pinsPerBox");
    return `BED.ORDER_UP(${of("pins")},${box})/${box}`;
  }),
  dig: result("Dig, cu yd", "two", "area", "the scrape and the trench below it", ({ setting, row, of }) => {
    const trench = `${of("border")},${initial("trenchWidth")},${initial("trenchDepth")}`;
    return `BED.DIG_YARDS(${of("area")},${scrapeArgument(setting, row)},${trench})`;
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
    "scrape, border, fabric, stone by barrow 60 ft, and 1 h to clean up",
    (at) => {
      const { setting, of } = at;
      const fabric = `BED.FABRIC_AREA(${sides(at)},${rate(setting, "rollWidth")},${initial("overlap")},${rate(setting, "rollLength", true)})`;
      const barrow = `BED.HAUL_HOURS(BED.BARROW_TRIPS(${of("yards")},${stone(at)}),${initial("barrowDistance")})`;
      const { scrapeHours, edgingRate, fabricRate, rakeRate } = rateNames;
      return guarded(
        ["scrapeHours", "edgingRate", "fabricRate", "rakeRate"],
        `${of("dig")}*${scrapeHours}+${of("border")}/${edgingRate}+${fabric}/${fabricRate}+${barrow}+${of("area")}/${rakeRate}+${initial("cleanUpHours")}`,
      );
    },
    { columns: ["area", "border", "yards", "dig"], rates: ["scrapeHours", "edgingRate", "fabricRate", "rakeRate"] },
  ),
  ...moneyResults,
};

export const resultOrder = Object.keys(resultLabels) as ResultRole[];
