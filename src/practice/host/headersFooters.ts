import { ClientObject, type Loadable } from "./clientObject";
import { refuse } from "./error";
import type { Members } from "./mirror";
import type { RequestContext } from "./requestContext";

/** The longest line that the host takes, in letters. */
const longestText = 255;

/** The lines at the foot of every page of a sheet. */
export class HeaderFooter extends ClientObject implements Members<Excel.HeaderFooter, "centerFooter"> {
  constructor(
    context: RequestContext,
    private readonly sheetId: () => string,
  ) {
    super(context, "HeaderFooter");
  }

  protected loadable(): Loadable {
    const { pages } = this.context.session.grid;
    return { properties: { centerFooter: () => pages.get(this.sheetId()).texts.centerFooter } };
  }

  get centerFooter(): string {
    return this.loadedValue("centerFooter");
  }

  set centerFooter(given: string) {
    this.assign("centerFooter", given, () => {
      const { session } = this.context;
      const sheetId = this.sheetId();
      session.checkWritable(sheetId);
      if (given.length > longestText) throw refuse("InvalidArgument");
      const setup = session.grid.pages.get(sheetId);
      session.grid.pages.set(sheetId, { ...setup, texts: { ...setup.texts, centerFooter: given } });
    });
  }
}

/** The practice workbook has the same lines on all pages. */
export class HeaderFooterGroup implements Members<Excel.HeaderFooterGroup, "defaultForAllPages"> {
  readonly defaultForAllPages: HeaderFooter;

  constructor(
    readonly context: RequestContext,
    sheetId: () => string,
  ) {
    this.defaultForAllPages = new HeaderFooter(context, sheetId);
  }
}
