import { type Estimate, estimateBed, type LaidCounts } from "../quantities/bed/estimate";
import { fields, type NumberFieldKey, type ShapeFieldKey } from "../quantities/bed/fields";
import { cornerFields, edgingFields } from "../quantities/bed/form";
import type { Bed as EstimateBed } from "../quantities/bed/read";
import { secondKey } from "../quantities/bed/secondEdging";
import { placesOf, widthsSides } from "../quantities/bed/sides";
import { type EdgingKind, edgingKindOf, METAL, NO_EDGING } from "../quantities/edgingKinds";
import { readNumber } from "../quantities/numberText";
import { INCHES_PER_FOOT } from "../quantities/units";
import { wholeUp } from "../quantities/whole";
import type { Bed, CutOut } from "./bed";
import { cutOutAt } from "./cutOutAt";
import { layOutBed, layOutSecond } from "./layOutBed";
import type { Layout } from "./layout";
import { layoutNotes } from "./messages";
import type { BorderOptions, LayoutOptions } from "./options";

/**
 * Lays out in plan the bed of an estimate.
 *
 * @param bed as read from a form.
 * @returns the layout; undefined where no more than the area is known.
 * @throws Problem where the bed cannot be laid out; it names the place.
 */
export function planOfEstimate(bed: EstimateBed): Layout | undefined {
  const plan = bedInPlan(bed);
  if (!plan) return undefined;
  const { cutOuts: sqFt, cutAround, pinSpacing, fabricLayers } = bed.numbers;
  const pins = fabricLayers > 0 ? wholeUp(cutAround / (pinSpacing / INCHES_PER_FOOT)) : 0;
  const layout = layOutBed(plan, optionsOf(bed));
  return {
    ...(fabricLayers > 0 ? layout : withoutFabric(layout)),
    ...(fabricLayers > 1 && { layers: fabricLayers }),
    ...(sqFt + pins > 0 && { notDrawn: { sqFt, pins } }),
    ...secondIn(bed, plan, layout),
  };
}

/** A bed's second edging along the sides that are picked for it; on a bed without sides by name, a note that it isn't drawn. */
function secondIn(
  { numbers: n, names, widthsFt }: EstimateBed,
  plan: Bed,
  { notes }: Layout,
): Partial<Pick<Layout, "second" | "notes">> {
  const kind = edgingKindOf(names.secondKind);
  if (plan.kind !== "rectangle" && plan.kind !== "widths")
    return kind === NO_EDGING ? {} : { notes: [...notes, layoutNotes.secondNotDrawn(kind.name, n.secondLength)] };
  const options = borderOptions(kind, {
    pieceLength: n.secondPieceLength,
    pieceLap: n.secondPieceLap,
    joint: n.secondJoint,
    stakeSpacing: n.secondStakeSpacing,
  });
  const marks = edgingFields[plan.kind].map((key) => n[secondKey<NumberFieldKey>(key)]);
  const sides = plan.kind === "widths" ? widthsSides(widthsFt, marks) : placesOf(marks);
  return options && sides.length > 0 ? { second: layOutSecond(plan, sides, options) } : {};
}

/** The bed with its edging alone. */
function withoutFabric(layout: Layout): Layout {
  const none = { strips: 0, cuts: 0, rolls: 0, fabricLengthFt: 0, fabricSqFt: 0, fabricOffRollsSqFt: 0 };
  const counts = { ...layout.counts, ...none, seamLengthFt: 0, endLaps: 0, pins: 0 };
  return { ...layout, strips: [], cuts: [], seams: [], pins: [], counts };
}

/**
 * Fabric, pins, and edging of the bed of an estimate, counted on its plan.
 *
 * @returns undefined where they are counted by rule instead: a plain rectangle, or a bed without a plan.
 * @throws Problem where the bed cannot be laid out; it names the place.
 */
export function countsInPlan(bed: EstimateBed, plan = planOfEstimate(bed)): LaidCounts | undefined {
  if (!plan || isPlainRectangle(bed)) return undefined;
  const along = plan.border.flatMap((run) => run.stakes);
  return {
    ...plan.counts,
    stripsFt: plan.cuts.map(({ lengthFt }) => lengthFt),
    edgingFt: plan.borderFt,
    cornerStakes: along.filter(({ kind }) => kind === "corner").length,
    openRunsFt: plan.border.flatMap(({ closed, lengthFt }) => (closed ? [] : lengthFt)),
  };
}

