import { functions as bedFunctions, bedScope, type LaidCounts } from "../bed/estimate";
import { evaluate, isSame, type Scope, type Value } from "../bed/evaluate";
import { type LineKind, lines, secondLines } from "../bed/lines";
import type { Bed } from "../bed/read";
import { toCents } from "../cents";
import { edgingKindOf, NO_EDGING } from "../edgingKinds";
import { listedStrips } from "../fabric";
import { must } from "../must";
import { Problem } from "../problem";
import { TON } from "../soldBy";
import { type BedRowKey, bedRows, type KindOf, kindRows, secondRow } from "./bedRows";
import {
  type JobInputKey,
  type JobPriceKey,
  jobInputs,
  jobLineFormulas,
  jobLines,
  jobPrice,
  type Kinds,
  kindAmounts,
  kindLists,
  priceSettings,
  unitOfKind,
  workSettings,
} from "./jobAmounts";
import { piecesTogether, rollsTogether, USUAL_CUT_LOSS_IN } from "./together";

type Numbers = readonly number[];

/** Runs of cells, each a length or a list of lengths. */
const runsOf = (cells: readonly Value[], closed: boolean) =>
  cells.flatMap((cell) => listedStrips(String(cell))).map((feet) => ({ feet, closed }));

/** The functions that the job's expressions call, by their names in a sheet. */
const functions: Scope["functions"] = {
  ...bedFunctions,
  "BED.JOB_PIECES": (open: readonly Value[], pieceFt: number, lapIn: number, closed: readonly Value[]) =>
    piecesTogether([...runsOf(open, false), ...runsOf(closed, true)], pieceFt, lapIn, USUAL_CUT_LOSS_IN),
  "BED.JOB_ROLLS": (strips: readonly Value[], rollFt: number, endLapIn: number) =>
    rollsTogether(
      strips.flatMap((cell) => listedStrips(String(cell))),
      rollFt,
      endLapIn,
    ),
};

/** A bed of a job. */
export interface BedToPrice {
  readonly name: string;
  readonly bed: Bed;
  readonly laid?: LaidCounts | undefined;
  /** What the lines of its own block say otherwise, by the line's key. */
  readonly typed?: Readonly<Record<string, { readonly quantity?: number; readonly unitCost?: number }>>;
}

/** A line that the estimator added. */
export interface OwnLine {
  readonly label: string;
  readonly unit: string;
  readonly quantity: number;
  readonly unitCost: number;
  readonly kind: LineKind;
}

export interface PricedJobLine extends OwnLine {
  /** Undefined for a line of the estimator's own. */
  readonly key: string | undefined;
  readonly cost: number;
  readonly price: number;
}

/** What a job takes and costs. */
export interface PricedJob {
  readonly lines: readonly PricedJobLine[];
  readonly amounts: Readonly<Record<JobPriceKey, number | "">>;
  /** Each bed's share of the price, to the cent: split by what each would cost by itself. */
  readonly byBed: readonly number[];
}

/**
 * The price of a job: the amounts of `jobAmounts.ts`, evaluated.
 *
 * @param beds at least one; the first gives the crew, the trucks, and the markups of the whole job.
 * @param more lines of the estimator's own, and what was typed about the job as a whole: hours, shares, and money.
 * @throws Problem where there is no bed, or a bed's inputs don't go together.
 * @example a job of one bed costs what the bed's own estimate says
 */
