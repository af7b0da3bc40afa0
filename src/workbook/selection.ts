import { inWorkbook } from "./trouble";

/**
 * Tells what is selected, now and whenever it changes. Where it changes faster than it can be read, as while an arrow
 * key is held down, only the last one is read.
 *
 * @param read reads what is wanted of the selection.
 * @param tell called with it; with undefined where it cannot be read: the selection may be a picture or a chart, which
 *   has no address, and that is no trouble for anybody.
 * @returns a function that ends it.
 */
export async function watchSelection<T>(
  read: () => Promise<T>,
  tell: (selected: T | undefined) => void,
): Promise<() => Promise<void>> {
  let reading = false;
  let again = false;
  const changed = async () => {
    again = true;
    if (reading) return;
    reading = true;
    while (again) {
      again = false;
      const selected = await read().catch(() => undefined);
      if (!again) tell(selected);
    }
    reading = false;
  };
  const registered = await inWorkbook(async (context) => {
    const result = context.workbook.onSelectionChanged.add(changed);
    await context.sync();
    return result;
  });
  await changed();
  return () =>
    inWorkbook(async () => {
      registered.remove();
      await registered.context.sync();
    });
}

/** The first selected cell, such as `Estimate!B4`. One request. */
export function selectedCell(): Promise<string> {
  return inWorkbook(async (context) => {
    const corner = context.workbook.getSelectedRange().getCell(0, 0);
    corner.load("address");
    await context.sync();
    return corner.address;
  });
}
