import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  EDGING_PIECES,
  FABRIC_ROLLS,
  FABRIC_STRIPS,
  LAYOUT,
  LAYOUT_CUTS,
  LAYOUT_PINS,
  LAYOUT_RECTANGLE,
  STAKES,
  STONE_BAGS,
  STONE_TONS,
  STONE_YARDS,
} from "../../src/functions/index";

/** Whole inches, so that the walks below are exact. */
const inches = (least: number, most: number) => fc.integer({ min: least, max: most });

describe("a border laid piece by piece along its run, in whole inches", () => {
  const run = fc.record({ edge: inches(1, 1200), piece: inches(24, 144), lap: inches(0, 12), gap: inches(6, 60) });

  test("takes as many pieces as a walk that puts one after another until the run is covered", () => {
    fc.assert(
      fc.property(run, ({ edge, piece, lap }) => {
        let pieces = 1;
        for (let reach = piece; reach < edge; reach += piece - lap) pieces++;
        expect(EDGING_PIECES(edge / 12, piece / 12, lap)).toBe(pieces);
      }),
    );
  });

  test("takes a stake at each end, at each joint, and so many between that none is further than the spacing", () => {
    fc.assert(
      fc.property(run, ({ edge, piece, lap, gap }) => {
        const joints: number[] = [];
        for (let reach = piece; reach < edge; reach += piece - lap) joints.push(reach - lap);
        let count = 1;
        let from = 0;
        for (const to of [...joints, edge]) {
          for (let at = from + gap; at < to; at += gap) count++;
          count++;
          from = to;
        }
        expect(STAKES(edge / 12, piece / 12, gap, lap)).toBe(count);
      }),
    );
  });
});

test("without laps, rolls are the strips' length over the roll's, used up to the end", () => {
  fc.assert(
    fc.property(inches(1, 60), inches(1, 5), inches(4, 40), (length, strips, roll) => {
      expect(FABRIC_ROLLS(length, strips * 6, 6, roll, 0, 0)).toBe(Math.ceil((length * strips) / roll));
    }),
  );
});

describe("more area, depth or waste never gives less stone", () => {
  const amount = fc.double({ min: 0.01, max: 1e5, noNaN: true });
  const share = fc.double({ min: 0, max: 0.99, noNaN: true });
  test.each([
    ["STONE_YARDS", (area: number, depth: number, waste: number) => STONE_YARDS(area, depth, waste)],
    ["STONE_TONS", (area: number, depth: number, waste: number) => STONE_TONS(area, depth, "river rock", waste)],
    ["STONE_BAGS", (area: number, depth: number, waste: number) => STONE_BAGS(area, depth, 0.5, waste)],
  ])("%s", (_name, stone) => {
    fc.assert(
      fc.property(
        amount,
        amount,
        share,
        fc.double({ min: 1, max: 3, noNaN: true }),
        share,
        (area, depth, waste, more, less) => {
          const given = stone(area, depth, waste);
          expect(stone(area * more, depth, waste)).toBeGreaterThanOrEqual(given);
          expect(stone(area, depth * more, waste)).toBeGreaterThanOrEqual(given);
          expect(stone(area, depth, waste * less)).toBeLessThanOrEqual(given);
        },
      ),
    );
  });
});

describe("a layout", () => {
  const [AREA, , STRIPS, FABRIC, ROLLS, , PINS] = [0, 1, 2, 3, 4, 5, 6];
  const ROLL = [6, 50, 6] as const;
  const counts = (list: unknown[][]) => list[1] as number[];

  /** Beds round a middle, so that no sides cross. */
  const outline = fc.array(fc.integer({ min: 24, max: 80 }), { minLength: 3, maxLength: 10 }).map((radii) =>
    radii.map((radius, place): [number, number] => {
      const turn = (2 * Math.PI * place) / radii.length;
      return [Math.round(radius * Math.cos(turn)) / 4, Math.round(radius * Math.sin(turn)) / 4];
    }),
  );

  test("of points counts the pins and rolls that the lists of pins and cuts show", () => {
    fc.assert(
      fc.property(outline, (points) => {
        const given = counts(LAYOUT(points, ...ROLL));
        // What lies in the bed is no less than the bed itself.
        expect(given[FABRIC!]).toBeGreaterThanOrEqual(given[AREA!]! - 1e-9);
        const [, ...pins] = LAYOUT_PINS(points, ...ROLL);
        expect(pins.length).toBe(given[PINS!]);
        const [, ...pieces] = LAYOUT_CUTS(points, ...ROLL) as number[][];
        expect(Math.max(...pieces.map(([, , , roll]) => roll!))).toBe(given[ROLLS!]);
      }),
      { numRuns: 60 },
    );
  });

  test("of a plain rectangle takes the strips and rolls of the functions for rectangles", () => {
    fc.assert(
      fc.property(fc.integer({ min: 12, max: 60 }), fc.integer({ min: 3, max: 11 }), (length, width) => {
        const given = counts(LAYOUT_RECTANGLE(length, width, 0, 0, ...ROLL, 12, 12, undefined, 4, 0));
        expect(given[AREA!]).toBe(length * width);
        expect(given[STRIPS!]).toBe(FABRIC_STRIPS(width, 6, 6));
        expect(given[ROLLS!]).toBe(FABRIC_ROLLS(length, width, 6, 50, 6));
      }),
      { numRuns: 40 },
    );
  });
});
