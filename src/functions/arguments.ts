import { may, needs } from "./argument";
import {
  feet,
  feetOrZero,
  flag,
  inches,
  inchesOrZero,
  lapOrJoint,
  positive,
  positiveOrZero,
  shareUnderOne,
} from "./read";
import { stoneWeight } from "./readNamed";
import { points as readPoints, widths as readWidths } from "./readRanges";
import { USUAL_BAY_FT, USUAL_END_LAP_IN, USUAL_PIN_SPACING_IN } from "./usual";

/* Arguments that several functions take alike. What they mean is told in `argumentNotes.ts`. */

export const bedLength = needs("length", feet);
export const bedWidth = needs("width", feet);
/** The bed's length and width as fabric is laid in it: along and across the strips. */
export const lengthAlong = needs("length", feet);
export const widthAcross = needs("width", feet);
export const cornerRadius = may("corner_radius", feetOrZero, 0);
export const spacing = needs("spacing", feet);
export const widths = needs("widths", readWidths);
export const points = needs("points", readPoints);
export const area = needs("area", positive);

export const pieceLength = needs("piece_length", feet);
export const lapIn = may("lap_in", inchesOrZero, 0);
/** Where pieces may stand a joint apart, too. */
export const lapOrJointIn = may("lap_in", lapOrJoint, 0);
export const closedRun = may("closed", flag, false);

export const rollWidth = needs("roll_width", feet);
export const rollLength = needs("roll_length", feet);
export const overlapIn = needs("overlap_in", inchesOrZero);
export const endLapIn = may("end_lap_in", inchesOrZero, USUAL_END_LAP_IN);
export const rowSpacingIn = may("spacing_in", inches, USUAL_PIN_SPACING_IN);
export const bayFt = may("bay_ft", feet, USUAL_BAY_FT);

export const stoneDepthIn = needs("depth_in", inches);
export const stone = needs("stone", stoneWeight);
export const waste = may("waste", shareUnderOne, 0);

export const cost = needs("cost", positiveOrZero);
export const margin = needs("margin", shareUnderOne);
