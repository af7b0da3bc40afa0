import type { EdgingKind } from "../quantities/edgingKinds";
import { endLapOf } from "../quantities/fabric";
import { MOST_JOINT_IN } from "../quantities/pavers";
import { INCHES_PER_FOOT } from "../quantities/units";
import { finite, inRange, positive } from "./readMeasure";

/** How fabric is to be laid. What is left out takes the default in brackets. */
export interface FabricOptions {
  readonly rollWidthFt: number;
  /** [none]: strips of any length, without end laps. */
  readonly rollLengthFt?: number;
  readonly overlapIn: number;
  /** Lap of two pieces end to end [12]. */
  readonly endLapIn?: number;
  /** The direction of the strips, in degrees counterclockwise from the base line [the one that takes least fabric]. */
  readonly directionDegrees?: number | undefined;
  /** Pins at most this far apart [12]. */
  readonly pinSpacingIn?: number;
  /** Bays of the pin pattern across a strip are at most this wide [4]. */
  readonly bayFt?: number;
}

/** How a bed is to be laid out. */
export interface LayoutOptions extends FabricOptions {
  /** Border in pieces; left out: no border is laid out. */
  readonly border?: BorderOptions;
}

export interface BorderOptions {
  readonly pieceLengthFt: number;
  /** Lap of two pieces at a joint; under 0 where they stand a joint apart [0]. */
  readonly lapIn?: number;
  readonly stakeSpacingIn: number;
  /** What the bed is edged with; left out: pieces with stakes along the run. */
  readonly kind?: EdgingKind | undefined;
}

/** The options for fabric, checked, in feet, with the defaults filled in. */
export interface FabricRules {
  readonly rollWidthFt: number;
  readonly rollLengthFt: number;
  readonly overlapFt: number;
  readonly endLapFt: number;
  readonly directionDegrees: number | undefined;
  readonly pinSpacingFt: number;
  readonly bayFt: number;
}

export interface BorderRules {
  readonly pieceLengthFt: number;
  readonly lapFt: number;
  readonly stakeSpacingFt: number;
  readonly kind: EdgingKind | undefined;
}

/**
 * The options for fabric and pins, checked and in feet.
 *
 * @throws Problem that names the value.
 */
export function fabricRulesOf(options: FabricOptions): FabricRules {
  const rollLengthFt = options.rollLengthFt ?? Number.POSITIVE_INFINITY;
  if (options.rollLengthFt !== undefined) positive("The roll length", rollLengthFt, "roll_length");
  const { directionDegrees } = options;
  return {
    rollWidthFt: positive("The roll width", options.rollWidthFt, "roll_width"),
    rollLengthFt,
    overlapFt: inches("The overlap", options.overlapIn, "overlap_in"),
    endLapFt: endLapOf(
      rollLengthFt,
      inRange("The end lap", options.endLapIn ?? 12, 0, LARGEST_INCHES, IN, "end_lap_in"),
    ),
    directionDegrees:
      directionDegrees === undefined ? undefined : finite("The direction", directionDegrees, "direction"),
    pinSpacingFt: positive("The pin spacing", options.pinSpacingIn ?? 12, "spacing_in") / INCHES_PER_FOOT,
    bayFt: positive("The pin bay", options.bayFt ?? 4, "bay_ft"),
  };
}

/**
 * The options for border, checked and in feet.
 *
 * @throws Problem that names the value.
 */
export function borderRulesOf(options: BorderOptions): BorderRules {
  const { lapIn: lap = 0 } = options;
  const isJoint = lap < 0 && lap >= -MOST_JOINT_IN;
  return {
    pieceLengthFt: positive("The edging piece", options.pieceLengthFt, "piece_length"),
    lapFt: inRange("The edging lap", lap, isJoint ? lap : 0, LARGEST_INCHES, IN, "lap_in") / INCHES_PER_FOOT,
    stakeSpacingFt: positive("The stake spacing", options.stakeSpacingIn, "stake_spacing_in") / INCHES_PER_FOOT,
    kind: options.kind,
  };
}

const IN = " Type inches.";
export const LARGEST_INCHES = 1200;

const inches = (what: string, value: number, argument: string): number =>
  inRange(what, value, 0, LARGEST_INCHES, IN, argument) / INCHES_PER_FOOT;