export function priceJob(
  beds: readonly BedToPrice[],
  more: { readonly own?: readonly OwnLine[]; readonly inputs?: Readonly<Partial<Record<JobInputKey, number>>> } = {},
): PricedJob {
  if (beds.length === 0) throw new Problem("value", "A job needs at least one bed. Add one.", "beds");
  const known = new Map<string, Value>();
  const scope: Scope = { value: (key) => must(known.get(key)), functions };
  const work = (is: string) => evaluate(is, scope);

  for (const [key, { initial }] of Object.entries(jobInputs))
    known.set(key, more.inputs?.[key as JobInputKey] ?? initial);
  const scopes = beds.map(scopeOf);
  for (const key of Object.keys(bedRows) as BedRowKey[]) known.set(`beds.${key}`, rowOf(scopes, key));
  const first = must(scopes[0]);
  for (const key of [...priceSettings, ...workSettings]) known.set(key, first.scope.value(key));
  for (const { key } of lines) known.set(`first.${key}.unitCost`, first.scope.value(`${key}.unitCost`));

  const kinds = kindsOf(known);
  for (const of of Object.keys(kindLists) as (keyof typeof kindLists)[]) {
    for (let n = 1; n <= kinds[of]; n++) setLists(known, of, n);
  }
  const behind = kindAmounts(kinds);
  const priced = new Map<string, PricedJobLine>();
  // Lines and what they rest on ask for one another, so each is worked out when it is first asked for.
  const lazy: Scope = { ...scope, value: find };
  function find(key: string): Value {
    const there = known.get(key);
    if (there !== undefined) return there;
    const amount = behind.find((one) => one.key === key);
    const line = jobLines(kinds).find((one) => `${one.key}.quantity` === key);
    const value = evaluate(must(amount?.is ?? line?.quantity), lazy);
    known.set(key, value);
    return value;
  }
  for (const line of jobLines(kinds)) {
    const label = line.label.startsWith("=") ? String(evaluate(line.label.slice(1), lazy)) : line.label;
    const quantity = find(`${line.key}.quantity`) as number;
    const unitCost = evaluate(line.unitCost, lazy) as number;
    priced.set(line.key, pricedLine({ ...line, label, quantity, unitCost }, line.key, work, known));
  }
  const own = (more.own ?? []).map((line) => pricedLine(line, undefined, work, known));
  const all = [...own, ...priced.values()];
  for (const column of ["cost", "price", "kind", "quantity"] as const)
    known.set(
      `lines.${column}`,
      all.map((line) => line[column]),
    );
  for (const [key, { is }] of Object.entries(jobPrice)) known.set(key, evaluate(is, lazy));
  const amounts = Object.fromEntries(Object.keys(jobPrice).map((key) => [key, known.get(key)])) as PricedJob["amounts"];
  return {
    lines: all,
    amounts,
    byBed: split(amounts.price as number, (known.get("beds.alone") as number[]).slice(0, beds.length)),
  };
}

/** The kinds of stone, edging, and fabric of a job's beds, by their names, as they first come up. */
export type KindNames = Readonly<Record<KindOf, readonly string[]>>;

/** Whether a kind comes up for the first time; a bed without any has none. */
const isFirst = (name: string, at: number, names: readonly string[]) =>
  name !== "" && names.findIndex((one) => isSame(one, name)) === at;

/** The kinds that the beds of a job have. */
export function kindNamesOf(beds: readonly BedToPrice[]): KindNames {
  const scopes = beds.map(scopeOf);
  const namesOf = (row: BedRowKey) => rowOf(scopes, row).map(String).filter(isFirst);
  const { stone, edging, fabric, sand } = kindRows;
  return { stone: namesOf(stone), edging: namesOf(edging), fabric: namesOf(fabric), sand: namesOf(sand) };
}

/** How many kinds there are of each. */
export const countsOf = ({ stone, edging, fabric, sand }: KindNames): Kinds => ({
  stone: stone.length,
  edging: edging.length,
  fabric: fabric.length,
  sand: sand.length,
  ...(stone.some((kind) => unitOfKind(kind) !== TON.unit) && { stoneUnits: stone.map(unitOfKind) }),
});

/** How many kinds of stone, edging, and fabric the beds of a job have. */
export const kindsOfBeds = (beds: readonly BedToPrice[]): Kinds => countsOf(kindNamesOf(beds));

