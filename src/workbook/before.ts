import type { PlaceBefore } from "./receipt";

const ASKED: Excel.CellPropertiesLoadOptions = {
  format: {
    fill: { color: true },
    font: { bold: true, color: true, italic: true, name: true, size: true },
    horizontalAlignment: true,
    wrapText: true,
  },
};

/** The host says white for a cell without a fill; writing that back would hide its gridlines. */
const NO_FILL = "#FFFFFF";

/** Asks how a blank place looks; readable after a sync. */
export function queueBefore(target: Excel.Range, columns: number) {
  target.load("numberFormat");
  const properties = target.getCellProperties(ASKED);
  const columnRanges = Array.from({ length: columns }, (_, index) => target.getColumn(index));
  for (const column of columnRanges) column.load("format/columnWidth");
  return {
    read: (): PlaceBefore => ({
      numberFormat: target.numberFormat as string[][],
      columnWidths: columnRanges.map(({ format }) => format.columnWidth),
      looks: distinctLooks(properties.value),
    }),
  };
}

/** Queues everything that makes a written place as blank, and as it looked, as before. */
export function queueRestore(target: Excel.Range, before: PlaceBefore): void {
  target.conditionalFormats.clearAll();
  target.dataValidation.clear();
  target.clear();
  target.numberFormat = before.numberFormat as string[][];
  const { distinct, cells } = before.looks;
  // After the clearing all cells are plain, so that only those that were not plain are written.
  if (distinct.length > 1) target.setCellProperties(cells.map((row) => row.map((index) => distinct[index]!)));
  before.columnWidths.forEach((width, index) => {
    target.getColumn(index).format.columnWidth = width;
  });
}

function distinctLooks(properties: Excel.CellProperties[][]): PlaceBefore["looks"] {
  const indexes = new Map<string, number>();
  const distinct: Excel.SettableCellProperties[] = [];
  const cells = properties.map((row) =>
    row.map(({ format }) => {
      const { fill, ...others } = format ?? {};
      const look = { format: fill?.color && fill.color !== NO_FILL ? { ...others, fill } : others };
      const text = JSON.stringify(look);
      const known = indexes.get(text);
      if (known !== undefined) return known;
      indexes.set(text, distinct.length);
      return distinct.push(look) - 1;
    }),
  );
  return { distinct, cells };
}
