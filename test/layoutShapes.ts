import fc from "fast-check";
import type { Bed, CutOut } from "../src/layout/bed";
import type { Point } from "../src/layout/plane";

/** Points from pairs of numbers, as short to write as a list taken in the field. */
export const points = (...pairs: readonly (readonly [number, number])[]): Point[] => pairs.map(([x, y]) => ({ x, y }));

/** A bed with bays and spurs: points all around a center at any distance, which can never cross. */
export const anyStarBed: fc.Arbitrary<Bed> = fc
  .array(fc.tuple(fc.double({ min: 0.2, max: 1, noNaN: true }), fc.double({ min: 2, max: 14, noNaN: true })), {
    minLength: 3,
    maxLength: 14,
  })
  .map((steps): Bed => {
    const whole = steps.reduce((sum, [step]) => sum + step, 0);
    let angle = 0;
    const corners = steps.map(([step, radius]) => {
      angle += (step / whole) * 2 * Math.PI;
      return { x: 20 + radius * Math.cos(angle), y: 15 + radius * Math.sin(angle) };
    });
    return { kind: "points", points: corners };
  })
  // With three or four points a step may go more than half round, and the sides run past the center.
  .filter(
    (bed) =>
      bed.kind === "points" && bed.points.every((from, i) => turnsLeft(from, bed.points[(i + 1) % bed.points.length]!)),
  );

const turnsLeft = (a: Point, b: Point): boolean => (a.x - 20) * (b.y - 15) - (b.x - 20) * (a.y - 15) > 0.01;

export const anyWidthsBed: fc.Arbitrary<Bed> = fc
  .record({
    spacingFt: fc.double({ min: 1, max: 6, noNaN: true }),
    widthsFt: fc.array(fc.double({ min: 0.5, max: 12, noNaN: true }), { minLength: 2, maxLength: 9 }),
  })
  .map((taped): Bed => ({ kind: "widths", ...taped }));

export const anyRectangle = fc.record({
  kind: fc.constant("rectangle" as const),
  lengthFt: fc.double({ min: 1, max: 60, noNaN: true }),
  widthFt: fc.double({ min: 1, max: 30, noNaN: true }),
});

/** A round bed with a tree in it, or a rectangle with a meter pad at the wall and a post. */
export const anyBedWithCutOuts: fc.Arbitrary<Bed> = fc.oneof(
  fc.double({ min: 4, max: 24, noNaN: true }).map((diameterFt): Bed => {
    return { kind: "round", diameterFt, innerDiameterFt: diameterFt / 3 };
  }),
  fc
    .record({
      lengthFt: fc.double({ min: 8, max: 40, noNaN: true }),
      widthFt: fc.double({ min: 5, max: 16, noNaN: true }),
      cornerRadiusFt: fc.double({ min: 0.5, max: 2, noNaN: true }),
      roundedCorners: fc.integer({ min: 0, max: 4 }),
    })
    .map(({ lengthFt, widthFt, ...corners }): Bed => {
      const pad: CutOut = { kind: "outline", name: "meter pad", points: points([3, 0], [5, 0], [5, 2], [3, 2]) };
      const post: CutOut = {
        kind: "circle",
        name: "post",
        center: { x: lengthFt - 3, y: widthFt - 2 },
        diameterFt: 0.8,
      };
      return { kind: "rectangle", lengthFt, widthFt, ...corners, cutOuts: [pad, post] };
    }),
);

/** Beds that are hardly wider than a pin's spacing, hardly longer than wide, or a wedge that runs out to nothing. */
export const anyOddBed: fc.Arbitrary<Bed> = fc.oneof(
  fc
    .tuple(fc.double({ min: 2, max: 40, noNaN: true }), fc.double({ min: 0.05, max: 1, noNaN: true }))
    .map(([lengthFt, widthFt]): Bed => ({ kind: "rectangle", lengthFt, widthFt })),
  fc
    .tuple(fc.double({ min: 2, max: 20, noNaN: true }), fc.double({ min: -0.05, max: 0.05, noNaN: true }))
    .map(([side, more]): Bed => ({ kind: "rectangle", lengthFt: side, widthFt: side + more })),
  fc
    .tuple(
      fc.double({ min: 2, max: 30, noNaN: true }),
      fc.double({ min: 0.1, max: 6, noNaN: true }),
      fc.double({ max: 7, min: 0, noNaN: true }),
    )
    .map(([long, wide, turn]): Bed => {
      const at = (x: number, y: number) => ({
        x: x * Math.cos(turn) - y * Math.sin(turn),
        y: x * Math.sin(turn) + y * Math.cos(turn),
      });
      return { kind: "points", points: [at(0, 0), at(long, 0), at(long * 0.3, wide)] };
    }),
);

export const anyBed: fc.Arbitrary<Bed> = fc.oneof(anyStarBed, anyWidthsBed, anyRectangle, anyBedWithCutOuts, anyOddBed);

/** How many random beds a test tries: five hundred, or as many as the environment asks for. */
export const RANDOM_BEDS = Number(process.env.RANDOM_BEDS ?? 500);

/** A bed taped in seven widths, bent like a kidney, with a meter pad against the base line. */
export const kidneyBed: Bed = {
  kind: "widths",
  spacingFt: 4,
  widthsFt: [0, 5.5, 7.25, 6, 5, 6.5, 0],
  cutOuts: [{ kind: "outline", name: "meter pad", points: points([10, 0], [13, 0], [13, 2], [10, 2]) }],
};

export const lShapedBed: Bed = {
  kind: "points",
  points: points([0, 0], [20, 0], [20, 6], [8, 6], [8, 12], [0, 12]),
};
