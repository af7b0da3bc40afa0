import type { Area, CellsChanged } from "./port";

/** A stretch of rows or columns. */
interface Stretch {
  readonly start: number;
  readonly count: number;
}

/**
 * Where an area is after rows or columns have come or gone: it moves with its cells, grows with what is inserted
 * inside, and is undefined once all of it is gone.
 */
export function shiftedArea(area: Area, { kind, area: moved }: CellsChanged): Area | undefined {
  if (moved.sheetId !== area.sheetId || kind === "edited") return area;
  const isGone = kind === "rowsDeleted" || kind === "columnsDeleted";
  if (kind === "rowsInserted" || kind === "rowsDeleted") {
    const rows = shifted(
      { start: area.row, count: area.rowCount },
      { start: moved.row, count: moved.rowCount },
      isGone,
    );
    return rows && { ...area, row: rows.start, rowCount: rows.count };
  }
  const columns = shifted(
    { start: area.column, count: area.columnCount },
    { start: moved.column, count: moved.columnCount },
    isGone,
  );
  return columns && { ...area, column: columns.start, columnCount: columns.count };
}

function shifted({ start, count }: Stretch, moved: Stretch, isGone: boolean): Stretch | undefined {
  const end = start + count;
  if (!isGone) {
    if (moved.start <= start) return { start: start + moved.count, count };
    return moved.start < end ? { start, count: count + moved.count } : { start, count };
  }
  const movedEnd = moved.start + moved.count;
  const goneBefore = Math.max(0, Math.min(start, movedEnd) - moved.start);
  const goneInside = Math.max(0, Math.min(end, movedEnd) - Math.max(start, moved.start));
  return goneInside < count ? { start: start - goneBefore, count: count - goneInside } : undefined;
}
