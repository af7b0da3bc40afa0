import type { Bed } from "../src/layout/bed";
import { LabelBoard } from "../src/layout/drawing/labels";
import { Pen } from "../src/layout/drawing/pen";
import type { PlanView } from "../src/layout/drawing/view";
import { layOutBed } from "../src/layout/layOutBed";
import type { LayoutOptions } from "../src/layout/options";

/** Options of a layout beside the usual ones; undefined takes a usual one away. */
export type DrawnOptions = { readonly [Key in keyof LayoutOptions]?: LayoutOptions[Key] | undefined };

/**
 * A bed on a sheet that is easy to work out by hand: 20 pixels a foot, its zero point 100 from the left and 300 from the
 * top, on 600 by 400. Text is 10 high. Pieces of border are 8 ft long without a lap, stakes 4 ft apart.
 */
export function viewOf(bed: Bed, options: DrawnOptions = {}): PlanView {
  const border = { pieceLengthFt: 8, stakeSpacingIn: 48 };
  return {
    layout: layOutBed(bed, { rollWidthFt: 6, rollLengthFt: 50, overlapIn: 6, border, ...options } as LayoutOptions),
    pen: new Pen("bed", "light", 10),
    labels: new LabelBoard({ width: 600, height: 400 }),
    scale: 20,
    height: 400,
    at: ({ x, y }) => ({ x: 100 + 20 * x, y: 300 - 20 * y }),
  };
}

/** The same bed without border. */
export const bareViewOf = (bed: Bed, options: DrawnOptions = {}): PlanView =>
  viewOf(bed, { ...options, border: undefined });
