import { eachCell } from "../grid/geometry";
import type { Area, CellLook } from "../grid/port";
import type { Loadable } from "./clientObject";
import { refuse } from "./error";
import type { Members } from "./mirror";
import { RangeBorders } from "./rangeBorders";
import { RangeFill } from "./rangeFill";
import { RangeFont } from "./rangeFont";
import { RangeLook } from "./rangeLook";
import type { RequestContext } from "./requestContext";
import { carriable } from "./tableOfValues";

type Carried = Members<
  Excel.RangeFormat,
  | "autofitRows"
  | "borders"
  | "columnWidth"
  | "fill"
  | "font"
  | "horizontalAlignment"
  | "indentLevel"
  | "rowHeight"
  | "verticalAlignment"
  | "wrapText"
>;

const horizontals: readonly CellLook["horizontal"][] = ["General", "Left", "Center", "Right"];
const verticals: readonly CellLook["vertical"][] = ["Top", "Center", "Bottom"];

/** How a range's cells look. */
export class RangeFormat extends RangeLook implements Carried {
  readonly borders: RangeBorders;

  constructor(context: RequestContext, area: () => Area) {
    super(context, "RangeFormat", area);
    this.borders = new RangeBorders(context, area);
  }

  get fill(): RangeFill {
    return this.child("fill", () => new RangeFill(this.context, "RangeFill", this.area));
  }

  get font(): RangeFont {
    return this.child("font", () => new RangeFont(this.context, "RangeFont", this.area));
  }

  protected override settableObjects(): readonly string[] {
    return ["fill", "font"];
  }

  protected loadable(): Loadable {
    return {
      properties: {
        columnWidth: () => this.sharedLength("column"),
        rowHeight: () => this.sharedLength("row"),
        wrapText: () => this.shared((look) => look.wrap),
        horizontalAlignment: () => this.shared((look) => look.horizontal),
        verticalAlignment: () => this.shared((look) => look.vertical),
        indentLevel: () => this.shared((look) => look.indent),
      },
      children: { fill: () => this.fill, font: () => this.font },
    };
  }

  private sharedLength(of: "column" | "row"): number | null {
    const { sheetId } = this.area();
    const { looks } = this.context.session.grid;
    const area = of === "column" ? { ...this.area(), rowCount: 1 } : { ...this.area(), columnCount: 1 };
    const all = eachCell(carriable(area), (row, column) => {
      return of === "column" ? looks.columnWidth(sheetId, column) : looks.rowHeight(sheetId, row);
    }).flat();
    const [first] = all;
    return first !== undefined && all.every((length) => length === first) ? first : null;
  }

  /** In points. */
  get columnWidth(): number {
    return this.loadedValue("columnWidth");
  }

  set columnWidth(given: number) {
    this.assign("columnWidth", given, () => this.resize(given, (area) => this.looks.setColumnWidth(area, given)));
  }

  /** In points. */
  get rowHeight(): number {
    return this.loadedValue("rowHeight");
  }

  set rowHeight(given: number) {
    this.assign("rowHeight", given, () => this.resize(given, (area) => this.looks.setRowHeight(area, given)));
  }

  private get looks() {
    return this.context.session.grid.looks;
  }

  private resize(points: number, apply: (area: Area) => void): void {
    if (!(Number.isFinite(points) && points >= 0)) throw refuse("InvalidArgument");
    this.context.session.checkWritable(this.area().sheetId);
    apply(this.area());
  }

  /** Makes each row as high as what is in it. */
  autofitRows(): void {
    this.act("autofitRows", () => this.looks.fitRows(this.area()));
  }

  get wrapText(): boolean {
    return this.loadedValue("wrapText");
  }

  set wrapText(given: boolean) {
    this.setLook("wrapText", given, { wrap: given });
  }

  get indentLevel(): number {
    return this.loadedValue("indentLevel");
  }

  set indentLevel(given: number) {
    this.setLook("indentLevel", given, { indent: given });
  }

  get horizontalAlignment(): Excel.RangeFormat["horizontalAlignment"] {
    return this.loadedValue("horizontalAlignment");
  }

  set horizontalAlignment(given: Excel.RangeFormat["horizontalAlignment"]) {
    const horizontal = horizontals.find((one) => one === given);
    this.setLook("horizontalAlignment", given, { horizontal: horizontal ?? "General" });
  }

  get verticalAlignment(): Excel.RangeFormat["verticalAlignment"] {
    return this.loadedValue("verticalAlignment");
  }

  set verticalAlignment(given: Excel.RangeFormat["verticalAlignment"]) {
    const vertical = verticals.find((one) => one === given);
    this.setLook("verticalAlignment", given, { vertical: vertical ?? "Bottom" });
  }
}
