import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { areaPoints, edgePoints, type Point } from "./outline";
import { firstCrossing } from "./outlineCrossing";
import { Problem } from "./problem";

const TRIANGLE: Point[] = [
  [0, 0],
  [4, 0],
  [0, 3],
];
const BOW_TIE: Point[] = [
  [0, 0],
  [2, 2],
  [2, 0],
  [0, 2],
];

describe("area inside an outline", () => {
  test("is the same either way round, closed or not, with a point doubled, and from any corner", () => {
    const [a, b, c] = TRIANGLE as [Point, Point, Point];
    for (const points of [
      [a, b, c],
      [c, b, a],
      [a, b, c, a],
      [a, a, b, b, c, a, a],
      [b, c, a],
    ])
      expect(areaPoints(points)).toBe(6);
  });

  test("does not depend on where the origin is", () => {
    const far = TRIANGLE.map(([x, y]): Point => [x + 1e7, y - 3e7]);
    expect(areaPoints(far)).toBe(6);
  });

  test("is that of a skew triangle away from the origin", () => {
    // From (10, 20) by (4, 2) and by (1, 5): (4 × 5 − 1 × 2) ÷ 2. Its sides are √20, √18 and √26.
    const skew: Point[] = [
      [10, 20],
      [14, 22],
      [11, 25],
    ];
    expect(areaPoints(skew)).toBe(9);
    expect(edgePoints(skew)).toBeCloseTo(Math.sqrt(20) + Math.sqrt(18) + Math.sqrt(26), 12);
    expect(edgePoints(skew, false)).toBeCloseTo(Math.sqrt(20) + Math.sqrt(18), 12);
  });

  test("needs points that differ", () => {
    const one: Point = [1, 1];
    expect(() => areaPoints([one, one, one])).toThrow(/1 different point\. Give at least 3/);
  });

  test("takes inside corners", () => {
    // An L: 4 × 4 less 2 × 2
    const points: Point[] = [
      [0, 0],
      [4, 0],
      [4, 2],
      [2, 2],
      [2, 4],
      [0, 4],
    ];
    expect(areaPoints(points)).toBe(12);
  });

  test("takes corners on a straight side", () => {
    expect(
      areaPoints([
        [0, 0],
        [0.1, 0.1],
        [0.2, 0.2],
        [0.7, 0.7],
        [0, 1],
      ]),
    ).toBeCloseTo(0.35, 12);
  });

  test("needs three different points", () => {
    expect(() =>
      areaPoints([
        [0, 0],
        [1, 1],
        [0, 0],
        [0, 0],
      ]),
    ).toThrow(/2 different points. Give at least 3/);
    expect(() => areaPoints([])).toThrow(/0 different points/);
  });
});

describe("an outline that crosses itself", () => {
  test("is refused with its sides named by their points", () => {
    expect(() => areaPoints(BOW_TIE)).toThrow(/side 1 to 2 meets side 3 to 4/);
  });

  test("is named by the rows as typed where a point was doubled, and by the closing side", () => {
    const [a, b, c, d] = BOW_TIE as [Point, Point, Point, Point];
    expect(() => areaPoints([a, a, b, c, d])).toThrow(/side 1 to 3 meets side 4 to 5/);
    expect(() => areaPoints([b, c, d, a])).toThrow(/side 2 to 3 meets side 4 to 1/);
  });

  test("is one that touches itself with a corner, or folds back along a side", () => {
    expect(() =>
      areaPoints([
        [0, 0],
        [4, 0],
        [4, 4],
        [2, 0],
        [0, 4],
      ]),
    ).toThrow(/side 1 to 2 meets/);
    expect(() =>
      areaPoints([
        [0, 0],
        [4, 0],
        [2, 0],
        [2, 3],
      ]),
    ).toThrow(Problem);
    expect(() =>
      areaPoints([
        [0, 0],
        [1, 1],
        [2, 2],
      ]),
    ).toThrow(Problem);
  });

  test("is found among many sides as by looking at every pair", () => {
    const point = fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 }));
    fc.assert(
      fc.property(fc.uniqueArray(point, { minLength: 3, maxLength: 9, selector: String }), (points) => {
        expect(firstCrossing(points) === undefined).toBe(isSimple(points));
      }),
      { numRuns: 500 },
    );
  });
});