/** A bed with what its inputs come to. */
export interface WorkedOutBed {
  readonly bed: EstimateBed;
  /** undefined where no more than the area is known. */
  readonly plan: Layout | undefined;
  readonly estimate: Estimate;
}

/**
 * A bed's plan, and its estimate counted there.
 *
 * @param bed as read from a form.
 * @throws Problem where the bed cannot be laid out or its inputs don't go together; it names the place.
 */
export function workOut(bed: EstimateBed): WorkedOutBed {
  const plan = planOfEstimate(bed);
  return { bed, plan, estimate: estimateBed(bed, countsInPlan(bed, plan)) };
}

/** Whether the rule for a plain rectangle counts this bed. */
function isPlainRectangle(bed: EstimateBed): boolean {
  const { way, numbers, cutOuts } = bed;
  const isRounded = numbers.cornerRadius > 0 && numbers.roundedCorners > 0;
  return way === "rectangle" && !isRounded && cutOuts.length === 0 && !hasTypedDirection(bed);
}

const hasTypedDirection = ({ names }: EstimateBed) =>
  names.stripDirection.toLowerCase() !== fields.stripDirection.initial;

function optionsOf(bed: EstimateBed): LayoutOptions {
  const { numbers: n, names } = bed;
  const border = borderOptions(edgingKindOf(names.edgingKind), n);
  return {
    ...(hasTypedDirection(bed) && { directionDegrees: readNumber(names.stripDirection, fields.stripDirection.label) }),
    rollWidthFt: n.rollWidth,
    rollLengthFt: n.rollLength,
    overlapIn: n.overlap,
    endLapIn: n.endLap,
    pinSpacingIn: n.pinSpacing,
    bayFt: n.pinBay,
    ...(border && { border }),
  };
}

type Sizes = Readonly<Record<"pieceLength" | "pieceLap" | "joint" | "stakeSpacing", number>>;

/** A cut edge in one piece, however long. */
const WHOLE_RUN_FT = 1e6;

/** The edging of a bed; undefined for none. */
function borderOptions(edging: EdgingKind, n: Sizes): BorderOptions | undefined {
  // Without a kind it's metal.
  const kind = edging === METAL ? {} : { kind: edging };
  if (edging.drawn === "none") return undefined;
  if (!edging.lines.edging) return { ...kind, pieceLengthFt: WHOLE_RUN_FT, stakeSpacingIn: INCHES_PER_FOOT };
  const [lapIn, stakeSpacingIn] = edging.inSand ? [-n.joint, INCHES_PER_FOOT] : [n.pieceLap, n.stakeSpacing];
  return { ...kind, pieceLengthFt: n.pieceLength, lapIn, stakeSpacingIn };
}

function bedInPlan(bed: EstimateBed): Bed | undefined {
  const { way, numbers: n, widthsFt, points } = bed;
  const marked = (keys: readonly ShapeFieldKey[] = []) => placesOf(keys.map((key) => n[key]));
  const cutOuts: CutOut[] = bed.cutOuts.map(({ x, y, across, deep }) => cutOutAt(x, y, across, deep));
  switch (way) {
    case "rectangle":
      return {
        kind: "rectangle",
        lengthFt: n.length,
        widthFt: n.width,
        cornerRadiusFt: n.cornerRadius,
        roundedCorners: n.roundedCorners,
        rounded: cornerFields.map((key) => n[key]),
        cutOuts,
        borderSides: marked(edgingFields.rectangle),
      };
    case "round":
      return {
        kind: "round",
        diameterFt: n.diameter,
        innerDiameterFt: n.innerDiameter,
        innerBorder: n.innerBorder > 0,
        cutOuts,
      };
    case "widths":
      return {
        kind: "widths",
        spacingFt: n.spacing,
        widthsFt,
        cutOuts,
        borderSides: widthsSides(
          widthsFt,
          edgingFields.widths.map((key) => n[key]),
        ),
      };
    case "points":
      return {
        kind: "points",
        points: points.map(([x, y]) => ({ x, y })),
        cutOuts,
        borderSides: bed.borderAfterPoint.flatMap((border, index) => (border ? [index + 1] : [])),
      };
    case "area":
      return undefined;
  }
}
