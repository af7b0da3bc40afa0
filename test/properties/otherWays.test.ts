import { describe, expect, it } from "vitest";
import { drawPlan } from "../../src/layout/drawing/drawPlan";
import { previewOf } from "../../src/pane/preview";
import { type BedForm, blankForm, type Way } from "../../src/quantities/bed/form";
import { bedNeedsOf } from "../../src/quantities/job/bedNeedsOf";
import { crewPlan } from "../../src/quantities/job/crewPlan";
import { orderJob } from "../../src/quantities/job/orderJob";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { crewSheet } from "../../src/sheets/papers/crewSheet";

/*
 * The form keeps what was typed for each way of measuring, so that choosing another and coming back loses nothing. What a
 * bed comes to follows from the way it is measured in now, and from nothing that was typed for another.
 */

const typedFor: Readonly<Record<Way, Partial<BedForm>>> = {
  rectangle: {
    typed: {
      ...{ length: "18.5", width: "5", cornerRadius: "2", roundedCorners: "3" },
      ...{ longBorders: "2", shortBorders: "2" },
    },
    cutOuts: [["4", "2", "2", ""]],
  },
  round: { typed: { diameter: "9", innerDiameter: "2", innerBorder: "1" } },
  widths: { typed: { spacing: "4", endBorders: "2" }, widths: ["2", "5", "6", "4"] },
  points: {
    points: [
      ["0", "0", "1"],
      ["12", "0", "0"],
      ["12", "5", "1"],
      ["5", "9", "1"],
    ],
  },
  area: { typed: { area: "120", edge: "44", longest: "20", widest: "8", corners: "3" } },
};

const WAYS = Object.keys(typedFor) as Way[];

/** Figures, drawing, order, crew's sheet, and block of a form. */
function everythingOf(form: BedForm) {
  const preview = previewOf(form);
  if (!preview.estimate) throw new Error(preview.problems.map(({ message }) => message).join(" "));
  const { bed, plan, estimate } = preview;
  const needs = bedNeedsOf(bed, estimate, { name: "Bed" });
  const order = orderJob([needs]);
  const head = { job: "", place: "", start: "", people: 2, drawings: [], measures: [] };
  const at = { row: 0, column: 0 };
  return {
    estimate,
    drawing: plan && drawPlan(plan, { widthPx: 720, theme: "light", title: "Bed", id: "bed" }),
    order,
    crew: crewSheet(crewPlan([needs], order, { people: 2, dayHours: 8 }), order, head, "letter", at).formulas,
    block: estimateBlock(form, at).formulas,
  };
}

describe.each(WAYS)("a bed measured by %s", (way) => {
  it.each(WAYS.filter((other) => other !== way))("comes to the same after something was typed by %s", (other) => {
    const own = { ...blankForm(), name: "Bed", ...typedFor[way], way } as BedForm;
    const { cutOuts = [], typed, ...lists } = typedFor[other];
    const after = { ...own, ...lists, ...typedFor[way], typed: { ...typed, ...own.typed } } as BedForm;
    // Cut-outs are typed for every way that has a plan to place them in.
    expect(everythingOf(way === "area" ? { ...after, cutOuts } : after)).toEqual(everythingOf(own));
  });
});
