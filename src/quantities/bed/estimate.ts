import { areaRectangle, areaRound } from "../area";
import { toCents } from "../cents";
import { digYards, spoilYards } from "../digging";
import { edgeLength } from "../edge";
import { edgingPieces, shortPieces, stakes } from "../edging";
import { type EdgingKind, edgingKindOf } from "../edgingKinds";
import { fabricArea, fabricStrips, listedStrips, stripList } from "../fabric";
import { fabricRolls } from "../fabricRolls";
import { barrowTrips, haulHours, loads } from "../hauling";
import { messages } from "../messages";
import { must } from "../must";
import { readNumber } from "../numberText";
import { areaPoints, type Point } from "../outline";
import { pavers, sandYards } from "../pavers";
import { pins } from "../pins";
import { Problem } from "../problem";
import { soilNamed } from "../soil";
import { soldByOf } from "../soldBy";
import { stoneNamed, weightAsName } from "../stone";
import { orderUp, stoneDepth, stoneTons, stoneYards } from "../stoneAmounts";
import { areaWidths, edgeWidths } from "../widths";
import {
  type AmountKey,
  amounts,
  CUT_OUT_AREA,
  closedRun,
  lineFormulas,
  openRuns,
  type QuantityKey,
  quantityKeys,
  SIDE_LENGTH,
  verdicts,
} from "./amounts";
import { evaluate, isSame, type Scope, type Value } from "./evaluate";
import type { NumberFieldKey } from "./fields";
import { cornerFields, edgingFields } from "./form";
import { type Expression, expressionOf, LAYOUT_COLUMNS, type Outline, ofSecond } from "./inPlan";
import { type EstimateLine, linesOf } from "./lines";
import type { Bed } from "./read";
import { sum } from "./sum";

export interface PricedLine extends EstimateLine {
  readonly amount: number;
  readonly unitCost: number;
  readonly costSum: number;
  readonly priceSum: number;
}

/** What a bed takes and costs. Amounts carry the units of their rows in the block. */
export interface Estimate {
  readonly amounts: Readonly<Record<QuantityKey | "cleanUpHours", number>>;
  readonly lines: readonly PricedLine[];
  readonly directCost: number;
  readonly overheadCost: number;
  readonly fullCost: number;
  /** To the cent, before tax; the smallest job charge where that is more. */
  readonly price: number;
  readonly minimumApplies: boolean;
  /** Of the whole price, to the cent. */
  readonly taxSum: number;
  readonly priceWithTax: number;
  /** Profit over cost, and profit over price; undefined where there is no cost or price to divide by. */
  readonly markupOnCost: number | undefined;
  readonly marginOnPrice: number | undefined;
  readonly laborHours: number;
  readonly crewDays: number;
  /** Whether the depth suits the stone, in words. */
  readonly depthCheck: string;
  /** Lengths of fabric to cut, full roll width, layer by layer. */
  readonly stripsFt: readonly number[];
  /** The runs of edging, along the outer edge and then inside. */
  readonly runs: readonly { readonly feet: number; readonly closed: boolean }[];
  /** Those of a second edging. */
  readonly secondRuns: Estimate["runs"];
  /** Pieces of edging that are bought for less than an inch, by their numbers in the drawing. */
  readonly shortPieces: readonly number[];
}

/** The edging of a bed along all its runs, in feet. */
export const edgingFt = ({ borderRun, innerRun, secondRun }: Estimate["amounts"]): number =>
  borderRun + innerRun + secondRun;

/** What was counted on the bed laid out in plan. */
export interface LaidCounts {
  readonly strips: number;
  readonly fabricSqFt: number;
  readonly rolls: number;
  readonly pins: number;
  /** Lengths of fabric to cut, in feet. */
  readonly stripsFt: readonly number[];
  readonly edgingFt: number;
  readonly pieces: number;
  readonly stakes: number;
  /** Of these, at corners that no other stake holds. */
  readonly cornerStakes: number;
  /** Runs of edging with two ends, in feet. */
  readonly openRunsFt: readonly number[];
}

