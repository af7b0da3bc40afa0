import { createWorkbook } from "../../src/practice/host/createWorkbook";
import { HostError } from "../../src/practice/host/error";
import { Range } from "../../src/practice/host/range";
import type { RequestContext } from "../../src/practice/host/requestContext";

interface InContext {
  readonly context: RequestContext;
}

/**
 * Methods that only the library itself calls, where the add-in assigned a property or called something else; the
 * stand-in has no need of them. Each is called on the stand-in's object, as its own methods are.
 */
export const methodsOfTheLibrary: Readonly<Record<string, unknown>> = {
  /** Comes before a large table of values uses several parts. */
  _ValidateArraySize(this: Range, rows: number, columns: number): void {
    this.context.find("Range.values", () => {
      const { rowCount, columnCount } = this.place;
      if (rowCount !== rows || columnCount !== columns) throw new HostError("InvalidArgument", "Range.values");
    });
  },

  /** Spans the rows of one part of such a table. */
  GetBoundingRect(this: Range, other: Range): Range {
    return new Range(this.context, "Range.getBoundingRect", () => {
      const [one, two] = [this.place, other.place];
      const row = Math.min(one.row, two.row);
      const column = Math.min(one.column, two.column);
      const rowCount = Math.max(one.row + one.rowCount, two.row + two.rowCount) - row;
      const columnCount = Math.max(one.column + one.columnCount, two.column + two.columnCount) - column;
      return { sheetId: one.sheetId, row, column, rowCount, columnCount };
    });
  },

  /** What `Excel.createWorkbook` sends. */
  CreateWorkbook(this: InContext, base64?: string) {
    const { context } = this;
    const open = () => context.change("Application.createWorkbook", () => createWorkbook(context.session, base64));
    return { open };
  },
};
