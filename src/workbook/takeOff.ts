import { areaOfAddress } from "./areaOfAddress";
import { queueRestore } from "./before";
import { common } from "./freePlace";
import { queueShapes } from "./pictures";
import type { Written } from "./receipt";
import { sheetOfAddress } from "./sheetOfAddress";
import type { Stood } from "./stood";

/** What there was at the place of a plan: blank cells and their looks, or what somebody wrote there meanwhile. */
interface Earlier {
  readonly before?: Written["before"] | undefined;
  readonly stood?: Stood | undefined;
}

/**
 * Looks for what there is of a plan that was written, whole or in part; after a sync it can be taken off.
 *
 * @param worksheet its sheet, or a null object.
 * @param isPicture tells its pictures from the sheet's others.
 */
export function queueTakeOff(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  { area, names, before, stood }: Pick<Written, "area" | "names"> & Earlier,
  isPicture: (shape: { readonly id: string; readonly name: string }) => boolean,
) {
  worksheet.load("name");
  worksheet.protection.load("protected");
  const target = worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
  const tables = target.getTables(false);
  tables.load("items/name");
  if (stood) target.conditionalFormats.load("items/id");
  const shapes = queueShapes(worksheet);
  const named = names.map((name) => context.workbook.names.getItemOrNullObject(name));
  for (const item of named) item.load("name,formula");
  const isOurs = ({ formula }: Excel.NamedItem) =>
    worksheet.isNullObject || isIn(String(formula), worksheet.name, area);
  const takeOffNames = () => {
    for (const item of named) if (!item.isNullObject && isOurs(item)) item.delete();
  };
  const takeOffCells = () => {
    shapes.remove(isPicture);
    // The place had no table before; its cells are emptied below.
    for (const table of tables.items) if (!stood?.tables.includes(table.name)) table.convertToRange();
    if (stood) stood.queueBack(target);
    else if (before) queueRestore(target, before);
  };
  return {
    target,
    isThere: (): boolean => !worksheet.isNullObject,
    isProtected: (): boolean => !worksheet.isNullObject && worksheet.protection.protected,
    /** Whether somebody else's pictures lie on its sheet. */
    hasOtherPictures: (): boolean => !worksheet.isNullObject && shapes.has((shape) => !isPicture(shape)),
    takeOffNames,
    /** Queues its removal: of its sheet, too, or only of itself. Cells first: a sheet that refuses keeps its names. */
    takeOff: (withSheet: boolean): void => {
      if (!worksheet.isNullObject && withSheet) worksheet.delete();
      else if (!worksheet.isNullObject) takeOffCells();
      takeOffNames();
    },
  };
}

/** Whether a name stands for cells of an area; one that stands elsewhere came with something else, or has moved. */
function isIn(formula: string, sheetName: string, area: Written["area"]): boolean {
  const address = formula.replace(/^=/, "");
  if (address.includes("#REF!")) return true;
  return sheetOfAddress(address) === sheetName && common(areaOfAddress(address), area) !== undefined;
}
