import type { IRange } from "@univerjs/core";
import { fromRange } from "./geometry";
import type { OpenGrid } from "./library";
import type { Area, CellsChanged, GridPort, Stopper, WatchPort } from "./port";

type Listeners<T> = Set<(news: T) => void>;

const structure: Record<string, CellsChanged["kind"]> = {
  "sheet.mutation.insert-row": "rowsInserted",
  "sheet.mutation.remove-rows": "rowsDeleted",
  "sheet.mutation.insert-col": "columnsInserted",
  "sheet.mutation.remove-col": "columnsDeleted",
};

interface SheetChange {
  readonly subUnitId: string;
  readonly range?: IRange;
  readonly cellValue?: Record<string, Record<string, unknown>>;
}

/** Turns the grid's own commands into the few pieces of news that the host passes on. */
export class GridWatch implements WatchPort {
  private readonly selectionListeners: Listeners<void> = new Set();
  private readonly cellListeners: Listeners<CellsChanged> = new Set();
  private readonly anyListeners: Listeners<void> = new Set();
  private lastSelection = "";

  constructor(
    grid: OpenGrid,
    private readonly port: Pick<GridPort, "selection">,
    private readonly isHost: () => boolean,
  ) {
    const { core, sheets } = grid.library;
    grid.injector.get(core.ICommandService).onCommandExecuted((command, options) => {
      if (command.id === "sheet.operation.set-selections" || command.id === "sheet.operation.set-worksheet-active") {
        this.tellSelection();
      } else if (command.id.startsWith("sheet.mutation.") && !options?.onlyLocal) {
        const isValues = command.id === sheets.SetRangeValuesMutation.id;
        if (isValues || structure[command.id]) this.tellCells(command.id, command.params as SheetChange);
        this.tellAnything();
      }
    });
  }

  selection(listener: () => void): Stopper {
    return listen(this.selectionListeners, listener);
  }

  cells(listener: (change: CellsChanged) => void): Stopper {
    return listen(this.cellListeners, listener);
  }

  anything(listener: () => void): Stopper {
    return listen(this.anyListeners, listener);
  }

  tellAnything(): void {
    for (const listener of this.anyListeners) listener();
  }

  private tellSelection(): void {
    const selection = JSON.stringify(this.port.selection.get());
    if (selection === this.lastSelection) return;
    this.lastSelection = selection;
    for (const listener of this.selectionListeners) listener();
  }

  private tellCells(id: string, change: SheetChange): void {
    const area = change.range ? fromRange(change.subUnitId, change.range) : areaOfCells(change);
    if (!area) return;
    const news: CellsChanged = { kind: structure[id] ?? "edited", area, byHost: this.isHost() };
    for (const listener of this.cellListeners) listener(news);
  }
}

/** The area round the cells whose content was written; a change of looks alone is no news. */
function areaOfCells({ subUnitId, cellValue }: SheetChange): Area | undefined {
  const rows: number[] = [];
  const columns: number[] = [];
  for (const [row, cells] of Object.entries(cellValue ?? {})) {
    for (const [column, cell] of Object.entries(cells ?? {})) {
      if (cell && typeof cell === "object" && !("v" in cell) && !("f" in cell) && !("p" in cell)) continue;
      rows.push(Number(row));
      columns.push(Number(column));
    }
  }
  if (rows.length === 0) return undefined;
  const [startRow, endRow] = [Math.min(...rows), Math.max(...rows)];
  const [startColumn, endColumn] = [Math.min(...columns), Math.max(...columns)];
  return fromRange(subUnitId, { startRow, startColumn, endRow, endColumn });
}

function listen<T>(listeners: Listeners<T>, listener: (news: T) => void): Stopper {
  listeners.add(listener);
  return { stop: () => listeners.delete(listener) };
}