describe("the first two sides that meet", () => {
  const far = (points: readonly Point[], x: number, y: number) =>
    points.map((point): Point => [point[0] + x, point[1] + y]);

  test.each<[string, Point[], [number, number] | undefined]>([
    [
      "of a bow tie are those that cross",
      [
        [0, 0],
        [4, 4],
        [4, 0],
        [0, 4],
      ],
      [0, 2],
    ],
    [
      "are those that run back over each other",
      [
        [0, 0],
        [4, 0],
        [2, 0],
        [2, 3],
      ],
      [0, 1],
    ],
    [
      "are those of a spike that stands up",
      [
        [0, 0],
        [0, 4],
        [0, 2],
        [3, 2],
      ],
      [0, 1],
    ],
    [
      "are those of a spike that slants",
      [
        [0, 0],
        [4, 4],
        [2, 2],
        [5, 0],
      ],
      [0, 1],
    ],
    [
      "are those of a spike at the last corner",
      [
        [2, 3],
        [0, 0],
        [4, 0],
        [2, 0],
      ],
      [1, 2],
    ],
    [
      "are those of a spike at the first corner",
      [
        [0, 0],
        [4, 0],
        [2, 3],
        [6, 0],
      ],
      [0, 3],
    ],
    [
      "may touch with a corner alone",
      [
        [0, 0],
        [6, 0],
        [6, 4],
        [3, 0],
        [0, 4],
      ],
      [0, 2],
    ],
    [
      "may share a corner that comes twice",
      [
        [0, 0],
        [2, 2],
        [4, 0],
        [4, 4],
        [2, 2],
        [0, 4],
      ],
      [0, 3],
    ],
    [
      "may lie on one another",
      [
        [0, 0],
        [6, 0],
        [6, 2],
        [4, 2],
        [4, 0],
        [2, 0],
        [2, 2],
        [0, 2],
      ],
      [0, 3],
    ],
    [
      "may not be the first from the left",
      [
        [10, 0],
        [14, 4],
        [14, 0],
        [10, 4],
        [0, 4],
        [4, 0],
        [0, 0],
        [4, 3],
      ],
      [0, 2],
    ],
    [
      "of a star are the first with the least partner",
      [
        [0, 3],
        [2, -3],
        [-3, 1],
        [3, 1],
        [-2, -3],
      ],
      [0, 2],
    ],
    [
      "of the star the other way round, too",
      [
        [0, 3],
        [-2, -3],
        [3, 1],
        [-3, 1],
        [2, -3],
      ],
      [0, 2],
    ],
    [
      "are none in a U, though two lie on one line",
      [
        [0, 0],
        [2, 0],
        [2, 2],
        [4, 2],
        [4, 0],
        [6, 0],
        [6, 4],
        [0, 4],
      ],
      undefined,
    ],
    [
      "are none in a rectangle with a corner on a side",
      [
        [0, 0],
        [2, 0],
        [4, 0],
        [4, 3],
        [0, 3],
      ],
      undefined,
    ],
    [
      "are none in a comb",
      [
        [0, 0],
        [5, 0],
        [5, 4],
        [4, 1],
        [3, 4],
        [2, 1],
        [1, 4],
      ],
      undefined,
    ],
    [
      "are none where one ends short of another",
      [
        [0, 0],
        [6, 0],
        [6, 4],
        [3, 0.01],
        [0, 4],
      ],
      undefined,
    ],
  ])("%s", (_, points, pair) => {
    for (const [x, y] of [
      [0, 0],
      [100, -70],
      [-30, 45],
    ] as const)
      expect(firstCrossing(far(points, x, y))).toEqual(pair);
    const turned = points.map(([x, y]): Point => [-y, x]);
    expect(firstCrossing(turned)).toEqual(pair);
  });
});

/** By parameters instead of turns: where the lines of two sides meet, and whether that is within both. */
function isSimple(points: readonly Point[]): boolean {
  const n = points.length;
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      const [p, q] = [points[i]!, points[(i + 1) % n]!];
      const [r, s] = [points[j]!, points[(j + 1) % n]!];
      const shared = j === i + 1 || (i === 0 && j === n - 1) ? 1 : 0;
      // On a small grid of whole points, sides with more in common than a corner show at quarter-prime steps.
      if (commonPoints(p, q, r, s) > shared) return false;
    }
  return true;
}

/** 0, 1, or 2 for more: points that two stretches have in common. */
function commonPoints(p: Point, q: Point, r: Point, s: Point): number {
  const [ux, uy, vx, vy] = [q[0] - p[0], q[1] - p[1], s[0] - r[0], s[1] - r[1]];
  const [wx, wy] = [r[0] - p[0], r[1] - p[1]];
  const across = ux * vy - uy * vx;
  if (across !== 0) {
    const [t, k] = [(wx * vy - wy * vx) / across, (wx * uy - wy * ux) / across];
    return t >= 0 && t <= 1 && k >= 0 && k <= 1 ? 1 : 0;
  }
  if (wx * uy - wy * ux !== 0) return 0;
  const along = (point: Point) => ((point[0] - p[0]) * ux + (point[1] - p[1]) * uy) / (ux * ux + uy * uy);
  const [low, high] = [Math.max(0, Math.min(along(r), along(s))), Math.min(1, Math.max(along(r), along(s)))];
  return high > low ? 2 : high === low ? 1 : 0;
}

describe("length along an outline", () => {
  test("counts the way back where it is closed", () => {
    expect(edgePoints(TRIANGLE)).toBe(12);
    expect(edgePoints([...TRIANGLE, [0, 0]])).toBe(12);
    expect(edgePoints(TRIANGLE, false)).toBe(9);
    expect(edgePoints([...TRIANGLE, [0, 0]], false)).toBe(12);
  });

  test("needs two different points, and three to be closed", () => {
    expect(
      edgePoints(
        [
          [0, 0],
          [3, 4],
        ],
        false,
      ),
    ).toBe(5);
    expect(() =>
      edgePoints([
        [0, 0],
        [3, 4],
      ]),
    ).toThrow(/at least 3/);
    expect(() =>
      edgePoints(
        [
          [1, 1],
          [1, 1],
        ],
        false,
      ),
    ).toThrow(/1 different point. Give at least 2/);
  });
});
