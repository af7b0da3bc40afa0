import type { Loadable } from "./clientObject";
import { ClientObject } from "./clientObject";
import { Collection } from "./collection";
import type { Members } from "./mirror";
import type { RequestContext } from "./requestContext";

/** Something on a sheet that is no cell, of which nothing is known but that it is there. */
class BesideCells extends ClientObject implements Members<Excel.Chart, "id"> {
  protected loadable(): Loadable {
    return { properties: { id: () => this.typeName } };
  }

  get id(): string {
    return this.loadedValue("id");
  }
}

/** The charts of a sheet, or its comments: none, but for what a test has put there. */
export class BesideCellsCollection extends Collection<BesideCells> {
  constructor(
    context: RequestContext,
    private readonly what: "Chart" | "Comment",
    private readonly isThere: () => boolean,
  ) {
    super(context, `${what}Collection`);
  }

  protected itemsNow(): BesideCells[] {
    return this.isThere() ? [new BesideCells(this.context, this.what)] : [];
  }
}
