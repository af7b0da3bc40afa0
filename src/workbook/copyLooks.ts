import { inWorkbook } from "./trouble";

/** Gives a sheet the looks and column widths of another, cell by cell: what a copy of its contents lacks. */
export async function copyLooks(
  from: string,
  to: string,
  size: { readonly rows: number; readonly columns: number },
): Promise<void> {
  return inWorkbook(async (context) => {
    const { worksheets } = context.workbook;
    const source = worksheets.getItem(from).getRangeByIndexes(0, 0, size.rows, size.columns);
    const target = worksheets.getItem(to).getRangeByIndexes(0, 0, size.rows, size.columns);
    const widths = Array.from({ length: size.columns }, (_, column) => source.getColumn(column));
    for (const column of widths) column.load("format/columnWidth");
    target.load("numberFormat");
    await context.sync();
    const formats = target.numberFormat;
    target.copyFrom(source, "Formats");
    // Taped text became numbers, which keep the formats that the copy gave them.
    target.numberFormat = formats;
    widths.forEach(({ format }, column) => {
      target.getColumn(column).format.columnWidth = format.columnWidth;
    });
    await context.sync();
  });
}
