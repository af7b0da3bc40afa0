import type { Area } from "../grid/port";
import { addressOf } from "./areas";
import type { Loadable } from "./clientObject";
import type { Members } from "./mirror";
import { Placed } from "./placed";
import type { RequestContext } from "./requestContext";

/** Several ranges of one sheet, as the host gives merged cells. */
export class RangeAreas
  extends Placed<readonly Area[]>
  implements Members<Excel.RangeAreas, "address" | "areaCount" | "isNullObject">
{
  constructor(context: RequestContext, location: string, find: () => readonly Area[] | null) {
    super(context, "RangeAreas", location, find);
    context.endsWithRun(this);
  }

  protected loadable(): Loadable {
    return {
      properties: {
        address: () => this.place.map((area) => addressOf(this.context.session, area)).join(","),
        areaCount: () => this.place.length,
      },
    };
  }

  get address(): string {
    return this.loadedValue("address");
  }

  get areaCount(): number {
    return this.loadedValue("areaCount");
  }
}
