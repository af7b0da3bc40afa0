import { areaInPlan } from "../layout/areaInPlan";
import type { Bed } from "../layout/bed";
import { layFabric } from "../layout/layFabric";
import type { FabricLayout } from "../layout/layout";
import { borderRulesOf, type FabricOptions, fabricRulesOf } from "../layout/options";
import { type Outline, ringLength } from "../layout/outline";
import { outlineOf } from "../layout/outlineOf";
import { edgingCounts } from "../layout/setOut";
import { placesOf } from "../quantities/bed/sides";
import { stripList } from "../quantities/fabric";
import { must } from "../quantities/must";
import type { Point } from "../quantities/outline";
import { may, needs, type ValuesOf } from "./argument";
import { bayFt, endLapIn, lapOrJointIn, overlapIn, rollLength, rollWidth } from "./arguments";
import { coordinate, feet, inches } from "./read";
import { cutOuts } from "./readCutOuts";
import { flags, points as readPoints } from "./readRanges";
import { USUAL_PIN_SPACING_IN } from "./usual";

/** The way of the strips in degrees; undefined leaves it to the layout. */
export function direction(value: unknown, name: string): number | undefined {
  return value === undefined || value === null || value === "" ? undefined : coordinate(value, name);
}

export const pinSpacingIn = may("spacing_in", inches, USUAL_PIN_SPACING_IN);
export const bedCutOuts = may("cut_outs", cutOuts);
export const stripDirection = may("direction", direction);
/** The corners of a bed in plan. */
export const bedCorners = needs("points", readPoints);

/** The arguments by which all layout functions lay fabric. */
export const layingArguments = [
  rollWidth,
  rollLength,
  overlapIn,
  endLapIn,
  pinSpacingIn,
  bedCutOuts,
  bayFt,
  stripDirection,
] as const;

/** What the summaries take for edging after them; without a piece length, none is counted. */
export const edgingPieceLength = may("piece_length", feet, 0);
export const edgingStakeSpacing = may("stake_spacing_in", inches, 0);

/** Which sides of a bed have edging, 1 or 0 each. */
export const edgedSides = may("edged", flags);

/** The arguments of the summaries; which sides get edging follows them. */
export const summaryArguments = [...layingArguments, edgingPieceLength, edgingStakeSpacing, lapOrJointIn] as const;
const FABRIC = layingArguments.length;

/** A bed from its corners in order. */
export function pointsBed(corners: readonly Point[]): Bed {
  return { kind: "points", points: corners.map(([x, y]) => ({ x, y })) };
}

/** Lays a bed out by those arguments, given in their order. */
export function laidOut(bed: Bed, ...by: ValuesOf<typeof layingArguments>): Laid {
  const [rollWidthFt, rollLengthFt, overlap, endLap, pinSpacingIn, cutOutsFt, bay, directionDegrees] = by;
  return laid(
    { ...bed, cutOuts: cutOutsFt },
    {
      rollWidthFt,
      rollLengthFt,
      overlapIn: overlap,
      endLapIn: endLap,
      pinSpacingIn,
      bayFt: bay,
      directionDegrees,
    },
  );
}

/** A bed with its fabric and pins in plan. */
export interface Laid {
  readonly outline: Outline;
  readonly areaSqFt: number;
  readonly fabric: FabricLayout;
}

/**
 * Beds that were laid out last. A sheet asks for strips, rolls and pins of the same bed in several cells, and each
 * gets the answer of the one layout.
 */
const recent = new Map<string, Laid>();
const MOST_RECENT = 32;

/** Lays a bed out. The same bed and options give the same layout, so an earlier answer serves again. */
function laid(bed: Bed, options: FabricOptions): Laid {
  const key = JSON.stringify([bed, options]);
  const known = recent.get(key);
  if (known) return known;
  const outline = outlineOf(bed);
  const answer = { outline, areaSqFt: areaInPlan(bed, outline), fabric: layFabric(outline, fabricRulesOf(options)) };
  if (recent.size >= MOST_RECENT) recent.delete(must(recent.keys().next().value));
  recent.set(key, answer);
  return answer;
}

const HEADINGS = [
  "Area, sq ft",
  "Edge, ft",
  "Strips",
  "Fabric, sq ft",
  "Rolls",
  "Overlaps, ft",
  "Pins",
  "Strips to cut, ft",
  "Edging, ft",
  "Edging pieces",
  "Stakes",
  "Corner stakes",
  "Runs, ft",
];

/**
 * The counts of a layout under their headings, by the values of {@link summaryArguments}.
 *
 * @param edged 1 or 0 for each side, in the order of the plan's numbers; empty for the bed's own.
 */
export function summaryOf(
  bed: Bed,
  by: readonly [...ValuesOf<typeof summaryArguments>, ...unknown[]],
  edged: readonly number[] = [],
): (string | number)[][] {
  const sides = edged.length > 0 ? { ...bed, borderSides: placesOf(edged) } : bed;
  const { outline, areaSqFt, fabric } = laidOut(sides, ...(by.slice(0, FABRIC) as ValuesOf<typeof layingArguments>));
  const { counts, cuts } = fabric;
  const { strips, fabricSqFt, rolls, seamLengthFt, pins } = counts;
  const edgeFt = ringLength(outline.ring);
  const toCut = stripList(cuts.map(({ lengthFt }) => lengthFt));
  return [HEADINGS, [areaSqFt, edgeFt, strips, fabricSqFt, rolls, seamLengthFt, pins, toCut, ...edgingOf(outline, by)]];
}

function edgingOf(
  outline: Outline,
  by: readonly [...ValuesOf<typeof summaryArguments>, ...unknown[]],
): (string | number)[] {
  const [pieceLengthFt, stakeSpacingIn, lap] = by.slice(FABRIC) as [number, number, number];
  if (pieceLengthFt === 0) return ["", "", "", "", ""];
  const rules = borderRulesOf({ pieceLengthFt, stakeSpacingIn, lapIn: lap });
  const { edgingFt, pieces, stakes, cornerStakes, openRunsFt } = edgingCounts(outline, rules);
  return [edgingFt, pieces, stakes, cornerStakes, stripList(openRunsFt)];
}

// A place turned back from the strips' frame may be -0, which no cell should show: + 0 makes a plain 0 of it.

/** The lengths to cut, a piece a row. */
export function cutsOf({ fabric }: Laid): (string | number)[][] {
  const rows = fabric.cuts.flatMap(({ number, strip, pieces }) =>
    pieces.map(({ roll, startsAtFt, lengthFt }, piece) => [number, strip, piece + 1, roll, startsAtFt + 0, lengthFt]),
  );
  return [["Cut", "Strip", "Piece", "Roll", "Starts at, ft", "Length, ft"], ...rows];
}

/** Every pin, with why it is there. */
export function pinsOf({ fabric }: Laid): (string | number)[][] {
  const why = { corner: "corner", edge: "edge", cutOut: "cut-out", seam: "overlap", row: "row" };
  return [["x, ft", "y, ft", "Where"], ...fabric.pins.map(({ x, y, kind }) => [x + 0, y + 0, why[kind]])];
}
