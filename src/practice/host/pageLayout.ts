import { sheetColumns } from "../grid/a1";
import type { Area, PageMargins, PageSetup } from "../grid/port";
import { areaAt } from "./areas";
import { ClientObject, type Loadable } from "./clientObject";
import { refuse } from "./error";
import { HeaderFooterGroup } from "./headersFooters";
import type { Members } from "./mirror";
import { Range } from "./range";
import { RangeAreas } from "./rangeAreas";
import type { RequestContext } from "./requestContext";

type Carried = Members<
  Excel.PageLayout,
  | "bottomMargin"
  | "footerMargin"
  | "getPrintAreaOrNullObject"
  | "getPrintTitleRowsOrNullObject"
  | "headerMargin"
  | "leftMargin"
  | "orientation"
  | "paperSize"
  | "rightMargin"
  | "setPrintArea"
  | "setPrintMargins"
  | "setPrintTitleRows"
  | "topMargin"
  | "zoom"
>;

const orientations: readonly PageSetup["orientation"][] = ["Portrait", "Landscape"];
const papers = ["Letter", "Legal", "Tabloid", "A3", "A4", "A5"];
const pointsByUnit: Readonly<Record<string, number>> = { Points: 1, Inches: 72, Centimeters: 72 / 2.54 };
const sides: readonly (keyof PageMargins)[] = ["top", "bottom", "left", "right", "header", "footer"];

/** How a sheet is printed. */
export class PageLayout extends ClientObject implements Carried {
  readonly headersFooters: HeaderFooterGroup;

  constructor(
    context: RequestContext,
    private readonly sheetId: () => string,
  ) {
    super(context, "PageLayout");
    this.headersFooters = new HeaderFooterGroup(context, sheetId);
  }

  private now(): PageSetup {
    return this.context.session.grid.pages.get(this.sheetId());
  }

  private change(change: Partial<PageSetup>): void {
    const sheetId = this.sheetId();
    this.context.session.checkWritable(sheetId);
    this.context.session.grid.pages.set(sheetId, { ...this.now(), ...change });
  }

  protected loadable(): Loadable {
    const margin = (side: keyof PageMargins) => () => this.now().margins[side];
    return {
      properties: {
        orientation: () => this.now().orientation,
        paperSize: () => this.now().paperSize,
        zoom: () => this.now().zoom,
        topMargin: margin("top"),
        bottomMargin: margin("bottom"),
        leftMargin: margin("left"),
        rightMargin: margin("right"),
        headerMargin: margin("header"),
        footerMargin: margin("footer"),
      },
    };
  }

  get orientation(): Excel.PageLayout["orientation"] {
    return this.loadedValue("orientation");
  }

  set orientation(given: Excel.PageLayout["orientation"]) {
    this.assign("orientation", given, () => {
      const orientation = orientations.find((one) => one === given);
      if (!orientation) throw refuse("InvalidArgument");
      this.change({ orientation });
    });
  }

  get paperSize(): Excel.PageLayout["paperSize"] {
    return this.loadedValue("paperSize");
  }

  set paperSize(given: Excel.PageLayout["paperSize"]) {
    this.assign("paperSize", given, () => {
      const paperSize = papers.find((one) => one === given);
      if (!paperSize) throw refuse("InvalidArgument", `The practice workbook carries no paper ${given}.`);
      this.change({ paperSize });
    });
  }

  get zoom(): Excel.PageLayoutZoomOptions {
    return this.loadedValue("zoom");
  }

