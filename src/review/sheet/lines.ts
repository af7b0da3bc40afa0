import type { Book, Cell } from "../book";

/** Cells of a sheet that belong together in one direction: the body of a column below its heading, or of a row. */
export interface Line {
  readonly sheet: number;
  readonly direction: "down" | "across";
  /** The column of a line down, the row of a line across. */
  readonly at: number;
  /** From this row or column to that one, both included. */
  readonly from: number;
  readonly to: number;
}

/** The cell of a line at a row or column. */
export function cellOf({ sheet, direction, at }: Line, along: number): Cell {
  return direction === "down" ? { sheet, row: along, column: at } : { sheet, row: at, column: along };
}

/** Where on a line a cell stands. */
export const alongOf = ({ direction }: Line, { row, column }: Cell): number => (direction === "down" ? row : column);

/** How many blank rows end the body of a column; a single one is air between the lines of one job. */
const ENDING_BLANK_ROWS = 2;

/** The bodies of all columns of a sheet. */
export function* linesDown(book: Book, sheet: number): Generator<Line> {
  const grid = book.grids[sheet]!;
  const blank: boolean[] = [];
  for (let row = grid.top; row <= grid.bottom; row++) blank.push(grid.isRowBlank(row));
  const breaks = (row: number) => {
    for (let ahead = 0; ahead < ENDING_BLANK_ROWS; ahead++) if (!blank[row - grid.top + ahead]) return false;
    return true;
  };
  for (let column = grid.left; column <= grid.right; column++) {
    const heads = new Set(
      book.places[sheet]!.headingRows.filter(({ first, last }) => first <= column && column <= last).map(
        ({ row }) => row,
      ),
    );
    let from = grid.top;
    for (let row = grid.top; row <= grid.bottom + 1; row++) {
      if (row <= grid.bottom && !heads.has(row) && !breaks(row)) continue;
      if (row > from) yield { sheet, direction: "down", at: column, from, to: row - 1 };
      from = row + 1;
    }
  }
}

/** The bodies of all rows of a sheet; a column without anything ends them. */
export function* linesAcross(book: Book, sheet: number): Generator<Line> {
  const grid = book.grids[sheet]!;
  const stretches: { from: number; to: number }[] = [];
  let from = grid.left;
  for (let column = grid.left; column <= grid.right + 1; column++) {
    if (column <= grid.right && !grid.isColumnBlank(column)) continue;
    if (column - from > 3) stretches.push({ from, to: column - 1 });
    from = column + 1;
  }
  const heads = new Set(book.places[sheet]!.headingRows.map(({ row }) => row));
  for (let row = grid.top; row <= grid.bottom; row++) {
    if (heads.has(row)) continue;
    for (const stretch of stretches) yield { sheet, direction: "across", at: row, ...stretch };
  }
}
