import {
  type BedForm,
  givenCutOuts,
  givenPoints,
  givenWidths,
  shapeFieldsOf,
  type Way,
} from "../../quantities/bed/form";
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
    stoneArea: "=BED.AREA_RECTANGLE({length},{width},{cornerRadius},{roundedCorners},{cutOuts})-{placedArea}",
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
    stoneArea: "=BED.AREA_ROUND({diameter},{innerDiameter})-{cutOuts}-{placedArea}",
    fabricLength: "={diameter.decimal}",
    fabricWidth: "={diameter.decimal}",
    squareCorners: "=0",
    borderRun: "=PI()*{diameter.decimal}",
    innerRun: "={innerBorder}*PI()*{innerDiameter.decimal}",
    closed: "TRUE",
  },
  widths: {
    stoneArea: "=BED.AREA_WIDTHS({spacing},{first}:{last})-{cutOuts}-{placedArea}",
    fabricLength: "={spacing.decimal}*(ROWS({first}:{last})-1)",
    fabricWidth: "=MAX({first.decimal}:{last.decimal})",
    squareCorners: TYPED_CORNERS,
    borderRun:
      "=BED.EDGE_WIDTHS({spacing},{first}:{last})+IF({endBorders}>=1,{first.decimal},0)+IF({endBorders}>=2,{last.decimal},0)",
    innerRun: NO_INNER_RUN,
    closed: "FALSE",
  },
  points: {
    stoneArea: "=BED.AREA_POINTS({first}:{last.y})-{cutOuts}-{placedArea}",
    fabricLength:
      "=MAX(MAX({first.decimalX}:{last.decimalX})-MIN({first.decimalX}:{last.decimalX})," +
      "MAX({first.decimalY}:{last.decimalY})-MIN({first.decimalY}:{last.decimalY}))",
    fabricWidth:
      "=MIN(MAX({first.decimalX}:{last.decimalX})-MIN({first.decimalX}:{last.decimalX})," +
      "MAX({first.decimalY}:{last.decimalY})-MIN({first.decimalY}:{last.decimalY}))",
    squareCorners: TYPED_CORNERS,
    borderRun: "=SUMPRODUCT({first.side}:{last.side},{first.border}:{last.border})",
    innerRun: NO_INNER_RUN,
    closed: "MIN({first.border}:{last.border})=1",
  },
  area: {
    stoneArea: "={area}-{cutOuts}-{placedArea}",
    fabricLength: "=MAX({longest.decimal},{widest.decimal})",
    fabricWidth: "=MIN({longest.decimal},{widest.decimal})",
    squareCorners: TYPED_CORNERS,
    borderRun: "={edge.decimal}",
    innerRun: NO_INNER_RUN,
    closed: "FALSE",
  },
};

/** The condition under which the border of this bed closes on itself. */
export function closedCondition(form: BedForm): string {
  return inList(form, formulasOf[form.way].closed);
}

/** Puts the keys of the form's own list of widths or points into a formula. */
export function inList(form: BedForm, formula: string): string {
  const [first, last] =
    form.way === "points"
      ? ["point1", `point${givenPoints(form).length}`]
      : ["width1", `width${givenWidths(form).length}`];
  return formula.replaceAll("{first", `{${first}`).replaceAll("{last", `{${last}`);
}

/** What was measured, as inputs. */
export function measuredRows(form: BedForm): DraftRow[] {
  return [...shapeFieldsOf(form.way).map((key) => fieldRow(form, key)), ...listRows(form), ...cutOutRows(form)];
}

/** Area, border run and what the fabric has to span, worked out from the inputs. */
export function shapeResultRows(form: BedForm): DraftRow[] {
  const { stoneArea, fabricLength, fabricWidth, squareCorners, borderRun, innerRun } = formulasOf[form.way];
  const result = (label: string, key: string, formula: string, unit: string, how = "", format: FormatName = "two") =>
    resultRow(label, { content: inList(form, formula), key }, unit, how, format);
  const isRound = form.way === "round";
  return [
    result("Area to cover", "stoneArea", stoneArea, "sq ft"),
    result("Longest, along", "fabricLength", fabricLength, "ft"),
    result("Widest, across", "fabricWidth", fabricWidth, "ft"),
    result("Border run", "borderRun", borderRun, "ft"),
    ...(isRound ? [result("Border run inside", "innerRun", innerRun, "ft")] : []),
    result("Square corners in the run", "squareCorners", squareCorners, "corners", "", "whole"),
  ];
}

