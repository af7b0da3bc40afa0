import { Chance } from "../../fuzz/random";
import type { BARE } from "./bare";

type Range = readonly [least: number, most: number];

/** Plain numbers for each argument, from least to most, in the order of the arguments; whole where both ends are. */
const RANGES: Readonly<Record<keyof typeof BARE, readonly Range[]>> = {
  FEET: [[0.5, 60.5]],
  INCHES: [[0.5, 60.5]],
  AREA_RECTANGLE: [
    [12.5, 60.5],
    [6.5, 12.5],
    [0.5, 2.5],
    [1, 4],
  ],
  AREA_TRIANGLE: [
    [10.5, 19.5],
    [10.5, 19.5],
    [10.5, 19.5],
  ],
  AREA_ROUND: [
    [10.5, 30.5],
    [0.5, 9.5],
  ],
  DIG_YARDS: [
    [20.5, 900.5],
    [1.5, 4.5],
    [10.5, 90.5],
    [3.5, 5.5],
    [0.5, 2.5],
  ],
  SPOIL_YARDS: [
    [0.5, 20.5],
    [0.05, 0.5],
  ],
  LOADS: [
    [0.5, 40.5],
    [3.5, 12.5],
    [1.05, 1.55],
    [2.5, 9.5],
  ],
  EDGING_PIECES: [
    [5.5, 200.5],
    [4.5, 10.5],
    [0.5, 4.5],
  ],
  STAKES: [
    [5.5, 200.5],
    [4.5, 10.5],
    [20.5, 48.5],
    [0.5, 4.5],
    [1, 6],
  ],
  FABRIC_STRIPS: [
    [2.5, 30.5],
    [3.5, 12.5],
    [3.5, 18.5],
  ],
  FABRIC_AREA: [
    [8.5, 90.5],
    [2.5, 30.5],
    [3.5, 12.5],
    [3.5, 18.5],
    [20.5, 60.5],
    [3.5, 18.5],
  ],
  FABRIC_ROLLS: [
    [8.5, 90.5],
    [2.5, 30.5],
    [3.5, 12.5],
    [20.5, 60.5],
    [3.5, 18.5],
    [3.5, 18.5],
  ],
  PINS: [
    [8.5, 90.5],
    [2.5, 30.5],
    [3.5, 12.5],
    [3.5, 18.5],
    [8.5, 24.5],
    [1.5, 30.5],
    [2.5, 5.5],
  ],
  STONE_DEPTH: [
    [5.5, 9.5],
    [0.5, 2.5],
    [0.25, 1.25],
  ],
  STONE_DENSITY: [[0.5, 1.95]],
  STONE_YARDS: [
    [20.5, 900.5],
    [1.5, 5.5],
    [0.01, 0.2],
  ],
  STONE_TONS: [
    [20.5, 900.5],
    [1.5, 5.5],
    [0.5, 1.95],
    [0.01, 0.2],
  ],
  STONE_COVERS: [
    [0.5, 30.5],
    [1.5, 5.5],
    [0.5, 1.95],
  ],
  STONE_BAGS: [
    [20.5, 900.5],
    [1.5, 5.5],
    [0.25, 1.05],
    [0.01, 0.2],
  ],
  STONE_BULK_BAGS: [
    [20.5, 900.5],
    [1.5, 5.5],
    [0.5, 1.5],
    [0.01, 0.2],
  ],
  PAVERS: [
    [5.5, 120.5],
    [2.25, 8.5],
    [0.05, 0.5],
  ],
  SAND_YARDS: [
    [5.5, 120.5],
    [4.5, 16.5],
    [0.75, 4.5],
    [0.01, 0.2],
  ],
  ORDER_UP: [
    [0.5, 30.5],
    [0.25, 2.25],
    [0.5, 3.5],
  ],
  BARROW_TRIPS: [
    [0.5, 30.5],
    [0.5, 1.95],
    [4.5, 8.5],
    [200.5, 400.5],
  ],
  HAUL_HOURS: [
    [3.5, 300.5],
    [20.5, 300.5],
    [1.5, 3.5],
    [0.25, 1.25],
    [150.5, 250.5],
  ],
  PRICE_MARKUP: [
    [10.5, 9000.5],
    [0.05, 0.6],
  ],
  PRICE_MARGIN: [
    [10.5, 9000.5],
    [0.05, 0.6],
  ],
  MARKUP_FOR_MARGIN: [[0.05, 0.6]],
  DIG_DATE: [
    [45_000, 47_000],
    [1, 10],
  ],
};

/** Rows of plain numbers for a function, the same ones each time. */
export function inputsOf(id: keyof typeof BARE, rows: number): number[][] {
  const chance = new Chance(17);
  const value = ([least, most]: Range) =>
    Number.isInteger(least) && Number.isInteger(most)
      ? chance.whole(least, most)
      : least + chance.share() * (most - least);
  return Array.from({ length: rows }, () => RANGES[id].map(value));
}
