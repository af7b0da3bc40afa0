import type { Loadable } from "./clientObject";
import { hostColor } from "./color";
import { lookDefaults } from "./lookDefaults";
import type { Members } from "./mirror";
import { RangeLook } from "./rangeLook";

/** The ground of a range's cells. */
export class RangeFill extends RangeLook implements Members<Excel.RangeFill, "clear" | "color"> {
  protected loadable(): Loadable {
    return { properties: { color: () => this.shared((look) => hostColor(look.fill ?? lookDefaults.fill)) ?? "" } };
  }

  get color(): string {
    return this.loadedValue("color");
  }

  set color(given: string) {
    this.setLook("color", given, { fill: given });
  }

  clear(): void {
    this.act("clear", () => {
      this.context.session.checkWritable(this.area().sheetId);
      this.context.session.grid.looks.set(this.area(), { fill: undefined });
    });
  }
}
