import { eachCell } from "../grid/geometry";
import type { Area, CellLook } from "../grid/port";
import { ClientObject } from "./clientObject";
import type { RequestContext } from "./requestContext";
import { carriable } from "./tableOfValues";

/** The host's behavior common to a range's looks: one value for all cells, null where they differ. */
export abstract class RangeLook extends ClientObject {
  constructor(
    context: RequestContext,
    typeName: string,
    protected readonly area: () => Area,
  ) {
    super(context, typeName);
  }

  /** One part of the look that all cells share; null where they differ. */
  protected shared<T>(part: (look: CellLook) => T): T | null {
    const { sheetId } = this.area();
    const { looks } = this.context.session.grid;
    const all = eachCell(carriable(this.area()), (row, column) => part(looks.read(sheetId, row, column))).flat();
    const [first] = all;
    return first !== undefined && all.every((value) => value === first) ? first : null;
  }

  protected setLook(property: string, given: unknown, look: Partial<CellLook>): void {
    this.assign(property, given, () => {
      this.context.session.checkWritable(this.area().sheetId);
      this.context.session.grid.looks.set(this.area(), look);
    });
  }
}