type Numbers = readonly number[];

/** The functions that the estimate's expressions call, by their names in a sheet. */
export const functions = {
  ABS: (amount: number) => Math.abs(amount),
  ISNUMBER: (value: Value) => typeof value === "number",
  OR: (...given: boolean[]) => given.some(Boolean),
  AND: (...given: boolean[]) => given.every(Boolean),
  NOT: (given: boolean) => !given,
  MAX: (...given: (number | Numbers)[]) => Math.max(...given.flat()),
  MIN: (...given: (number | Numbers)[]) => Math.min(...given.flat()),
  SUM: (...given: (number | Numbers)[]) => sum(given.flat()),
  PI: () => Math.PI,
  ROUND: (amount: number, places = 2) => toCents(amount * 10 ** (places - 2)) / 10 ** places,
  ROWS: (list: readonly Value[]) => list.length,
  MID: (text: string, first: number, count: number) => text.slice(first - 1, first - 1 + count),
  REPT: (text: string, times: number) => text.repeat(times),
  SQRT: (square: number) => Math.sqrt(square),
  SUMPRODUCT: (one: Numbers, other: Numbers) => sum(one.map((value, place) => value * must(other[place]))),
  SUMIF: (kinds: readonly Value[], kind: Value, values: Numbers) =>
    sum(values.filter((_, at) => isSame(must(kinds[at]), kind))),
  MATCH: (value: Value, list: readonly Value[]) => list.findIndex((one) => isSame(one, value)) + 1,
  INDEX: (list: readonly Value[], row: number, column?: number) =>
    column === undefined ? must(list[row - 1]) : must((list[row - 1] as readonly Value[])[column - 1]),
  "BED.AREA_RECTANGLE": (long: number, wide: number, radius = 0, corners = 0, cutOuts = 0) =>
    areaRectangle(long, wide, radius, corners, [cutOuts]),
  "BED.AREA_ROUND": areaRound,
  "BED.AREA_WIDTHS": areaWidths,
  "BED.AREA_POINTS": areaPoints,
  "BED.EDGE_LENGTH": (sides: number, radius: number, corners: number) => edgeLength([sides], radius, corners),
  "BED.EDGE_WIDTHS": edgeWidths,
  "BED.STONE_DEPTH": stoneDepth,
  "BED.STONE_DENSITY": (stone: number | string) => numberOr(stone, "stone", (name) => stoneNamed(name).tonsPerYard),
  "BED.STONE_YARDS": stoneYards,
  "BED.STONE_TONS": stoneTons,
  "BED.ORDER_UP": orderUp,
  "BED.DIG_YARDS": digYards,
  "BED.SPOIL_YARDS": (bank: number, soil: string) =>
    spoilYards(
      bank,
      numberOr(soil, "soil", (name) => soilNamed(name).swell),
    ),
  "BED.LOADS": loads,
  "BED.EDGING_PIECES": edgingPieces,
  "BED.STAKES": stakes,
  "BED.PAVERS": pavers,
  "BED.SAND_YARDS": sandYards,
  "BED.FABRIC_STRIPS": fabricStrips,
  "BED.FABRIC_AREA": fabricArea,
  "BED.FABRIC_ROLLS": fabricRolls,
  "BED.PINS": pins,
  "BED.BARROW_TRIPS": barrowTrips,
  "BED.HAUL_HOURS": haulHours,
} satisfies Scope["functions"];

/**
 * The estimate of a bed: the amounts of `amounts.ts`, evaluated.
 *
 * @param bed from `readForm`.
 * @param laid counts of the bed laid out in plan; left out, fabric and pins are counted on its length by its width.
 * @throws Problem for inputs that do not go together: no depth left, a lap longer than a piece, an unknown stone, a
 *   shape that can't be, cut-outs as large as the bed.
 * @example estimateBed(readForm({ ...blankForm(), typed: { length: "20", width: "6" } }).bed).amounts.stoneArea // 120
 */
