import fc from "fast-check";
import { estimateBed } from "../../src/quantities/bed/estimate";
import type { FieldKey } from "../../src/quantities/bed/fields";
import { blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import type { BedNeeds } from "../../src/quantities/job/bedNeeds";
import { bedNeedsOf, type TypedLine } from "../../src/quantities/job/bedNeedsOf";

/** An invented bed, its estimate, and what the job is told of it. */
export interface JobBed {
  readonly needs: BedNeeds;
  readonly estimate: ReturnType<typeof estimateBed>;
  readonly typed: readonly TypedLine[];
}

/** A plain bed by what was typed into its form. */
export function jobBed(
  name: string,
  fields: Readonly<Partial<Record<FieldKey, string>>>,
  typed: readonly TypedLine[] = [],
): JobBed {
  const { bed, problems } = readForm({ ...blankForm(), name, typed: fields });
  if (!bed) throw new Error(JSON.stringify(problems));
  const estimate = estimateBed(bed);
  return { needs: bedNeedsOf(bed, estimate, { name, typed }), estimate, typed };
}

const oneOf = (...values: string[]) => fc.constantFrom(...values);
const inches = (least: number, most: number) => fc.integer({ min: least, max: most }).map((count) => `${count} in`);

/** Beds as they are beside one another on a lot; mostly of the same stone, border and rolls, and not always. */
const fields: fc.Arbitrary<Partial<Record<FieldKey, string>>> = fc.record({
  length: inches(30, 900),
  width: inches(18, 260),
  longBorders: oneOf("0", "1", "2"),
  shortBorders: oneOf("0", "1", "2"),
  stone: oneOf("river rock", "river rock", "River Rock", "pea gravel"),
  stoneSize: oneOf("1.25", "1.25", "0.375"),
  waste: oneOf("8%", "5%", "0"),
  orderStep: oneOf("0.5", "0.5", "0.5", "0.25", "1"),
  stoneCost: oneOf("62", "62", "62.35"),
  pieceLength: oneOf("8", "8", "10"),
  pieceLap: oneOf("2", "2", "0"),
  stakesPerPiece: oneOf("3", "3", "2", "0"),
  pieceCost: oneOf("24", "24", "3.99"),
  stakeCost: oneOf("2.5", "2.5", "4.15"),
  rollWidth: oneOf("6", "6", "4"),
  rollLength: oneOf("50", "50", "100"),
  endLap: oneOf("12", "12", "6"),
  pinsPerBox: oneOf("100", "100", "50"),
  deliveryYards: oneOf("10", "10", "4"),
  truckPayload: oneOf("2.5", "2.5", "1"),
});

const typedLines: fc.Arbitrary<TypedLine[]> = fc.uniqueArray(
  fc.record({
    line: oneOf("edging", "stakeLine", "fabric", "pinLine", "delivery", "haul", "dump", "stoneLine"),
    quantity: fc.integer({ min: 0, max: 9 }),
  }),
  { maxLength: 2, selector: ({ line }) => line },
);

/** One to twenty beds, nothing typed over. */
export const jobs: fc.Arbitrary<JobBed[]> = fc
  .array(fields, { minLength: 1, maxLength: 20 })
  .map((beds) => beds.map((bed, n) => jobBed(`Bed ${n + 1}`, bed)));

/** One to twenty beds, with quantities typed over in some of them. */
export const jobsTypedOver: fc.Arbitrary<JobBed[]> = fc
  .array(fc.tuple(fields, fc.oneof(fc.constant<TypedLine[]>([]), typedLines)), { minLength: 1, maxLength: 20 })
  .map((beds) => beds.map(([bed, typed], n) => jobBed(`Bed ${n + 1}`, bed, typed)));
