import type { LaidCounts } from "../quantities/bed/estimate";
import { fields, type ShapeFieldKey } from "../quantities/bed/fields";
import { cornerFields, edgingFields } from "../quantities/bed/form";
import type { Bed as EstimateBed } from "../quantities/bed/read";
import { placesOf, widthsSides } from "../quantities/bed/sides";
import { readNumber } from "../quantities/numberText";
import { INCHES_PER_FOOT } from "../quantities/units";
import { wholeUp } from "../quantities/whole";
import type { Bed, CutOut } from "./bed";
import { cutOutAt } from "./cutOutAt";
import { layOutBed } from "./layOutBed";
import type { Layout } from "./layout";
import type { LayoutOptions } from "./options";

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
  const { cutOuts: sqFt, cutAround, pinSpacing } = bed.numbers;
  const pins = wholeUp(cutAround / (pinSpacing / INCHES_PER_FOOT));
  return { ...layOutBed(plan, optionsOf(bed)), ...(sqFt + pins > 0 && { notDrawn: { sqFt, pins } }) };
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
  return {
    ...(hasTypedDirection(bed) && { directionDegrees: readNumber(names.stripDirection, fields.stripDirection.label) }),
    rollWidthFt: n.rollWidth,
    rollLengthFt: n.rollLength,
    overlapIn: n.overlap,
    endLapIn: n.endLap,
    pinSpacingIn: n.pinSpacing,
    bayFt: n.pinBay,
    border: { pieceLengthFt: n.pieceLength, lapIn: n.pieceLap, stakeSpacingIn: n.stakeSpacing },
  };
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
