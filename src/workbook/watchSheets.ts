import { inWorkbook } from "./failure";

/**
 * Tells when someone changes a cell of one of these sheets.
 *
 * @param sheets their names now; a new name later changes nothing.
 * @returns stops it.
 */
export async function watchSheets(sheets: readonly string[], tell: () => void): Promise<() => Promise<void>> {
  const changed = async () => tell();
  const registered = await inWorkbook(async (context) => {
    const results = sheets.map((name) => context.workbook.worksheets.getItem(name).onChanged.add(changed));
    await context.sync();
    return results;
  });
  return () =>
    inWorkbook(async () => {
      for (const one of registered) one.remove();
      await registered[0]?.context.sync();
    });
}