/** Labels of the columns of a list of points and of cut-outs, which the rows below them share. */
const POINT_COLUMNS = ["x, ft", "y, ft", "Reads as x", "Reads as y", "Side, ft", "Border"];
const CUT_OUT_COLUMNS = ["Middle x, ft", "Middle y, ft", "Across, ft", "Deep or round", "Area, sq ft"];

/** What stands in the bed: its place and size, and the area of it all together. */
function cutOutRows(form: BedForm): DraftRow[] {
  const cutOuts = givenCutOuts(form);
  const last = `cutOut${cutOuts.length}`;
  const total = cutOuts.length > 0 ? `=SUM({cutOut1.area}:{${last}.area})` : "=0";
  const rows = cutOuts.map(([x, y, across, deep], index): DraftRow => {
    const key = `cutOut${index + 1}`;
    const input = (text: string, part: string): DraftCell => ({
      content: typed(text),
      key: `${key}.${part}`,
      look: "input",
    });
    return {
      cells: [
        { content: `Cut-out ${index + 1}`, look: "label" },
        input(x, "x"),
        input(y, "y"),
        input(across, "across"),
        input(deep, "deep"),
        {
          content: `=IF({${key}.deep}="",BED.AREA_ROUND({${key}.across}),BED.AREA_RECTANGLE({${key}.across},{${key}.deep}))`,
          key: `${key}.area`,
          format: "two",
          look: "result",
        },
      ],
    };
  });
  const heading: DraftRow[] = rows.length > 0 ? [columnRow("Cut-outs", CUT_OUT_COLUMNS)] : [];
  return [...heading, ...rows, resultRow("Cut-outs together", { content: total, key: "placedArea" }, "sq ft")];
}

function columnRow(label: string, columns: readonly string[]): DraftRow {
  return {
    cells: [{ content: label, look: "note" }, ...columns.map((content): DraftCell => ({ content, look: "aside" }))],
  };
}

function listRows(form: BedForm): DraftRow[] {
  if (form.way === "widths") {
    return givenWidths(form).map((width, index) =>
      inputRow(`Width ${index + 1}`, { content: typed(width), key: `width${index + 1}` }, "ft", {
        readsAs: "BED.FEET",
      }),
    );
  }
  if (form.way === "points") return [columnRow("Corners in order", POINT_COLUMNS), ...pointRows(form)];
  return [];
}

/** A point has x and y side by side, since the area is worked out over both columns. */
function pointRows(form: BedForm): DraftRow[] {
  const points = givenPoints(form);
  return points.map(([x, y, border], index) => {
    const key = `point${index + 1}`;
    const next = `point${((index + 1) % points.length) + 1}`;
    const side = `=SQRT(({${next}.decimalX}-{${key}.decimalX})^2+({${next}.decimalY}-{${key}.decimalY})^2)`;
    return {
      cells: [
        { content: `Point ${index + 1}`, look: "label" },
        { content: typed(x), key, look: "input" },
        { content: typed(y), key: `${key}.y`, look: "input" },
        coordinateCell(key, `${key}.decimalX`),
        coordinateCell(`${key}.y`, `${key}.decimalY`),
        { content: side, key: `${key}.side`, format: "two", look: "aside" },
        { content: border === "1" ? 1 : 0, key: `${key}.border`, look: "input" },
      ],
    };
  });
}

/** A coordinate may be negative, which no length is, so its sign is taken off before it is read. */
function coordinateCell(taped: string, key: string): DraftCell {
  const content = `=IF(ISNUMBER({${taped}}),{${taped}},IF(LEFT({${taped}},1)="-",-BED.FEET(MID({${taped}},2,60)),BED.FEET({${taped}})))`;
  return { content, key, format: "two", look: "aside" };
}
