import { type Corrections, type ListFit, settleColumns } from "./fit";
import { isTyped } from "./listSheet";
import { listTaken, productRole, takenColumns } from "./products";
import { paidBy, type Result, resultOrder, results } from "./results";
import { isResult, type ResultRole, type Role, roleLabel } from "./roles";
import { type ListSetting, rateKeysOf } from "./setting";

/** Which results go into columns, in their order, and which cannot be. */
interface WantedResults {
  readonly results: readonly { readonly role: ResultRole; readonly isAdded: boolean }[];
  /** Why others are left out, in words. */
  readonly troubles: readonly string[];
}

/**
 * The results that were asked for, with those that they rest on in front of them.
 *
 * @param filled results that are in the list already, with something in their column.
 */
export function wantedResults(
  asked: readonly ResultRole[],
  setting: ListSetting,
  filled: ReadonlySet<ResultRole>,
): WantedResults {
  const order: { role: ResultRole; isAdded: boolean }[] = [];
  const troubles: string[] = [];
  const taken = new Set<ResultRole>();
  const take = (role: ResultRole, isAdded: boolean) => {
    if (taken.has(role) || (isAdded && filled.has(role))) return;
    taken.add(role);
    for (const one of restsOn(role, setting)) take(one, !asked.includes(one));
    order.push({ role, isAdded });
  };
  for (const role of asked) {
    const trouble = lackOf(role, setting, filled);
    if (trouble) troubles.push(`${roleLabel(role)} left out: ${trouble}.`);
    else take(role, false);
  }
  return { results: order, troubles };
}

/** Results that must have a column of their own for this one. */
function restsOn(role: ResultRole, { weighsStone, columns }: ListSetting): readonly ResultRole[] {
  // A formula that tells kinds apart reads these in each of them, and would be too long to read with them worked out in it.
  const told = columns.has("edgingKind") ? (BY_KIND[role] ?? []) : [];
  const isWeighed =
    role === "tons" || role === "deliveries" || role === "hours" || (role === "order" && columns.has("soldBy"));
  const weighs = weighsStone && columns.has("stone") && isWeighed;
  const taken = takenColumns(role, { columns });
  return [...(weighs ? (["density"] as const) : []), ...told, ...taken, ...columnsOf(role, { columns })];
}

/** The columns of a result: stone that is sold otherwise than by the ton is paid so. */
function columnsOf(role: ResultRole, setting: Pick<ListSetting, "columns">): readonly ResultRole[] {
  const sold = setting.columns.has("soldBy");
  if (sold && role === "order") return ["orderSold"];
  const own = results[role].columns;
  if (!sold || role !== "materialCost") return own;
  return [...paidBy(setting), ...own.filter((one) => one !== "order" && one !== "stonePrice")];
}

const BY_KIND: Readonly<Partial<Record<ResultRole, readonly ResultRole[]>>> = {
  pieces: ["border"],
  stakes: ["border", "pieces"],
  sand: ["border"],
  dig: ["area", "border"],
};

/** What a result lacks, in words; undefined where it can be worked out. */
function lackOf(role: ResultRole, setting: ListSetting, filled: ReadonlySet<ResultRole>): string | undefined {
  const { needs, rates } = results[role];
  if (rates.some((key) => !setting.rates.has(key))) {
    return "it needs your rates, and this workbook has none yet (see Rates)";
  }
  const lacks = lackOfColumns(needs, setting, filled);
  if (lacks) return lacks;
  for (const one of columnsOf(role, setting)) {
    const lack = filled.has(one) ? undefined : lackOf(one, setting, filled);
    if (lack) return lack;
  }
  return undefined;
}

function lackOfColumns(
  needs: Result["needs"],
  { columns, assumed }: ListSetting,
  filled: ReadonlySet<ResultRole>,
): string | undefined {
  if (needs === "nothing" || needs === "stone") return undefined;
  if (needs !== "sides" && filled.has(needs)) return undefined;
  const missing = [
    ...(columns.has("length") ? [] : ["lengths"]),
    ...(columns.has("width") || (needs === "border" && assumed.shortBorders === 0) ? [] : ["widths"]),
  ];
  return missing.length > 0 ? `no column for ${missing.join(" or ")}` : undefined;
}

/** What most lists have: how large, how much border, how much stone, and what to order. */
const USUAL: readonly ResultRole[] = ["area", "border", "tons", "order", "pins"];

/**
 * The results that are proposed first: those that the list has columns for, left to right, as far as they are not typed
 * by hand; where it has none, the usual ones.
 */
export function proposedResults(fit: ListFit, corrections: Corrections = new Map()): ResultRole[] {
  const columns = settleColumns(fit.columns, corrections);
  const there = columns.flatMap(({ role, facts }) =>
    role && isResult(role) ? [{ role, isTyped: isTyped(facts) }] : [],
  );
  const rates = rateKeysOf(fit.cells.sheet.names);
  // A result that would bring other columns along is offered, and not proposed.
  const has = new Set(there.map(({ role }) => role));
  const offered = offeredFor((role) => columns.some((one) => one.role === role));
  const open = there.filter(
    ({ role, isTyped }) =>
      !isTyped &&
      offered.includes(role) &&
      results[role].rates.every((key) => rates.has(key)) &&
      results[role].columns.every((one) => has.has(one)),
  );
  const wanted = open.map(({ role }) => role);
  if (wanted.length > 0) return wanted;
  return USUAL.filter((role) => !there.some((one) => one.role === role));
}

/** Results of which a list has some only with a column of kinds. */
const WITH: Readonly<Partial<Record<ResultRole, Role>>> = {
  sand: "edgingKind",
  orderSold: "soldBy",
  soldPrice: "soldBy",
};
/**
 * Results that can be added to a list, in the order of the work.
 *
 * @param has whether it has a column.
 */
export const offeredFor = (has: (role: Role) => boolean): readonly ResultRole[] =>
  resultOrder.filter((role) => {
    const list = listTaken(role);
    const needed = list ? productRole(list) : WITH[role];
    return needed === undefined || has(needed);
  });
/** Those of any list. */
export const offeredResults = offeredFor(() => false);
