import fc from "fast-check";
import { countsInPlan } from "../../src/layout/planOfEstimate";
import { type Estimate, estimateBed } from "../../src/quantities/bed/estimate";
import type { FieldKey } from "../../src/quantities/bed/fields";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import type { BedNeeds } from "../../src/quantities/job/bedNeeds";
import { bedNeedsOf } from "../../src/quantities/job/bedNeedsOf";
import type { BedToPrice } from "../../src/quantities/job/priceJob";
import { bedsOfEachWay } from "../bedsOfEachWay";

/** What a person typed over in a bed's block, by the line's key. */
export type Typed = NonNullable<BedToPrice["typed"]>;

/** One bed three ways: to be priced with others, by itself, and as an order counts it. */
export interface BedOfJob {
  readonly toPrice: BedToPrice;
  readonly estimate: Estimate;
  readonly needs: BedNeeds;
}

/** A bed by its form, with what was typed over in its block. */
export function bedOfJob(form: BedForm, typed: Typed = {}): BedOfJob {
  const { bed, problems } = readForm(form);
  if (!bed) throw new Error(JSON.stringify(problems));
  const laid = countsInPlan(bed);
  const estimate = estimateBed(bed, laid);
  const needs = bedNeedsOf(bed, estimate, {
    name: form.name,
    typed: Object.entries(typed).map(([line, over]) => ({ line, ...over })),
  });
  return { toPrice: { name: form.name, bed, laid, typed }, estimate, needs };
}

const oneOf = (...values: string[]) => fc.constantFrom(...values);
const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((n) => String(n / 10));

/** Measurements of beds of every way of measuring, some of random size. */
const shapes: fc.Arbitrary<Pick<BedForm, "way" | "typed" | "widths" | "points" | "cutOuts">> = fc.oneof(
  fc
    .record({ length: tenths(4, 70), width: tenths(2, 14), longBorders: oneOf("0", "1", "2") })
    .map(shaped("rectangle")),
  fc
    .record({ diameter: tenths(5, 16), innerDiameter: oneOf("0", "2"), innerBorder: oneOf("0", "1") })
    .map(shaped("round")),
  fc
    .record({ area: tenths(20, 300), edge: tenths(0, 90), longest: tenths(10, 60), widest: tenths(3, 14) })
    .map(shaped("area")),
  fc
    .tuple(fc.array(tenths(2, 9), { minLength: 3, maxLength: 6 }), oneOf("3", "4", "5"))
    .map(([widths, spacing]) => ({ ...blankForm(), way: "widths" as const, typed: { spacing }, widths })),
  fc.constantFrom(...Object.values(bedsOfEachWay)).map(({ typed, ...form }) => {
    const { stone: _, stoneSize: __, waste: ___, crewRate: ____, ...shape } = typed;
    return { ...form, typed: shape };
  }),
);

function shaped(way: BedForm["way"]) {
  return (typed: BedForm["typed"]) => ({ ...blankForm(), way, typed });
}

/** What beds of one job and one office may differ in. */
const kinds: fc.Arbitrary<BedForm["typed"]> = fc.record({
  stone: oneOf("river rock", "river rock", "River Rock", "pea gravel", "1.4", "1.40"),
  stoneSize: oneOf("1.25", "1.25", "0.375"),
  borderHeight: oneOf("4", "4", "5"),
  soil: oneOf("loam", "clay"),
  cleanUpHours: oneOf("1", "0.5", "0", "2"),
  rollWidth: oneOf("6", "6", "4"),
});