/** A row's values: those of the beds, and after them those of their second edgings. */
const rowOf = (scopes: readonly ReturnType<typeof scopeOf>[], key: BedRowKey): Value[] => [
  ...scopes.map((bed) => bed.work(bedRows[key].is)),
  ...scopes.filter(({ second }) => second !== NO_EDGING).map((bed) => bed.work(secondRow(key))),
];

/** A bed's values, and what the lines of its block show. */
function scopeOf({ bed, laid, typed = {} }: BedToPrice) {
  const made = bedScope(bed, laid);
  const second = edgingKindOf(bed.names.secondKind);
  const costs: number[] = [];
  for (const { key, quantity, cost } of [...lines, ...secondLines(second)]) {
    const line = typed[key];
    const [amount, unitCost] = [line?.quantity ?? made.scope.value(quantity), line?.unitCost ?? made.scope.value(cost)];
    made.known.set(`${key}.isTyped`, line?.quantity !== undefined);
    made.known.set(`${key}.quantity`, amount);
    made.known.set(`${key}.unitCost`, unitCost);
    costs.push((amount as number) * (unitCost as number));
  }
  made.known.set("lines.cost", costs);
  return { ...made, second };
}

/** Numbers the kinds of the beds as they first come up. */
function kindsOf(known: Map<string, Value>): Kinds {
  const kinds: { -readonly [Key in keyof Kinds]?: Kinds[Key] } = {};
  for (const [of, row] of Object.entries(kindRows)) {
    const names = known.get(`beds.${row}`) as readonly string[];
    let count = 0;
    known.set(
      `kinds.${of}`,
      names.map((...at) => (isFirst(...at) ? ++count : 0)),
    );
    kinds[of as KindOf] = count;
    if (of === "stone") kinds.stoneUnits = names.filter(isFirst).map(unitOfKind);
  }
  return kinds as Kinds;
}

function setLists(known: Map<string, Value>, of: keyof typeof kindLists, n: number): void {
  const names = known.get(`beds.${kindRows[of]}`) as readonly string[];
  const kind = must(names[(known.get(`kinds.${of}`) as Numbers).indexOf(n)]);
  const key = `${of}${n}`;
  for (const [list, { is }] of Object.entries(kindLists[of])) {
    const values = names.map((name, at) => {
      const own: Scope = { value: (row) => (known.get(`beds.${row}`) as readonly Value[])[at] as Value, functions };
      return isSame(name, kind) ? evaluate(is, own) : 0;
    });
    known.set(`${key}.${list}`, values);
  }
  if (of === "edging")
    known.set(`${key}.closed`, [
      ...(known.get(`${key}.closed`) as readonly Value[]),
      ...(known.get(`${key}.inner`) as readonly Value[]),
    ]);
}

function pricedLine(
  line: OwnLine,
  key: string | undefined,
  work: (is: string) => Value,
  known: Map<string, Value>,
): PricedJobLine {
  const { quantity, unitCost, kind, label, unit } = line;
  for (const [part, value] of Object.entries({ quantity, unitCost, kind, discount: 0 })) known.set(part, value);
  for (const [part, is] of Object.entries(jobLineFormulas)) known.set(part, work(is));
  const [cost, price] = [known.get("cost") as number, known.get("price") as number];
  return { key, label, unit, quantity, unitCost, kind, cost, price };
}

/**
 * Splits a price by shares, so that the parts add up to the cent.
 *
 * @example split(100, [1, 1, 1]) // [33.33, 33.34, 33.33]
 */
export function split(price: number, shares: readonly number[]): number[] {
  const total = shares.reduce((sum, share) => sum + share, 0);
  const upTo = (place: number) =>
    total === 0 ? 0 : toCents((price * shares.slice(0, place).reduce((sum, share) => sum + share, 0)) / total);
  return shares.map((_, place) => (upTo(place + 1) - upTo(place)) / 100);
}
