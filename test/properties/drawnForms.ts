import fc from "fast-check";
import { drawPlan } from "../../src/layout/drawing/drawPlan";
import type { Layout } from "../../src/layout/layout";
import type { BedForm } from "../../src/quantities/bed/form";
import type { OrderedCuts } from "../../src/quantities/job/cutsOfBed";

/* Random beds as they are typed, and what is counted in a drawing, mark by mark, as somebody counts it on paper. */

const feet = (least: number, most: number) =>
  fc.double({ min: least, max: most, noNaN: true }).map((value) => (Math.round(value * 192) / 192).toString());

export const laying = fc.record({
  rollWidth: fc.constantFrom("3", "4", "6", "12"),
  rollLength: fc.constantFrom("25", "50", "100"),
  overlap: fc.constantFrom("3", "6", "12"),
  pinSpacing: fc.constantFrom("12", "18", "24"),
});

export const edging = fc.record({
  pieceLength: fc.constantFrom("5", "8", "10"),
  pieceLap: fc.constantFrom("0", "2", "6"),
  stakeSpacing: fc.constantFrom("18", "30", "48"),
  innerBorder: fc.constantFrom("0", "1"),
});

/** Sides as they are picked, or counted as in a list of jobs and in earlier beds. */
export const sides = fc.oneof(
  fc.record({ longBorders: fc.constantFrom("0", "1", "2"), shortBorders: fc.constantFrom("0", "1", "2") }),
  fc.record({ endBorders: fc.constantFrom("0", "1", "2") }),
  fc.record({
    houseEdging: fc.constantFrom("0", "1"),
    rightEdging: fc.constantFrom("0", "1"),
    frontEdging: fc.constantFrom("0", "1"),
    leftEdging: fc.constantFrom("0", "1"),
    baseEdging: fc.constantFrom("0", "1"),
    lastEdging: fc.constantFrom("0", "1"),
    outerEdging: fc.constantFrom("0", "1"),
    firstEdging: fc.constantFrom("0", "1"),
  }),
);

const sixteenths = (value: number) => (Math.round(value * 192) / 192).toString();

/** Slivers, beds that are hardly longer than wide, and wedges that run out to nothing, turned any way. */
const oddShape = fc.oneof(
  fc.record({ length: feet(2, 40), width: feet(0.1, 1) }).map((typed) => ({ typed })),
  fc
    .tuple(fc.double({ min: 2, max: 20, noNaN: true }), fc.integer({ min: -6, max: 6 }))
    .map(([side, more]) => ({ typed: { length: sixteenths(side), width: sixteenths(side + more / 192) } })),
  fc
    .tuple(
      fc.double({ min: 2, max: 30, noNaN: true }),
      fc.double({ min: 0.2, max: 6, noNaN: true }),
      fc.double({ min: 0, max: 6.28, noNaN: true }),
    )
    .map(([long, wide, turn]) => {
      const at = (x: number, y: number, border: string) =>
        [
          sixteenths(x * Math.cos(turn) - y * Math.sin(turn)),
          sixteenths(x * Math.sin(turn) + y * Math.cos(turn)),
          border,
        ] as const;
      const points = [at(0, 0, "1"), at(long, 0, "0"), at(long * 0.3, wide, "1")];
      return { way: "points" as const, typed: {}, points };
    }),
);

/** A bed of each way of measuring, with cut-outs, several strips, and rolls that run out. */
export const anyForm: fc.Arbitrary<Partial<BedForm>> = fc
  .tuple(
    fc.oneof(
      oddShape,
      fc.record({ length: feet(2, 60), width: feet(1, 25) }).map((typed) => ({ typed })),
      fc
        .record({ length: feet(6, 40), width: feet(5, 15), roundedCorners: fc.constantFrom("1", "2", "3", "4") })
        .map((typed) => ({ typed: { ...typed, cornerRadius: "2" } })),
      fc.record({ length: feet(10, 40), width: feet(5, 15) }).map((typed) => ({
        typed,
        cutOuts: [["4", "2", "2", "3"] as const, ["8", "3", "1", ""] as const],
      })),
      fc
        .record({ diameter: feet(4, 25), innerDiameter: fc.constantFrom("0", "2", "3") })
        .map((typed) => ({ way: "round" as const, typed })),
      fc
        .tuple(feet(2, 5), fc.array(feet(1, 12), { minLength: 3, maxLength: 8 }))
        .map(([spacing, widths]) => ({ way: "widths" as const, typed: { spacing }, widths })),
      fc
        .array(
          fc.tuple(
            fc.double({ min: 0.3, max: 1, noNaN: true }),
            fc.double({ min: 3, max: 12, noNaN: true }),
            fc.constantFrom("0", "1", "1"),
          ),
          {
            minLength: 5,
            maxLength: 9,
          },
        )
        .map((steps) => {
          const whole = steps.reduce((sum, [step]) => sum + step, 0);
          let angle = 0;
          const points = steps.map(([step, radius, border]) => {
            angle += (step / whole) * 2 * Math.PI;
            const at = (value: number) => (Math.round(value * 192) / 192).toString();
            return [at(15 + radius * Math.cos(angle)), at(15 + radius * Math.sin(angle)), border] as const;
          });
          return { way: "points" as const, typed: {}, points };
        }),
    ),
    laying,
    edging,
    sides,
    // The edge of other areas, which have no place in the plan.
    fc.record({ cutAround: fc.constantFrom("0", "0", "0", "7.5") }),
  )
  .map(
    ([shape, rolls, pieces, edged, others]) =>
      ({ ...shape, typed: { ...shape.typed, ...rolls, ...pieces, ...edged, ...others } }) as Partial<BedForm>,
  );

/** Marks of a drawing, counted in it. */
export function marksOf(plan: Layout, ordered?: OrderedCuts) {
  const svg = drawPlan(plan, { widthPx: 720, theme: "light", title: "Bed", id: "bed", ...(ordered && { ordered }) });
  return {
    svg,
    pins: svg.match(/M[\d.-]+ [\d.-]+h0/g)?.length ?? 0,
    pinsElsewhere: Number(/, and (\d+) around other areas/.exec(svg)?.[1] ?? 0),
    pinsInWords: Number(/Pins: (\d+)/.exec(svg)?.[1]),
    cutsInWords: Number(/Fabric: (\d+) cut/.exec(svg)?.[1]),
    ...stakesOf(svg),
    edgingInWords: /Edging: .* in (\d+) pieces?, (\d+) stakes?/.exec(svg)?.slice(1).map(Number) ?? [0, 0],
  };
}

/** Stakes in the drawing, but for those of its legend. A stake is a small square, on its corner where it holds a joint. */
function stakesOf(svg: string) {
  const count = (outline: string) =>
    svg.match(new RegExp(`d="M[\\d.-]+ [\\d.-]+${outline}Z" fill="[^"]+" stroke="[^"]+" stroke-width="1.1"`, "g"))
      ?.length ?? 0;
  const [hollow, onCorner] = [count("h[\\d.]+v[\\d.]+h-[\\d.]+"), count("(?:L[\\d.-]+ [\\d.-]+){3}")];
  return { stakes: Math.max(0, hollow - 1) + Math.max(0, onCorner - 1), stakesAtJoints: Math.max(0, onCorner - 1) };
}
