import { areaIn } from "./areaOfAddress";
import { queueRestore, queueWidths } from "./before";
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

/** Tells what a plan brought from what was there, or came from somebody else. */
export interface Own {
  readonly isPicture: (shape: { readonly id: string; readonly name: string }) => boolean;
  /** Whether tables in its place are its own; it was not written over one. */
  readonly hasTables: boolean;
  /** Whether its cells were emptied before, so that what stands in them by now is somebody else's. */
  readonly isEmptied?: boolean;
}

/**
 * Looks for what there is of a plan that was written, whole or in part; after a sync it can be taken off.
 *
 * @param worksheet its sheet, or a null object.
 */
export function queueTakeOff(
  context: Excel.RequestContext,
  worksheet: Excel.Worksheet,
  { area, names, before, stood }: Pick<Written, "area" | "names"> & Earlier,
  { isPicture, hasTables, isEmptied = false }: Own,
) {
  worksheet.load("name");
  worksheet.protection.load("protected");
  const target = worksheet.getRangeByIndexes(area.row, area.column, area.rows, area.columns);
  const tables = target.getTables(false);
  tables.load("items/name,items/style");
  const widthsNow = before && queueWidths(target, area.columns);
  if (stood) target.conditionalFormats.load("items/id");
  const shapes = queueShapes(worksheet);
  const named = names.map((name) => context.workbook.names.getItemOrNullObject(name));
  for (const item of named) item.load("name,formula");
  // Where the sheet is gone, so are the cells that its names stood for.
  const isOurs = ({ formula }: Excel.NamedItem) =>
    isGone(String(formula)) || (!worksheet.isNullObject && isIn(String(formula), worksheet.name, area));
  const own = () => named.filter((item) => !item.isNullObject && isOurs(item));
  const takeOffNames = () => {
    for (const item of own()) item.delete();
  };
  const takeOffCells = () => {
    shapes.remove(isPicture);
    // The place had no table before; its cells are emptied below.
    if (hasTables) for (const table of tables.items) table.convertToRange();
    if (stood) stood.queueBack(target);
    else if (before) queueRestore(target, before, isEmptied, widthsNow?.());
  };
  return {
    target,
    /** The tables in its place. */
    tables: (): readonly Excel.Table[] => (worksheet.isNullObject ? [] : tables.items),
    /** What there is of it beside its cells, and of others, to be compared. */
    seen: (): unknown[] => [shapes.names(), tables.items.map(({ name }) => name), own().map(({ name }) => name)],
    isThere: (): boolean => !worksheet.isNullObject,
    isProtected: (): boolean => !worksheet.isNullObject && worksheet.protection.protected,
    /** Whether somebody else's pictures lie on its sheet. */
    hasOtherPictures: (): boolean => !worksheet.isNullObject && shapes.has((shape) => !isPicture(shape)),
    /** Names of the workbook that stand for its cells. */
    ownNames: (): string[] => own().map(({ name }) => name),
    takeOffNames,
    /** Queues its removal: of its sheet, too, or only of itself. Cells first: a sheet that refuses keeps its names. */
    takeOff: (withSheet: boolean): void => {
      if (!worksheet.isNullObject && withSheet) worksheet.delete();
      else if (!worksheet.isNullObject) takeOffCells();
      takeOffNames();
    },
  };
}

const isGone = (formula: string): boolean => formula.includes("#REF!");

/** Whether a name stands for cells of an area; one that stands elsewhere came with something else, or was changed. */
function isIn(formula: string, sheetName: string, area: Written["area"]): boolean {
  const address = formula.replace(/^=/, "");
  const cells = areaIn(address);
  return cells !== undefined && sheetOfAddress(address) === sheetName && common(cells, area) !== undefined;
}
