import { rateNames } from "../../quantities/bed/rates";
import { columnLetters } from "../../spreadsheet/areas";
import { type FittedColumn, holdsPercents } from "./fit";
import type { ListRow } from "./listRows";
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
  const weighs = wants("yards", "tons", "order", "deliveries");
  return [
    ...fitted.flatMap(columnWords),
    ...(weighs && lacks("depth") ? [`No column of stone depths: ${assumed.depthIn} in is taken for every bed.`] : []),
    ...(wants("tons", "order", "deliveries", "stonePrice", "density", "hours") && lacks("stone")
      ? [`No column of stone: ${assumed.stone} is taken for every bed.`]
      : []),
    ...(weighs && lacks("waste") ? [wasteWords(setting)] : []),
    ...(wants("dig", "spoilLoads") && lacks("scrape") ? [`Beds are scraped ${assumed.scrapeIn} in deep.`] : []),
    ...(wants("border") || (wants("pieces", "stakes", "dig", "spoilLoads") && !setting.shown.has("border"))
      ? [`The border runs along ${borderWords(assumed)}.`]
      : []),
    ...(lacks("radius") !== lacks("corners")
      ? ["Corners are taken as square: it takes a radius and a number of rounded corners to round them."]
      : []),
    ...(wants("deliveries", "order", "boxes", "rolls", "pieces")
      ? ["What is bought is rounded up for each bed by itself; ordering a job together may take less."]
      : []),
    ...(hidden > 0
      ? [`${hidden} of the rows ${hidden === 1 ? "is" : "are"} hidden or filtered away, and filled, too.`]
      : []),
    ...roles
      .filter((role) => ["rolls", "pins", "price", "hours"].includes(role))
      .map((role) => `${results[role].heading}: ${results[role].note}.`),
  ];
}

function columnWords({ column, heading, role, unit, facts }: FittedColumn): string[] {
  const name = `${columnLetters(column)} ${heading}`.trim();
  if (role === "waste") {
    return holdsPercents({ ...(unit && { unit }), facts }) ? [`${name}: 8 and 8% both read as 8 percent.`] : [];
  }
  if (!role || !unit || facts.tape === 0) return [];
  return [`${name}: bare numbers are ${unit}; text is read with its own unit, such as 9.8 m or 6'-8".`];
}

function wasteWords(setting: ListSetting): string {
  const { rates, assumed } = setting;
  const followed = assumed.waste === undefined && rates.has("waste");
  const share = assumed.waste ?? Number(rate(setting, "waste"));
  const taken = followed ? `the office's rate, ${rateNames.waste},` : `${Number((share * 100).toFixed(4))}%`;
  return `No column of waste: ${taken} is taken for every bed.`;
}

/** Which sides of a bed have a border, in words. */
export function borderWords({ longBorders, shortBorders }: Pick<Assumed, "longBorders" | "shortBorders">): string {
  const long = ["", "one long side", "both long sides"][longBorders] ?? "";
  const short = ["", "one end", "both ends"][shortBorders] ?? "";
  return [long, short].filter(Boolean).join(" and ") || "no side";
}