/** Terms on which suppliers and trucks serve: a job has those of its first bed, or of the first of a kind. */
const terms: fc.Arbitrary<BedForm["typed"]> = fc.record({
  waste: oneOf("8%", "0"),
  orderStep: oneOf("0.5", "0.25", "1", "2"),
  orderMinimum: oneOf("1", "0", "3"),
  stoneCost: oneOf("62", "62.35"),
  pieceLength: oneOf("8", "10"),
  pieceLap: oneOf("2", "0", "6"),
  stakesPerPiece: oneOf("3", "2", "0"),
  pieceCost: oneOf("24", "3.99"),
  stakeCost: oneOf("2.5", "9"),
  endLap: oneOf("12", "24"),
  pinsPerBox: oneOf("100", "500", "50"),
  truckYards: oneOf("5", "2", "12"),
  truckPayload: oneOf("2.5", "8", "1"),
  deliveryYards: oneOf("10", "3"),
  deliveryPayload: oneOf("8", "2", "20"),
  soilTonsPerYard: oneOf("1.5", "1.1", "2"),
  borderFinish: oneOf("usual", "Usual", "black", "Black"),
});

const LINES = ["edging", "stakeLine", "fabric", "pinLine", "stoneLine", "delivery", "haul", "dump"];
const typedOver: fc.Arbitrary<Typed> = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...LINES), fc.integer({ min: 0, max: 12 })), {
    maxLength: 3,
    selector: ([line]) => line,
  })
  .map((lines) => Object.fromEntries(lines.map(([line, quantity]) => [line, { quantity }])));

const named = (forms: readonly BedForm[]) => forms.map((form, n) => ({ ...form, name: `Bed ${n + 1}` }));
const formsWith = (...more: readonly fc.Arbitrary<Partial<Record<FieldKey, string>>>[]): fc.Arbitrary<BedForm[]> =>
  fc
    .array(fc.tuple(shapes, ...more), { minLength: 1, maxLength: 10 })
    .map((beds) =>
      named(
        beds.map(([shape, ...rest]) => ({ ...blankForm(), ...shape, typed: Object.assign({}, shape.typed, ...rest) })),
      ),
    );

/** One to ten beds of one office's rates and terms, and of a few kinds of stone, edging, and fabric. */
export const jobsOnSameTerms: fc.Arbitrary<BedForm[]> = formsWith(kinds);

/** A bed's form, and what was typed over in its block. */
export interface TypedOver {
  readonly form: BedForm;
  readonly typed: Typed;
}

const withTyped = (jobs: fc.Arbitrary<BedForm[]>): fc.Arbitrary<TypedOver[]> =>
  fc
    .tuple(jobs, fc.array(fc.oneof(fc.constant<Typed>({}), typedOver), { minLength: 10, maxLength: 10 }))
    .map(([forms, typed]) => forms.map((form, n) => ({ form, typed: typed[n]! })));

/** One to ten beds of one office's rates and terms, with quantities typed over in their blocks. */
export const jobsTypedOver = withTyped(jobsOnSameTerms);

/** One to ten beds whose suppliers, trucks, and boxes differ, with quantities typed over in their blocks. */
export const jobsOnAnyTerms = withTyped(formsWith(kinds, terms));

/**
 * A bed known by its area, a half of it, and up to three other beds. One roll holds the two strips that any of them takes
 * along it, so that the whole and its halves are laid the same way; and halves are no wider than long.
 */
export const areaBeds: fc.Arbitrary<[whole: BedForm, half: BedForm, others: BedForm[]]> = fc
  .record({
    area: fc.integer({ min: 40, max: 400 }),
    edge: fc.integer({ min: 0, max: 90 }),
    longest: fc.integer({ min: 28, max: 48 }),
    widest: fc.integer({ min: 3, max: 11 }),
  })
  .chain(({ area, edge, longest, widest }) => {
    const part = (of: number): BedForm => ({
      ...blankForm(),
      name: `Area over ${of}`,
      way: "area",
      typed: {
        area: `${area / of}`,
        edge: `${edge / of}`,
        longest: `${longest / of}`,
        widest: `${widest}`,
        rollLength: "100",
      },
    });
    return fc.tuple(
      fc.constant(part(1)),
      fc.constant(part(2)),
      jobsOnSameTerms.map((forms) => forms.slice(0, 3)),
    );
  });
