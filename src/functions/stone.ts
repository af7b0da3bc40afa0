import { orderUp, stoneBags, stoneCovers, stoneDepth, stoneTons, stoneYards } from "../quantities/stoneAmounts";
import { cellError, sound } from "./cellError";
import { inches, inchesOrZero, positive, positiveOrZero, shareUnderOne } from "./read";
import { stoneWeight } from "./readNamed";

const USUAL_TOP_GAP_IN = 0.5;

/**
 * Depth of the finished stone behind a border, a little lower than its top edge.
 * @customfunction STONE_DEPTH
 * @param border_height_in Height of the border: inches, or text such as 4".
 * @param trench_depth_in How deep the border is set below the scraped floor: inches, or text such as 1 1/2".
 * @param top_gap_in How far the stone stays below the top edge: inches, or text. Left out: 0.5.
 * @returns Inches.
 * @example =BED.STONE_DEPTH(4, 1.5) gives 2
 * @source Common practice: stone ends about half an inch below the top edge of its border.
 * @see BED.STONE_TONS, BED.STONE_YARDS
 */
export function STONE_DEPTH(border_height_in: unknown, trench_depth_in: unknown, top_gap_in?: unknown): number {
  try {
    return sound(
      stoneDepth(
        inches(border_height_in, "border_height_in"),
        inchesOrZero(trench_depth_in, "trench_depth_in"),
        inchesOrZero(top_gap_in, "top_gap_in", USUAL_TOP_GAP_IN),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Weight of a kind of stone, loose and dry. The supplier's scale ticket beats every table.
 * @customfunction STONE_DENSITY
 * @param stone A kind of stone, such as "river rock" or "crushed limestone".
 * @returns Short tons a loose cubic yard.
 * @example =BED.STONE_DENSITY("river rock") gives 1.35
 * @source The table of stone, where each row names its source and how sure it is.
 * @see BED.STONE_TONS, BED.STONE_COVERS, BED.BARROW_TRIPS
 */
export function STONE_DENSITY(stone: unknown): number {
  try {
    return sound(stoneWeight(stone, "stone"));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Stone for a bed by volume.
 * @customfunction STONE_YARDS
 * @param area Area of the bed in square feet.
 * @param depth_in Depth of the stone: inches, or text such as 2 1/2".
 * @param waste Share more for low spots and what stays behind, such as 8%. Left out: 0.
 * @returns Loose cubic yards.
 * @example =BED.STONE_YARDS(108, 3) gives 1
 * @source A cubic yard covers 324 square feet an inch deep (27 × 12, exact).
 * @see BED.STONE_TONS, BED.STONE_BAGS, BED.ORDER_UP
 */
export function STONE_YARDS(area: unknown, depth_in: unknown, waste?: unknown): number {
  try {
    return sound(stoneYards(positive(area, "area"), inches(depth_in, "depth_in"), shareUnderOne(waste, "waste", 0)));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Stone for a bed by weight.
 * @customfunction STONE_TONS
 * @param area Area of the bed in square feet.
 * @param depth_in Depth of the stone: inches, or text such as 2 1/2".
 * @param stone Short tons a loose cubic yard, such as 1.35, or a kind of stone, such as "river rock".
 * @param waste Share more for low spots and what stays behind, such as 8%. Left out: 0.
 * @returns Short tons of 2,000 lb.
 * @example =BED.STONE_TONS(108, 3, "crushed limestone") gives 1.35
 * @source A cubic yard covers 324 square feet an inch deep (exact); weights by name from the table of stone.
 * @see BED.STONE_DENSITY, BED.STONE_COVERS, BED.ORDER_UP, BED.STONE_DEPTH
 */
export function STONE_TONS(area: unknown, depth_in: unknown, stone: unknown, waste?: unknown): number {
  try {
    return sound(
      stoneTons(
        positive(area, "area"),
        inches(depth_in, "depth_in"),
        stoneWeight(stone, "stone"),
        shareUnderOne(waste, "waste", 0),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Area that so many tons of stone cover.
 * @customfunction STONE_COVERS
 * @param tons Short tons of 2,000 lb.
 * @param depth_in Depth of the stone: inches, or text such as 2 1/2".
 * @param stone Short tons a loose cubic yard, such as 1.35, or a kind of stone, such as "river rock".
 * @returns Square feet.
 * @example =BED.STONE_COVERS(1.35, 3, 1.35) gives 108
 * @source A cubic yard covers 324 square feet an inch deep (exact); weights by name from the table of stone.
 * @see BED.STONE_TONS, BED.STONE_DENSITY
 */
export function STONE_COVERS(tons: unknown, depth_in: unknown, stone: unknown): number {
  try {
    return sound(stoneCovers(positiveOrZero(tons, "tons"), inches(depth_in, "depth_in"), stoneWeight(stone, "stone")));
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * Bags of stone for a bed.
 * @customfunction STONE_BAGS
 * @param area Area of the bed in square feet.
 * @param depth_in Depth of the stone: inches, or text such as 2 1/2".
 * @param bag_cubic_ft Cubic feet that one bag holds, such as 0.5.
 * @param waste Share more for low spots and what stays behind, such as 8%. Left out: 0.
 * @returns Whole bags.
 * @example =BED.STONE_BAGS(20, 2, 0.5) gives 7
 * @source 27 cubic feet are a cubic yard (NIST Handbook 44, Appendix C).
 * @see BED.STONE_YARDS, BED.STONE_TONS
 */
export function STONE_BAGS(area: unknown, depth_in: unknown, bag_cubic_ft: unknown, waste?: unknown): number {
  try {
    return sound(
      stoneBags(
        positive(area, "area"),
        inches(depth_in, "depth_in"),
        positive(bag_cubic_ft, "bag_cubic_ft"),
        shareUnderOne(waste, "waste", 0),
      ),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}

/**
 * An amount as the yard sells it: up to the next whole step, and to its minimum.
 * @customfunction ORDER_UP
 * @param amount How much is needed. 0 stays 0.
 * @param step The yard sells in steps of this, in the same unit, such as 0.5.
 * @param minimum The least it delivers, in the same unit. Left out: 0.
 * @returns The same unit as the amount.
 * @example =BED.ORDER_UP(6.02, 0.5) gives 6.5
 * @source Plain arithmetic; steps and smallest orders are the yard's own.
 * @see BED.STONE_TONS, BED.STONE_YARDS
 */
export function ORDER_UP(amount: unknown, step: unknown, minimum?: unknown): number {
  try {
    return sound(
      orderUp(positiveOrZero(amount, "amount"), positive(step, "step"), positiveOrZero(minimum, "minimum", 0)),
    );
  } catch (reason) {
    throw cellError(reason);
  }
}