export function estimateBed(bed: Bed, laid?: LaidCounts): Estimate {
  const { scope, known, work, edging } = bedScope(bed, laid);
  const { value: find } = scope;
  const number = (key: string): number => find(key) as number;

  const quantities = Object.fromEntries(
    [...quantityKeys, "cleanUpHours" as const].map((key) => [key, number(key)]),
  ) as Estimate["amounts"];
  const priced = linesOf(edging, soldByOf(bed.names.soldBy), edgingKindOf(bed.names.secondKind)).map(
    (line): PricedLine => {
      const own: Record<string, Value> = {
        quantity: quantities[line.quantity],
        unitCost: number(line.cost),
        kind: line.kind,
      };
      const lineScope: Scope = { ...scope, value: (key) => own[key] ?? find(key) };
      for (const [key, formula] of Object.entries(lineFormulas)) own[key] = evaluate(formula, lineScope);
      const { quantity, unitCost, cost, price } = own as Record<string, number>;
      return { ...line, amount: must(quantity), unitCost: must(unitCost), costSum: must(cost), priceSum: must(price) };
    },
  );
  const columns = { cost: "costSum", price: "priceSum", kind: "kind", quantity: "amount" } as const;
  for (const [column, part] of Object.entries(columns)) {
    known.set(
      `lines.${column}`,
      priced.map((line) => line[part]),
    );
  }
  const share = (key: AmountKey) => (find(key) === "" ? undefined : number(key));
  const open = edging.drawn === "none" ? [] : (laid?.openRunsFt ?? listedStrips(String(work(openRuns))));
  const runs = [
    ...open.map((feet) => ({ feet, closed: false })),
    ...[work(closedRun) as number, number("innerRun")].filter(Boolean).map((feet) => ({ feet, closed: true })),
  ];
  const secondRuns = [
    ...listedStrips(String(work(ofSecond(openRuns)))).map((feet) => ({ feet, closed: false })),
    ...[work(ofSecond(closedRun)) as number].filter(Boolean).map((feet) => ({ feet, closed: true })),
  ];
  return {
    amounts: quantities,
    lines: priced,
    directCost: number("directCost"),
    overheadCost: number("overheadCost"),
    fullCost: number("fullCost"),
    price: number("price"),
    minimumApplies: bed.numbers.minimumCharge > number("linePrices") + number("overheadCost"),
    taxSum: number("taxSum"),
    priceWithTax: number("priceWithTax"),
    markupOnCost: share("markupOnCost"),
    marginOnPrice: share("marginOnPrice"),
    laborHours: number("laborHours"),
    crewDays: number("crewDays"),
    depthCheck: work(verdicts.depthCheck.is) as string,
    stripsFt: laid
      ? new Array<readonly number[]>(bed.numbers.fabricLayers).fill(laid.stripsFt).flat()
      : new Array<number>(quantities.fabricStrips).fill(quantities.fabricLength),
    runs,
    secondRuns,
    // A paver is cut to less than an inch as soon as to half.
    shortPieces:
      edging.lines.edging && !edging.inSand ? shortPieces(runs, bed.numbers.pieceLength, bed.numbers.pieceLap) : [],
  };
}

/** A bed's values by their keys, worked out when they are first asked for. */
export interface BedScope {
  readonly scope: Scope;
  /** What is known so far; what is put in counts as given. */
  readonly known: Map<string, Value>;
  /** Evaluates an expression of the bed. */
  readonly work: (is: Expression) => Value;
  readonly edging: EdgingKind;
}

/**
 * What the expressions of a bed are evaluated in.
 *
 * @param bed from `readForm`; @param laid as for {@link estimateBed}.
 * @example bedScope(readForm({ ...blankForm(), typed: { length: "20", width: "6" } }).bed).work("{stoneArea}/2") // 60
 */
