import { type BedForm, givenPoints, givenWidths, shapeFieldsOf, type Way } from "../../quantities/bed/form";
import type { DraftCell, DraftRow } from "../compose";
import type { FormatName } from "../plan";
import { typed } from "../typed";
import { fieldRow, inputRow, resultRow } from "./rows";

/** What a shape's own formulas are; in them `{first}` and `{last}` stand for its list of widths or points. */
interface ShapeFormulas {
  readonly stoneArea: string;
  readonly fabricLength: string;
  readonly fabricWidth: string;
  readonly squareCorners: string;
  readonly borderRun: string;
  /** A second, closed run: round the inside of a ring. */
  readonly innerRun: string;
  /** Whether the border run closes on itself, as a condition. */
  readonly closed: string;
}

const TYPED_CORNERS = "={corners}";
const NO_INNER_RUN = "=0";

const formulasOf: Record<Way, ShapeFormulas> = {
  rectangle: {
    stoneArea: "=BED.AREA_RECTANGLE({length},{width},{cornerRadius},{roundedCorners},{cutOuts})",
    fabricLength: "=MAX({length.decimal},{width.decimal})",
    fabricWidth: "=MIN({length.decimal},{width.decimal})",
    // Each long side that has a border meets each short side that has one in one corner.
    squareCorners: "=MAX(0,{longBorders}*{shortBorders}-{roundedCorners})",
    borderRun:
      "=IF({longBorders}+{shortBorders}=0,0,BED.EDGE_LENGTH({longBorders}*{fabricLength}+{shortBorders}*{fabricWidth}," +
      "{cornerRadius},MIN({roundedCorners},{longBorders}*{shortBorders})))",
    innerRun: NO_INNER_RUN,
    closed: "{longBorders}+{shortBorders}=4",
  },
  round: {
    stoneArea: "=BED.AREA_ROUND({diameter},{innerDiameter})-{cutOuts}",
    fabricLength: "={diameter.decimal}",
    fabricWidth: "={diameter.decimal}",
    squareCorners: "=0",
    borderRun: "=PI()*{diameter.decimal}",
    innerRun: "={innerBorder}*PI()*{innerDiameter.decimal}",
    closed: "TRUE",
  },
  widths: {
    stoneArea: "=BED.AREA_WIDTHS({spacing},{first}:{last})-{cutOuts}",
    fabricLength: "={spacing.decimal}*(ROWS({first}:{last})-1)",
    fabricWidth: "=MAX({first.decimal}:{last.decimal})",
    squareCorners: TYPED_CORNERS,
    borderRun:
      "=BED.EDGE_WIDTHS({spacing},{first}:{last})+IF({endBorders}>=1,{first.decimal},0)+IF({endBorders}>=2,{last.decimal},0)",
    innerRun: NO_INNER_RUN,
    closed: "FALSE",
  },
  points: {
    stoneArea: "=BED.AREA_POINTS({first}:{last.y})-{cutOuts}",
    fabricLength:
      "=MAX(MAX({first.decimalX}:{last.decimalX})-MIN({first.decimalX}:{last.decimalX})," +
      "MAX({first.decimalY}:{last.decimalY})-MIN({first.decimalY}:{last.decimalY}))",
    fabricWidth:
      "=MIN(MAX({first.decimalX}:{last.decimalX})-MIN({first.decimalX}:{last.decimalX})," +
      "MAX({first.decimalY}:{last.decimalY})-MIN({first.decimalY}:{last.decimalY}))",
    squareCorners: TYPED_CORNERS,
    borderRun: "=MAX(0,BED.EDGE_POINTS({first}:{last.y})-{borderless.decimal})",
    innerRun: NO_INNER_RUN,
    closed: "{borderless.decimal}=0",
  },
  area: {
    stoneArea: "={area}-{cutOuts}",
    fabricLength: "=MAX({longest.decimal},{widest.decimal})",
    fabricWidth: "=MIN({longest.decimal},{widest.decimal})",
    squareCorners: TYPED_CORNERS,
    borderRun: "={edge.decimal}",
    innerRun: NO_INNER_RUN,
    closed: "FALSE",
  },
};

/** The condition under which the border of a bed measured in this way closes on itself. */
export function closedCondition(way: Way): string {
  return formulasOf[way].closed;
}

/** What was measured, as inputs. */
export function measuredRows(form: BedForm): DraftRow[] {
  return [...shapeFieldsOf(form.way).map((key) => fieldRow(form, key)), ...listRows(form)];
}

/** Area, border run and what the fabric has to span, worked out from the inputs. */
export function shapeResultRows(form: BedForm): DraftRow[] {
  const { stoneArea, fabricLength, fabricWidth, squareCorners, borderRun, innerRun } = formulasOf[form.way];
  const [first, last] =
    form.way === "points"
      ? ["point1", `point${givenPoints(form).length}`]
      : ["width1", `width${givenWidths(form).length}`];
  const result = (label: string, key: string, formula: string, unit: string, how = "", format: FormatName = "two") => {
    const content = formula.replaceAll("{first", `{${first}`).replaceAll("{last", `{${last}`);
    return resultRow(label, { content, key }, unit, how, format);
  };
  const plain = form.way === "rectangle";
  return [
    result("Area to cover", "stoneArea", stoneArea, "sq ft"),
    result(
      "Fabric spans, along",
      "fabricLength",
      fabricLength,
      "ft",
      plain ? "" : "no rectangle: fabric and pins are counted on the bed's length",
    ),
    result(
      "Fabric spans, across",
      "fabricWidth",
      fabricWidth,
      "ft",
      plain ? "" : "by its widest width, so some is cut away",
    ),
    result("Border run", "borderRun", borderRun, "ft"),
    ...(form.way === "round" ? [result("Border run inside", "innerRun", innerRun, "ft")] : []),
    result("Square corners in the run", "squareCorners", squareCorners, "corners", "", "whole"),
  ];
}

function listRows(form: BedForm): DraftRow[] {
  if (form.way === "widths") {
    return givenWidths(form).map((width, index) =>
      inputRow(`Width ${index + 1}`, { content: typed(width), key: `width${index + 1}` }, "ft", {
        readsAs: "BED.FEET",
      }),
    );
  }
  if (form.way === "points")
    return givenPoints(form).map(([x, y], index) => pointRow(x, y, `point${index + 1}`, index + 1));
  return [];
}

/** A point has x and y side by side, since the area is worked out over both columns. */
function pointRow(x: string, y: string, key: string, number: number): DraftRow {
  return {
    cells: [
      { content: `Point ${number}: x and y, ft`, look: "label" },
      { content: typed(x), key, look: "input" },
      { content: typed(y), key: `${key}.y`, look: "input" },
      coordinateCell(key, `${key}.decimalX`),
      coordinateCell(`${key}.y`, `${key}.decimalY`),
    ],
  };
}

/** A coordinate may be negative, which no length is, so its sign is taken off before it is read. */
function coordinateCell(taped: string, key: string): DraftCell {
  const content = `=IF(ISNUMBER({${taped}}),{${taped}},IF(LEFT({${taped}},1)="-",-BED.FEET(MID({${taped}},2,60)),BED.FEET({${taped}})))`;
  return { content, key, format: "two", look: "aside" };
}