  /** Set as a whole: a share, or so many pages. */
  set zoom(given: Excel.PageLayoutZoomOptions) {
    this.assign("zoom", given, () => {
      const { scale, horizontalFitToPages: across, verticalFitToPages: down } = given;
      const isCount = (pages: number | undefined) => pages === undefined || (Number.isInteger(pages) && pages > 0);
      const isScale = scale === undefined || (scale >= 10 && scale <= 400);
      const isOneOfThem = (scale === undefined) !== (across === undefined && down === undefined);
      if (!isCount(across) || !isCount(down) || !isScale || !isOneOfThem) throw refuse("InvalidArgument");
      this.change({
        zoom: {
          ...(scale !== undefined && { scale }),
          ...(across !== undefined && { horizontalFitToPages: across }),
          ...(down !== undefined && { verticalFitToPages: down }),
        },
      });
    });
  }

  private changeMargins(given: Partial<PageMargins>): void {
    if (Object.values(given).some((points) => !Number.isFinite(points) || points < 0)) throw refuse("InvalidArgument");
    this.change({ margins: { ...this.now().margins, ...given } });
  }

  private setMargin(side: keyof PageMargins, points: number): void {
    this.assign(`${side}Margin`, points, () => this.changeMargins({ [side]: points }));
  }

  /** In points, as all margins. */
  get topMargin(): number {
    return this.loadedValue("topMargin");
  }

  set topMargin(given: number) {
    this.setMargin("top", given);
  }

  get bottomMargin(): number {
    return this.loadedValue("bottomMargin");
  }

  set bottomMargin(given: number) {
    this.setMargin("bottom", given);
  }

  get leftMargin(): number {
    return this.loadedValue("leftMargin");
  }

  set leftMargin(given: number) {
    this.setMargin("left", given);
  }

  get rightMargin(): number {
    return this.loadedValue("rightMargin");
  }

  set rightMargin(given: number) {
    this.setMargin("right", given);
  }

  get headerMargin(): number {
    return this.loadedValue("headerMargin");
  }

  set headerMargin(given: number) {
    this.setMargin("header", given);
  }

  get footerMargin(): number {
    return this.loadedValue("footerMargin");
  }

  set footerMargin(given: number) {
    this.setMargin("footer", given);
  }

  /** The margins that are given, in the unit; the others stay. */
  setPrintMargins(unit: string, given: Excel.PageLayoutMarginOptions): void {
    this.act("setPrintMargins", () => {
      const points = pointsByUnit[unit];
      if (points === undefined) throw refuse("InvalidArgument");
      const margins = sides.flatMap((side) => {
        const length = given[side];
        return length === undefined ? [] : [[side, length * points]];
      });
      this.changeMargins(Object.fromEntries(margins));
    });
  }

  private areaOf(given: Range | RangeAreas | string): Area {
    if (given instanceof RangeAreas)
      throw refuse("InvalidArgument", "The practice workbook prints one area of a sheet.");
    const area = typeof given === "string" ? areaAt(this.context.session, this.sheetId(), given) : given.place;
    if (area.sheetId !== this.sheetId()) throw refuse("InvalidArgument");
    return area;
  }

  setPrintArea(printArea: Range | RangeAreas | string): void {
    this.accepted(printArea);
    this.act("setPrintArea", () => this.change({ printArea: this.areaOf(printArea) }));
  }

  getPrintAreaOrNullObject(): RangeAreas {
    return new RangeAreas(this.context, "PageLayout.getPrintAreaOrNullObject", () => {
      const { printArea } = this.now();
      return printArea ? [printArea] : null;
    });
  }

  /** Whole rows only. */
  setPrintTitleRows(printTitleRows: Range | string): void {
    this.accepted(printTitleRows);
    this.act("setPrintTitleRows", () => {
      const { row, rowCount, columnCount } = this.areaOf(printTitleRows);
      if (columnCount !== sheetColumns) throw refuse("InvalidArgument");
      this.change({ titleRows: { row, rowCount } });
    });
  }

  getPrintTitleRowsOrNullObject(): Range {
    return new Range(this.context, "PageLayout.getPrintTitleRowsOrNullObject", () => {
      const { titleRows } = this.now();
      return titleRows ? { sheetId: this.sheetId(), ...titleRows, column: 0, columnCount: sheetColumns } : null;
    });
  }
}
