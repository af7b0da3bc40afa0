import { queueRestore } from "./before";
import { queueShapes } from "./pictures";
import type { Written } from "./receipt";

/**
 * Looks for what there is of a plan that was written, whole or in part; after a sync it can be taken off.
 *
 * @param worksheet its sheet, or a null object.
 * @param isPicture tells its pictures from the sheet's others.
 */
export function queueTakeOff(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  { area, names, before }: Pick<Written, "area" | "names"> & { readonly before?: Written["before"] | undefined },
  isPicture: (shape: { readonly id: string; readonly name: string }) => boolean,
) {
  worksheet.load("name");
  const target = worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
  const tables = target.getTables(false);
  tables.load("items/name");
  const shapes = queueShapes(worksheet);
  const named = names.map((name) => context.workbook.names.getItemOrNullObject(name));
  for (const item of named) item.load("name");
  return {
    target,
    /** Queues its removal: of its sheet, too, or only of itself. */
    takeOff: (withSheet: boolean): void => {
      for (const item of named) if (!item.isNullObject) item.delete();
      if (worksheet.isNullObject) return;
      if (withSheet) {
        worksheet.delete();
        return;
      }
      shapes.remove(isPicture);
      // The place had no table before; its cells are emptied below.
      for (const table of tables.items) table.convertToRange();
      if (before) queueRestore(target, before);
    },
  };
}
