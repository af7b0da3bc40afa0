/**
 * Remembers what a worksheet function said about the error that it gave, by the cell in which it was called. The
 * grid itself keeps only the error's name.
 */
export class ErrorMessages {
  private readonly byCell = new Map<string, string>();

  get(sheetId: string, row: number, column: number): string | undefined {
    return this.byCell.get(key(sheetId, row, column));
  }

  set(sheetId: string, row: number, column: number, message: string): void {
    this.byCell.set(key(sheetId, row, column), message);
  }

  forget(sheetId: string, row: number, column: number): void {
    this.byCell.delete(key(sheetId, row, column));
  }

  /** For when cells have moved and the places no longer hold. */
  forgetAll(): void {
    this.byCell.clear();
  }
}

function key(sheetId: string, row: number, column: number): string {
  return `${sheetId} ${row} ${column}`;
}
