import type { Area, Border, Edge } from "../grid/port";
import { ClientObject, type Loadable } from "./clientObject";
import { hostColor } from "./color";
import { refuse } from "./error";
import type { Members } from "./mirror";
import type { RequestContext } from "./requestContext";

/** The cells whose edges make up one border of an area, and which edge of them it is. */
const bands: Record<string, (area: Area) => { cells: Area; edge: Edge }> = {
  EdgeTop: (area) => ({ cells: { ...area, rowCount: 1 }, edge: "top" }),
  EdgeBottom: (area) => ({ cells: { ...area, row: area.row + area.rowCount - 1, rowCount: 1 }, edge: "bottom" }),
  EdgeLeft: (area) => ({ cells: { ...area, columnCount: 1 }, edge: "left" }),
  EdgeRight: (area) => {
    return { cells: { ...area, column: area.column + area.columnCount - 1, columnCount: 1 }, edge: "right" };
  },
  InsideHorizontal: (area) => ({ cells: { ...area, rowCount: area.rowCount - 1 }, edge: "bottom" }),
  InsideVertical: (area) => ({ cells: { ...area, columnCount: area.columnCount - 1 }, edge: "right" }),
};

/** The same lines inside an area, as the cells beyond them have them. */
const beyondInside: typeof bands = {
  InsideHorizontal: (area) => ({ cells: { ...area, row: area.row + 1, rowCount: area.rowCount - 1 }, edge: "top" }),
  InsideVertical: (area) => {
    return { cells: { ...area, column: area.column + 1, columnCount: area.columnCount - 1 }, edge: "left" };
  },
};

/** The lines that the practice workbook carries. */
export const borderStyles: readonly Border["style"][] = ["None", "Continuous", "Dash", "Dot", "Double"];
export const borderWeights: readonly Border["weight"][] = ["Hairline", "Thin", "Medium", "Thick"];

/** One border of a range. */
export class RangeBorder
  extends ClientObject
  implements Members<Excel.RangeBorder, "color" | "sideIndex" | "style" | "weight">
{
  /**
   * @param sideIndex Which border, in the host's words, such as `EdgeBottom`.
   */
  constructor(
    context: RequestContext,
    private readonly area: () => Area,
    readonly sideIndex: Excel.RangeBorder["sideIndex"],
  ) {
    super(context, "RangeBorder");
  }

  private band(): { cells: Area; edge: Edge } {
    const band = bands[this.sideIndex]?.(this.area());
    if (!band) throw refuse("InvalidArgument", `The practice workbook carries no border ${this.sideIndex}.`);
    return band;
  }

  private now(): Border {
    const { cells, edge } = this.band();
    return this.context.session.grid.looks.border(cells.sheetId, cells.row, cells.column, edge);
  }

  protected loadable(): Loadable {
    return {
      properties: {
        style: () => this.now().style,
        weight: () => this.now().weight,
        color: () => hostColor(this.now().color),
      },
    };
  }

  private change(property: keyof Border, given: unknown, part: Partial<Border> | undefined): void {
    this.assign(property, given, () => {
      if (!part) throw refuse("InvalidArgument");
      const { cells, edge } = this.band();
      if (cells.rowCount < 1 || cells.columnCount < 1) return;
      this.context.session.checkWritable(cells.sheetId);
      // A border that is given a weight or a color is drawn, as in the host.
      const base = this.now();
      const drawn: Border = base.style === "None" ? { ...base, style: "Continuous" } : base;
      const line = { ...drawn, ...part };
      this.context.session.grid.looks.setBorder(cells, edge, line);
      // A line between two cells is one line in the host; the grid keeps it at either of them.
      const beyond = line.style === "None" && beyondInside[this.sideIndex]?.(this.area());
      if (beyond) this.context.session.grid.looks.setBorder(beyond.cells, beyond.edge, line);
    });
  }

  get style(): Excel.RangeBorder["style"] {
    return this.loadedValue("style");
  }

  set style(given: Excel.RangeBorder["style"]) {
    const style = borderStyles.find((one) => one === given);
    this.change("style", given, style && { style });
  }

  get weight(): Excel.RangeBorder["weight"] {
    return this.loadedValue("weight");
  }

  set weight(given: Excel.RangeBorder["weight"]) {
    const weight = borderWeights.find((one) => one === given);
    this.change("weight", given, weight && { weight });
  }

  get color(): string {
    return this.loadedValue("color");
  }

  set color(given: string) {
    this.change("color", given, { color: given });
  }
}

/** The borders of a range. */
export class RangeBorders implements Members<Excel.RangeBorderCollection, "getItem"> {
  private readonly bySide = new Map<string, RangeBorder>();

  constructor(
    readonly context: RequestContext,
    private readonly area: () => Area,
  ) {}

  getItem(index: Excel.RangeBorder["sideIndex"]): RangeBorder {
    const border = this.bySide.get(index) ?? new RangeBorder(this.context, this.area, index);
    this.bySide.set(index, border);
    return border;
  }
}
