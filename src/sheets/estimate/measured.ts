import { CUT_OUT_AREA, SIDE_LENGTH } from "../../quantities/bed/amounts";
import { type BedForm, givenCutOuts, givenPoints, givenWidths, shapeFieldsOf } from "../../quantities/bed/form";
import type { DraftCell, DraftRow } from "../compose";
import { typed } from "../typed";
import { withKeys } from "./printed";
import { amountRow, fieldRow, inputRow, linkIn } from "./rows";

/** What was measured, as inputs. */
export function measuredRows(form: BedForm): DraftRow[] {
  return [...shapeFieldsOf(form).map((key) => fieldRow(form, key)), ...listRows(form), ...cutOutRows(form)];
}

/** Area, border run and what the fabric has to span, worked out from the inputs. */
export function shapeResultRows(form: BedForm): DraftRow[] {
  const inner = form.way === "round" ? (["innerRun"] as const) : [];
  const keys = ["stoneArea", "fabricLength", "fabricWidth", "borderRun", ...inner, "cornerStakes"] as const;
  return keys.map((key) => amountRow(form, key));
}

/** Labels of the columns of a list of points and of cut-outs, which the rows below them share. */
const POINT_COLUMNS = ["x, ft", "y, ft", "Reads as x", "Reads as y", "Side, ft", "Border"];
const CUT_OUT_COLUMNS = ["Center x, ft", "Center y, ft", "Across, ft", "Deep or round", "Area, sq ft"];

/** What is in the bed: its place and size, and the area of it all together. */
function cutOutRows(form: BedForm): DraftRow[] {
  const cutOuts = givenCutOuts(form);
  const rows = cutOuts.map(([x, y, across, deep], index): DraftRow => {
    const key = `cutOut${index + 1}`;
    const input = (text: string, part: string): DraftCell => ({
      content: linkIn(form, `${key}.${part}`) ?? typed(text),
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
          content: withKeys(CUT_OUT_AREA, (part) => `{${key}.${part}}`),
          key: `${key}.area`,
          format: "two",
          look: "result",
        },
      ],
    };
  });
  const heading: DraftRow[] = rows.length > 0 ? [columnRow("Cut-outs", CUT_OUT_COLUMNS)] : [];
  return [...heading, ...rows, amountRow(form, "placedArea")];
}

function columnRow(label: string, columns: readonly string[]): DraftRow {
  return {
    cells: [{ content: label, look: "note" }, ...columns.map((content): DraftCell => ({ content, look: "aside" }))],
  };
}

function listRows(form: BedForm): DraftRow[] {
  if (form.way === "widths") {
    return givenWidths(form).map((width, index) =>
      inputRow(
        `Width ${index + 1}`,
        { content: linkIn(form, `width${index + 1}`) ?? typed(width), key: `width${index + 1}` },
        "ft",
        { readsAs: "BED.FEET" },
      ),
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
    const cells: Readonly<Record<string, string>> = {
      x: `{${key}.decimalX}`,
      y: `{${key}.decimalY}`,
      "next.x": `{${next}.decimalX}`,
      "next.y": `{${next}.decimalY}`,
    };
    const side = withKeys(SIDE_LENGTH, (part) => cells[part]);
    return {
      cells: [
        { content: `Point ${index + 1}`, look: "label" },
        { content: linkIn(form, key) ?? typed(x), key, look: "input" },
        { content: linkIn(form, `${key}.y`) ?? typed(y), key: `${key}.y`, look: "input" },
        coordinateCell(key, `${key}.decimalX`),
        coordinateCell(`${key}.y`, `${key}.decimalY`),
        { content: side, key: `${key}.side`, format: "two", look: "aside" },
        { content: linkIn(form, `${key}.border`) ?? (border === "1" ? 1 : 0), key: `${key}.border`, look: "input" },
      ],
    };
  });
}

/** A coordinate may be negative, which no length is, so its sign is taken off before it is read. */
function coordinateCell(taped: string, key: string): DraftCell {
  const content = `=IF(ISNUMBER({${taped}}),{${taped}},IF(LEFT({${taped}},1)="-",-BED.FEET(MID({${taped}},2,60)),BED.FEET({${taped}})))`;
  return { content, key, format: "two", look: "aside" };
}
