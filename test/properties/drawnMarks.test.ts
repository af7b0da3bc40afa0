import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { drawPlan } from "../../src/layout/drawing/drawPlan";
import { countsInPlan, planOfEstimate } from "../../src/layout/planOfEstimate";
import { estimateBed } from "../../src/quantities/bed/estimate";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { bedNeedsOf } from "../../src/quantities/job/bedNeedsOf";
import { crewPlan } from "../../src/quantities/job/crewPlan";
import { cutsOfBed } from "../../src/quantities/job/cutsOfBed";
import type { OrderLine } from "../../src/quantities/job/order";
import { orderJob } from "../../src/quantities/job/orderJob";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import type { Plan } from "../../src/sheets/plan";
import { RANDOM_BEDS } from "../layoutShapes";
import { anyForm, edging, laying, marksOf, sides } from "./drawnForms";

/*
 * One bed, one answer: what the estimate says, what the drawing shows mark by mark, and what the order cuts. The marks
 * are counted in the SVG, as someone counts them on paper.
 */

function worked(form: Partial<BedForm>) {
  const { bed } = readForm({ ...blankForm(), ...form } as BedForm);
  const plan = bed && planOfEstimate(bed);
  if (!bed || !plan) throw new Error("this bed can't be laid out");
  const laid = countsInPlan(bed, plan);
  return { bed, plan, laid, estimate: estimateBed(bed, laid) };
}

describe("a bed of any way of measuring", { timeout: 60_000 + RANDOM_BEDS * 40 }, () => {
  it("has as many pins and cuts in its figures as there are marks in its drawing, and is ordered by those cuts", () => {
    let [laidOut, bare] = [0, 0];
    fc.assert(
      fc.property(anyForm, (form) => {
        // Random corners can make an outline that crosses itself, which the form refuses.
        fc.pre(form.way !== "points" || readForm({ ...blankForm(), ...form } as BedForm).bed !== undefined);
        const { bed, plan, estimate } = worked(form);
        const { amounts } = estimate;
        const marks = marksOf(plan);
        expect(amounts.pins).toBe(marks.pins + marks.pinsElsewhere);
        expect(amounts.pins).toBe(marks.pinsInWords);
        expect(amounts.fabricStrips).toBe(plan.strips.length);
        expect(amounts.rolls).toBe(plan.counts.rolls);
        expect(amounts.fabricArea).toBeCloseTo(plan.counts.fabricSqFt, 6);
        const needs = bedNeedsOf(bed, estimate, { name: "Bed" });
        const drawn = plan.cuts.map(({ lengthFt }) => lengthFt);
        expect(needs.fabric?.stripsFt).toEqual(drawn.map((lengthFt) => expect.closeTo(lengthFt, 9)));
        expect(marks.cutsInWords).toBe(drawn.length);
        const ordered = orderJob([needs]).lines.find(({ key }) => key.startsWith("fabric"));
        expect(ordered?.order).toBe(amounts.rolls);
        expect(cutOff(ordered)).toEqual(
          plan.cuts.flatMap(({ pieces }) => pieces.map(({ lengthFt }) => near(lengthFt))),
        );
        expect(amounts.borderRun + amounts.innerRun).toBeCloseTo(plan.borderFt, 9);
        expect(amounts.pieces).toBe(plan.counts.pieces);
        expect(amounts.stakes).toBe(plan.counts.stakes);
        expect(amounts.stakes).toBe(marks.stakes);
        expect(amounts.cornerStakes).toBe(
          plan.border.flatMap(({ stakes }) => stakes).filter(({ kind }) => kind === "corner").length,
        );
        expect([amounts.pieces, amounts.stakes]).toEqual(marks.edgingInWords);
        expect(marks.stakesAtJoints).toBe(plan.border.reduce((sum, { joints }) => sum + joints.length, 0));
        expect(needs.border?.runs).toEqual(
          plan.border.map(({ lengthFt, closed }) => ({ feet: near(lengthFt), closed })),
        );
        const bought = orderJob([needs]).lines.find(({ key }) => key.startsWith("border"));
        expect(bought?.order ?? 0).toBe(amounts.pieces);
        // A lap of 12 in has a row of pins where rows are 12 in apart or less, unless the bed is hardly wide enough for one
        // there, as in 1 of 5,000 beds.
        const loose = plan.notes.filter((note) => note.includes("end lap"));
        if (bed.numbers.pinSpacing === 12 && loose.length > 0) {
          bare++;
          expect(loose.every((note) => note.endsWith(". Pin the lap across."))).toBe(true);
        }
        laidOut++;
      }),
      { numRuns: Math.max(100, RANDOM_BEDS / 4), seed: 4 },
    );
    expect(laidOut).toBeGreaterThan(99);
    expect(bare).toBeLessThanOrEqual(laidOut / 1000);
  });
});

