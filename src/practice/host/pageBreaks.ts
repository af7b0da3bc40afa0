import { areaAt } from "./areas";
import type { Loadable } from "./clientObject";
import { Collection } from "./collection";
import { refuse } from "./error";
import type { Members } from "./mirror";
import { Placed } from "./placed";
import { Range } from "./range";
import type { RequestContext } from "./requestContext";

/** A place at which a new page begins: above a row. */
interface BreakPlace {
  readonly sheetId: string;
  readonly row: number;
}

/** A break between pages. */
export class PageBreak extends Placed<BreakPlace> implements Members<Excel.PageBreak, "delete" | "getCellAfterBreak"> {
  constructor(context: RequestContext, location: string, find: () => BreakPlace | null, isFound = false) {
    super(context, "PageBreak", location, find, isFound);
  }

  protected loadable(): Loadable {
    return { properties: {} };
  }

  getCellAfterBreak(): Range {
    return new Range(this.context, "PageBreak.getCellAfterBreak", () => {
      return { ...this.place, column: 0, rowCount: 1, columnCount: 1 };
    });
  }

  delete(): void {
    this.act("delete", () => {
      const { sheetId, row } = this.place;
      const { session } = this.context;
      session.checkWritable(sheetId);
      const setup = session.grid.pages.get(sheetId);
      session.grid.pages.set(sheetId, { ...setup, breaksAbove: setup.breaksAbove.filter((one) => one !== row) });
    });
  }
}

/** The breaks between pages that lie above one another. */
export class HorizontalPageBreaks
  extends Collection<PageBreak>
  implements Members<Excel.PageBreakCollection, "add" | "getCount" | "removePageBreaks">
{
  constructor(
    context: RequestContext,
    private readonly sheetId: () => string,
  ) {
    super(context, "PageBreakCollection");
  }

  protected itemsNow(): PageBreak[] {
    const sheetId = this.sheetId();
    const { breaksAbove } = this.context.session.grid.pages.get(sheetId);
    return breaksAbove.map(
      (row) => new PageBreak(this.context, "PageBreakCollection.items", () => ({ sheetId, row }), true),
    );
  }

  /** Has a new page begin above a range. */
  add(pageBreakRange: Range | string): PageBreak {
    let made: BreakPlace | null = null;
    this.accepted(pageBreakRange);
    this.act("add", () => {
      const { session } = this.context;
      const sheetId = this.sheetId();
      session.checkWritable(sheetId);
      const given = pageBreakRange;
      const { row, sheetId: ofRange } = typeof given === "string" ? areaAt(session, sheetId, given) : given.place;
      if (row === 0 || ofRange !== sheetId) throw refuse("InvalidArgument");
      this.change((breaks) => [...new Set([...breaks, row])].sort((one, other) => one - other));
      made = { sheetId, row };
    });
    return new PageBreak(this.context, "PageBreakCollection.add", () => made);
  }

  removePageBreaks(): void {
    this.act("removePageBreaks", () => {
      this.context.session.checkWritable(this.sheetId());
      this.change(() => []);
    });
  }

  private change(breaksOf: (breaks: readonly number[]) => number[]): void {
    const { pages } = this.context.session.grid;
    const setup = pages.get(this.sheetId());
    pages.set(this.sheetId(), { ...setup, breaksAbove: breaksOf(setup.breaksAbove) });
  }
}
