import { fields } from "../../quantities/bed/fields";
import { type ListKey, listFields, listKeys, listOf, listWhose } from "../../quantities/bed/officeLists";
import {
  isPriced,
  isSampleMark,
  type ListedRow,
  type ListedRows,
  laterRates,
  type Rate,
  type RateKey,
  type Rates,
  rateKeys,
  rateLabel,
  rateNames,
  type StoneRate,
  stoneListNames,
  stoneUnitNames,
  whoseName,
} from "../../quantities/bed/rates";
import { readListed, readRate, readStonePrice, readStoneUnit, readStoneWeight } from "../../quantities/bed/readRate";

export { isRateName } from "../../quantities/bed/rates";

/** What the cells of a name hold; undefined for a name whose cells are gone. */
export type NamedCells = readonly (readonly unknown[])[] | undefined;

/**
 * The office's rates from the cells of their names. A cell that is missing or damaged gives no number: it comes back
 * as what is wrong with it.
 *
 * @param named the workbook's names and what their cells hold; names that are none of ours are passed over.
 * @returns undefined where the workbook has none of the rates.
 */
export function ratesFrom(named: ReadonlyMap<string, NamedCells>): Rates | undefined {
  const cells = new Map([...named].map(([name, values]) => [name.toLowerCase(), values]));
  const find = (name: string) => cells.get(name.toLowerCase());
  const has = (name: string) => cells.has(name.toLowerCase());
  const rates = [...Object.values(rateNames), ...Object.values(stoneListNames)];
  if (!rates.some(has)) return undefined;

  const rateOf = (key: RateKey): Rate => {
    const values = find(rateNames[key]);
    const isExample = isPriced(key) && isSampleMark(find(whoseName(key))?.[0]?.[0]);
    if (!values) {
      return has(rateNames[key])
        ? {
            problem: `${rateLabel(key)} (Rates) has lost its cell: the name ${rateNames[key]} points to nothing. ${NAME_IT}`,
          }
        : readRate(key, undefined, false);
    }
    if (values.length > 1 || (values[0]?.length ?? 0) > 1) {
      return {
        problem: `${rateLabel(key)} (Rates) is several cells: the name ${rateNames[key]} must point to one. ${NAME_IT}`,
      };
    }
    return readRate(key, values[0]?.[0], isExample);
  };
  const lacks = laterRates.filter((key) => !has(rateNames[key]));
  const byField = Object.fromEntries(
    rateKeys.map((key) => [key, lacks.includes(key) ? usual(key) : rateOf(key)]),
  ) as Record<RateKey, Rate>;
  const listed = listKeys.flatMap((key) => (has(listOf(key).names) ? [[key, listFrom(key, find)] as const] : []));
  const others = { byField, lists: Object.fromEntries(listed), ...(lacks.length > 0 && { lacks }) };
  const hasUnits = stoneUnitNames.some(has);
  return { ...others, ...stonesFrom(find, hasUnits), ...(hasUnits && { stonesHaveUnits: true }) };
}

/** The list of stone from its columns. */
function stonesFrom(find: (name: string) => NamedCells, hasUnits: boolean): Pick<Rates, "stones" | "stonesProblem"> {
  const { kinds, prices, weights, whose } = stoneListNames;
  const wanted = [kinds, prices, weights, ...(hasUnits ? stoneUnitNames : [])];
  const [names, price = [], tonsPerYard = [], units = [], steps = [], minimums = []] = wanted.map((name) =>
    column(find(name)),
  );
  if (!names || wanted.some((name) => column(find(name))?.length !== names.length)) {
    return { stones: [], stonesProblem: listProblem(wanted) };
  }
  const marks = column(find(whose)) ?? [];
  const stones = names.flatMap((name, index): StoneRate[] => {
    if (typeof name !== "string" || name === "") return [];
    const tons = readStoneWeight(name, tonsPerYard[index]);
    const soldBy = readStoneUnit(name, units[index]);
    const orderStep = readListed("orderStep", name, steps[index], false);
    const orderMinimum = readListed("orderMinimum", name, minimums[index], false);
    return [
      {
        name,
        ...(soldBy && { soldBy }),
        stoneCost: readStonePrice(name, price[index] ?? "", isSampleMark(marks[index])),
        ...(orderStep && { orderStep }),
        ...(orderMinimum && { orderMinimum }),
        ...(tons && { tonsPerYard: tons }),
      },
    ];
  });
  return { stones };
}

/** What estimates take for a size that the workbook has no cell for. */
const usual = (key: RateKey): Rate => ({ text: fields[key].initial, isExample: false });

/** One of the office's lists from its columns. */
function listFrom(key: ListKey, find: (name: string) => NamedCells): ListedRows {
  const list = listOf(key);
  const names = column(find(list.names));
  const columns = listFields(key).map((field) => [field, column(find(list.columns[field] ?? ""))] as const);
  if (!names || columns.some(([, cells]) => cells?.length !== names.length)) {
    const all = [list.names, ...Object.values(list.columns)].join(", ");
    return { rows: [], problem: `The list of ${list.of} (Rates) is missing or damaged: ${all} must be side by side.` };
  }
  const marks = column(find(listWhose(list))) ?? [];
  const rows = names.flatMap((name, index): ListedRow[] => {
    if (typeof name !== "string" || name === "") return [];
    const isSample = isSampleMark(marks[index]);
    const cells = columns.flatMap(([field, column]) => {
      const rate = readListed(field, name, column?.[index], isSample && isPriced(field));
      return rate ? [[field, rate] as const] : [];
    });
    return [{ name, cells: Object.fromEntries(cells), isSample }];
  });
  return { rows };
}

const NAME_IT = "Give the name to its cell again (Formulas, Name Manager).";
const listProblem = (names: readonly string[]) =>
  `The list of stone by kind (Rates) is missing or damaged: ${names.slice(0, -1).join(", ")} and ${names.at(-1)} must ` +
  "name cells beside one another.";

/** The cells of a name that stands for one column. */
function column(values: NamedCells): unknown[] | undefined {
  return values?.every((cells) => cells.length === 1) ? values.map(([cell]) => cell) : undefined;
}