export function bedScope(bed: Bed, laid?: LaidCounts): BedScope {
  const edging = edgingKindOf(bed.names.edgingKind);
  const outline: Outline = {
    edging,
    second: edgingKindOf(bed.names.secondKind),
    soldBy: soldByOf(bed.names.soldBy),
    way: bed.way,
    widths: bed.widthsFt.length,
    points: bed.points.length,
    cutOuts: bed.cutOuts.length,
    inPlan: laid !== undefined,
  };
  const known = new Map<string, Value>(knownValues(bed));
  const scope: Scope = { value: find, functions: laid ? { ...functions, ...layoutOf(laid) } : functions };
  const work = (is: Expression) => evaluate(expressionOf(is, outline), scope);

  function find(key: string): Value {
    const name = key.replace(/\.decimal$/, "");
    const found = known.get(name);
    if (found !== undefined) return found;
    if (!(name in amounts)) throw new Error(`The estimate has no value "${key}".`);
    const value = work(amounts[name as AmountKey].is);
    if (name === "stoneArea" && (value as number) <= 0) throw new Problem("value", messages.nothingLeft(), "cut_outs");
    known.set(name, value);
    return value;
  }
  return { scope, known, work, edging };
}

/** What was typed, under the keys that the expressions use. */
function* knownValues(bed: Bed): Iterable<[key: string, value: Value]> {
  const marks = (keys: readonly NumberFieldKey[]) => keys.map((key) => bed.numbers[key]);
  yield* Object.entries(bed.numbers);
  yield* Object.entries(bed.names);
  // As in a cell, a weight in place of a name is a number.
  const weight = weightAsName(bed.names.stone);
  if (weight !== undefined) yield ["stone", weight];
  if (Number.isFinite(Number.parseFloat(bed.names.stripDirection)))
    yield ["stripDirection", Number.parseFloat(bed.names.stripDirection)];
  if (bed.weighedTonsPerYard !== undefined) yield ["stoneDensity", bed.weighedTonsPerYard];
  yield ["edged", marks(bed.way === "widths" ? edgingFields.widths : edgingFields.rectangle)];
  yield ["rounded", marks(cornerFields)];
  yield ["widths", bed.widthsFt];
  yield ["widths.first", bed.widthsFt[0] ?? 0];
  yield ["widths.last", bed.widthsFt.at(-1) ?? 0];
  yield ["points", bed.points];
  yield ["points.x", bed.points.map(([x]) => x)];
  yield ["points.y", bed.points.map(([, y]) => y)];
  yield ["points.side", sideLengths(bed.points)];
  yield ["points.border", bed.borderAfterPoint.map(Number)];
  yield [
    "cutOuts.area",
    bed.cutOuts.map(({ across, deep }) => evaluate(CUT_OUT_AREA, scopeOf({ across, deep: deep ?? "" }))),
  ];
  yield ["cutOuts.placed", ""];
}

/** From each point to the next, and from the last to the first. */
function sideLengths(points: readonly Point[]): Value[] {
  return points.map(([x, y], index) => {
    const [nextX, nextY] = must(points[(index + 1) % points.length]);
    return evaluate(SIDE_LENGTH, scopeOf({ x, y, "next.x": nextX, "next.y": nextY }));
  });
}

const scopeOf = (values: Readonly<Record<string, Value>>): Scope => ({ functions, value: (key) => must(values[key]) });

/** The layout functions, as far as the estimate reads their lists: headings, and below them the counts. */
function layoutOf(laid: LaidCounts): Scope["functions"] {
  const counts: Value[] = [];
  const listed = { ...laid, stripList: stripList(laid.stripsFt), openRunList: stripList(laid.openRunsFt) };
  for (const [key, column] of Object.entries(LAYOUT_COLUMNS))
    counts[column - 1] = listed[key as keyof typeof LAYOUT_COLUMNS];
  const list = () => [[], counts];
  return {
    "BED.LAYOUT": list,
    "BED.LAYOUT_RECTANGLE": list,
    "BED.LAYOUT_ROUND": list,
    "BED.LAYOUT_WIDTHS": list,
  };
}

/** A name that may also be the number it stands for. */
function numberOr(given: number | string, argument: string, named: (name: string) => number): number {
  if (typeof given === "number") return given;
  return /^[\d.,\s]+$/.test(given) ? readNumber(given, argument) : named(given);
}
