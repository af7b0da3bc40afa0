import { quoted } from "../../quantities/bed/evaluate";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import { officeLists } from "../../quantities/bed/officeLists";
import { nameFound, type Rates } from "../../quantities/bed/rates";
import { messages } from "../../quantities/messages";
import { must } from "../../quantities/must";
import { nearestName, plainName } from "../../quantities/nearestName";
import { cellAddress } from "../../spreadsheet/areas";
import { followingFormula, isListed } from "../estimate/rateFormulas";
import type { ProductNames } from "./listSheet";
import type { ResultRole, Role } from "./roles";
import type { ListSetting, Row } from "./setting";

/*
 * What the formulas of a row take from the product that it names in one of the office's lists. Each size and price has a
 * column of its own: it can be seen, and the formulas that count with it stay short.
 */

export type ProductList = keyof ProductNames;
export const productLists = ["edging", "fabric"] as const satisfies readonly ProductList[];

/** The names in the office's lists, as its rates were read. */
export const productNames = (rates: Rates | undefined): ProductNames =>
  Object.fromEntries(
    productLists.flatMap((list) => {
      const listed = rates?.lists?.[list];
      return listed ? [[list, listed.rows.map(({ name }) => name)]] : [];
    }),
  );

/** The name of the cells with the names of a list. */
export const namesOfList = (list: ProductList) => officeLists[list].names;

/** The column in which a row names a product of a list. */
export const productRole = (list: ProductList) => officeLists[list].picks;

/** What a formula gives for any other name: words, with which no arithmetic works. */
const UNKNOWN = quoted("no such product");

/** The columns that a result rests on where rows name products. */
const taken: Readonly<Record<ProductList, Readonly<Partial<Record<ResultRole, readonly ResultRole[]>>>>> = {
  edging: {
    pieces: ["pieceLength"],
    stakes: ["pieceLength", "stakesIncluded"],
    dig: ["trench"],
    materialCost: ["piecePrice", "stakePrice"],
  },
  fabric: {
    rolls: ["rollWidth", "rollLength"],
    pins: ["rollWidth", "rollLength"],
    hours: ["rollWidth", "rollLength"],
    materialCost: ["rollPrice"],
  },
};

/** Whether a column is to name products of a list that the workbook doesn't have. */
export const lacksList = (role: Role, products: ProductNames = {}): boolean =>
  productLists.some((list) => role === productRole(list) && products[list] === undefined);

/** Whether rows name products of a list. */
export const namesProducts = ({ columns }: Pick<ListSetting, "columns">, list: ProductList): boolean =>
  columns.has(productRole(list));

/** The columns of sizes and prices that a result needs in this list of beds. */
export const takenColumns = (role: ResultRole, setting: Pick<ListSetting, "columns">): readonly ResultRole[] =>
  productLists.flatMap((list) => (namesProducts(setting, list) ? (taken[list][role] ?? []) : []));

/** Whether a column holds what rows take from a list. */
export const isTakenFrom = (list: ProductList, role: Role): boolean =>
  Object.values(taken[list]).some((roles) => roles?.some((one) => one === role));

/** The list of which a column holds sizes or prices; undefined for other columns. */
export const listTaken = (role: Role): ProductList | undefined => productLists.find((list) => isTakenFrom(list, role));

/** The same row as if it named no product of a list: for counts on a layout that the product has no part in. */
export function without(list: ProductList, at: Row): Row {
  const columns = new Map([...at.setting.columns].filter(([role]) => role !== productRole(list)));
  return { ...at, setting: { ...at.setting, columns } };
}

/**
 * What the product of a row has for a field.
 *
 * @param otherwise where its row of the list has nothing, and where the row names no product.
 */
export function ofProduct({ setting, row }: Row, list: ProductList, key: FieldKey, otherwise: string): string {
  const column = setting.columns.get(productRole(list));
  if (!column) return otherwise;
  const cell = cellAddress({ row, column: column.column });
  const following = followingFormula({ key, list }, otherwise).slice(1);
  return `IF(${isListed(list, [""])},${following},${UNKNOWN})`.replaceAll(`{${productRole(list)}}`, () => cell);
}

/**
 * What is wrong with the name of a product, in one line; undefined for one of the list, for a blank, and for the usual one.
 *
 * @param names those of the office's list.
 * @example productTrouble("edging", "Poly 20", ["Poly, 20 ft"]) // "Edging product: “Poly 20” isn't in the list. Did you…"
 */
export function productTrouble(list: ProductList, name: string, names: readonly string[]): string | undefined {
  const { label, initial } = fields[productRole(list)];
  const wanted = nameFound(name);
  if (wanted === "" || wanted === initial || names.some((one) => one.toLowerCase() === wanted)) return undefined;
  if (names.length === 0) return `${label}: “${name.trim()}” isn't in the list in Rates. Add it there.`;
  const plain = names.map(plainName);
  return messages.unknownName(label, name, must(names[plain.indexOf(nearestName(name, plain))]), undefined);
}
