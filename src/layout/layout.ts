import type { Bed } from "./bed";
import type { BorderRun } from "./border";
import type { BorderRules, FabricRules } from "./options";
import type { Outline } from "./outline";
import type { Pin } from "./pinBoard";
import type { Point } from "./plane";
import type { RollPiece } from "./rolls";

/** A strip of fabric in plan, as wide as it lies, before it is cut to the outline. */
export interface Strip {
  /** From 1, in the order in which strips are laid. */
  readonly number: number;
  readonly widthFt: number;
}

/** A length of fabric to cut, full roll width, and where it lies. */
export interface FabricCut {
  /** From 1, in the order in which they are laid. */
  readonly number: number;
  readonly strip: number;
  /** Length to cut, end laps not included. */
  readonly lengthFt: number;
  /** The pieces that it comes in off the rolls; more than one where a roll runs out. */
  readonly pieces: readonly RollPiece[];
  /** Four corners in plan; it begins along the side from the first to the last. */
  readonly corners: readonly [Point, Point, Point, Point];
}

/** A straight line in plan along which two layers are pinned, in its middle. */
export interface Line {
  readonly from: Point;
  readonly to: Point;
}

/** Fabric and pins of a bed in plan. */
export interface FabricLayout {
  /** The roll, laps and pins by which it was laid. */
  readonly rules: FabricRules;
  /** The direction of the strips: a unit vector, and degrees from the base line, 0 up to 180. */
  readonly direction: Point;
  readonly directionDegrees: number;
  readonly strips: readonly Strip[];
  readonly cuts: readonly FabricCut[];
  readonly seams: readonly Line[];
  readonly pins: readonly Pin[];
  readonly counts: FabricCounts;
}

export interface FabricCounts {
  readonly strips: number;
  readonly cuts: number;
  readonly rolls: number;
  /** Feet off the rolls, full width, end laps included. */
  readonly fabricLengthFt: number;
  /** Fabric that lies in the bed, laps counted twice. */
  readonly fabricSqFt: number;
  /** Fabric off the rolls, full width. */
  readonly fabricOffRollsSqFt: number;
  readonly seamLengthFt: number;
  readonly endLaps: number;
  readonly pins: number;
}

export interface LayoutCounts extends FabricCounts {
  readonly pieces: number;
  readonly stakes: number;
}

/** What is different of a layout for its second edging. */
export interface SecondBorder {
  readonly outline: Outline;
  readonly borderFt: number;
  readonly border: readonly BorderRun[];
  readonly borderRules: BorderRules;
  readonly pieces: number;
  readonly stakes: number;
}

/** A bed laid out in plan, as plain data: lengths in feet, areas in square feet. */
export interface Layout extends FabricLayout {
  /** The bed as it was measured. */
  readonly bed: Bed;
  readonly outline: Outline;
  /** Net of cut-outs; by the rule chosen where the bed was taped by widths. */
  readonly areaSqFt: number;
  /** Round the outer edge, all sides. */
  readonly edgeFt: number;
  /** Along the sides that get border. */
  readonly borderFt: number;
  /** Round the cut-outs. */
  readonly cutAroundFt: number;
  readonly border: readonly BorderRun[];
  readonly borderRules: BorderRules | undefined;
  /** A second edging, along sides that have none of the first; left out where there is none. */
  readonly second?: SecondBorder;
  readonly counts: LayoutCounts;
  /** It is of the second edging, and has it in place of the first. */
  readonly isSecond?: true;
  /** Layers of the fabric, where it lies in more than one; each has the counts that are given. */
  readonly layers?: number;
  /** Areas to deduct that have no place in the plan, and the pins around them; left out where there are none. */
  readonly notDrawn?: { readonly sqFt: number; readonly pins: number };
  /** What to know before relying on the counts, in sentences for the user. */
  readonly notes: readonly string[];
}
