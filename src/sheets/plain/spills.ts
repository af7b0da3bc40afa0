import { must } from "../../quantities/must";
import { type CellContent, isFormula, type Region, type SheetArea, type Surroundings } from "./region";

/** A formula of the region whose list fills cells beside it; places are counted from the region's first cell. */
export interface Spill {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** The lists that spill within a region: as the host tells them, and else by the cells that show a value and hold nothing. */
export function spillsOf(region: Region, around: Surroundings): readonly Spill[] {
  const told = (around.spills ?? [])
    .filter(({ sheetName }) => sheetName === region.sheetName)
    .map((area) => inside(area, region))
    .filter((spill) => isFormula(region.formulas[spill.row]?.[spill.column]));
  const isTold = (row: number, column: number) => told.some((spill) => covers(spill, row, column));
  const found = new Map<string, Spill>();
  region.formulas.forEach((cells, row) => {
    cells.forEach((content, column) => {
      if (content !== "" || must(region.values[row])[column] === "" || isTold(row, column)) return;
      const anchor = anchorOf(region, row, column);
      if (!anchor) return;
      const known = found.get(anchor.join(",")) ?? { row: anchor[0], column: anchor[1], rows: 1, columns: 1 };
      found.set(anchor.join(","), {
        ...known,
        rows: Math.max(known.rows, row - known.row + 1),
        columns: Math.max(known.columns, column - known.column + 1),
      });
    });
  });
  return [...told, ...found.values()];
}

export function covers({ row, column, rows, columns }: Spill, down: number, across: number): boolean {
  return down >= row && down < row + rows && across >= column && across < column + columns;
}

function inside({ row, column, rows, columns }: SheetArea, region: Region): Spill {
  return { row: row - region.row, column: column - region.column, rows, columns };
}

/** The nearest formula above or to the left with nothing typed between. */
function anchorOf({ formulas }: Region, row: number, column: number): readonly [number, number] | undefined {
  for (let up = row; up >= 0; up--) {
    for (let left = column; left >= 0; left--) {
      const content: CellContent | undefined = must(formulas[up])[left];
      if (isFormula(content)) return [up, left];
      if (content !== "") break;
    }
  }
  return undefined;
}