describe("a job of two beds", { timeout: 60_000 + RANDOM_BEDS * 40 }, () => {
  it("has in its drawings each length from the piece or roll that the crew's cut list cuts it from", () => {
    let shared = 0;
    fc.assert(
      fc.property(fc.tuple(anyForm, anyForm, laying, edging, sides), ([one, other, rolls, pieces, edged]) => {
        const forms = [one, other].map((form) => ({
          ...form,
          typed: { ...form.typed, ...rolls, ...pieces, ...edged },
        }));
        fc.pre(forms.every((form) => readForm({ ...blankForm(), ...form } as BedForm).bed !== undefined));
        const beds = forms.map((form, at) => ({ name: `Bed ${"AB"[at]}`, ...worked(form) }));
        const needs = beds.map(({ bed, name, estimate }) => bedNeedsOf(bed, estimate, { name }));
        const order = orderJob(needs);
        const listed = cutList(
          crewSheet(crewPlan(needs, order, { people: 2, dayHours: 8 }), order, HEAD, "letter", AT),
        );
        for (const { name, plan } of beds) {
          const svg = drawPlan(plan, { widthPx: 720, theme: "light", id: "bed", ordered: cutsOfBed(order, name) });
          const words = wordsOf(svg);
          const own = listed.filter(({ bed }) => bed === name);
          for (const { part, length, stock, isOffCut } of own)
            expect(words).toContain(
              part.startsWith("P")
                ? `${part} cut to ${length} from ${isOffCut ? "the offcut of " : ""}piece ${stock}`
                : `${length} off roll ${stock}`,
            );
          expect(words.match(/ off roll \d/g)?.length ?? 0).toBe(
            own.filter(({ part }) => !part.startsWith("P")).length,
          );
          expect(words.match(/ from (?:the offcut of )?piece \d/g)?.length ?? 0).toBe(
            own.filter(({ part }) => part.startsWith("P")).length,
          );
        }
        if (
          listed.some(
            ({ bed, isOffCut, stock, part }) =>
              isOffCut && listed.some((cut) => cut.stock === stock && cut.bed !== bed && cut.part[0] === part[0]),
          )
        )
          shared++;
      }),
      { numRuns: Math.max(60, RANDOM_BEDS / 10), seed: 8 },
    );
    expect(shared).toBeGreaterThan(10);
  });
});

const HEAD = { job: "", place: "", start: "", people: 2, drawings: [], measures: [] };
const AT = { row: 0, column: 0 };

/** The cut list of a crew's sheet, as it is read: `2. Bed A P4: 3' 2" + Bed B P9: 1' 10"; 2' 10" left over`. */
function cutList({ formulas }: Plan) {
  return formulas
    .flat()
    .flatMap((cell) => /^'?(\d+)\. (.*); .* left over$/.exec(String(cell))?.slice(1) ?? [])
    .flatMap((text, place, all) => {
      if (place % 2 === 0) return [];
      return text.split(" + ").map((cut, at) => {
        const [, bed = "", part = "", length = ""] = /^(Bed [AB]) (P?\d+): (.*)$/.exec(cut) ?? [];
        return { stock: all[place - 1], bed, part, length, isOffCut: at > 0 };
      });
    });
}

/** What a drawing says, without its marks. */
const wordsOf = (svg: string) =>
  svg
    .replace(/<[^>]+>/g, " ")
    .replaceAll("&quot;", '"')
    .replace(/\s+/g, " ");

const near = (value: number) => expect.closeTo(value, 9);

/** The lengths that an order cuts, in order. */
function cutOff(line: OrderLine | undefined): number[] {
  return line?.cutting?.stocks.flatMap(({ cuts }) => cuts.map(({ lengthFt }) => lengthFt)) ?? [];
}
