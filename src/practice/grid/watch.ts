import type { IRange } from "@univerjs/core";
import { sheetColumns, sheetRows } from "./a1";
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

/** The grid's commands after which rows or columns of a sheet are elsewhere. */
const moving = /^sheet\.mutation\.(?:insert-row|remove-rows|insert-col|remove-col|move-rows|move-columns)$/;

/** The grid's commands for working formulas out and for the text in the cell editor, which come to nothing kept. */
const passing = /^(doc\.|formula\.mutation\.set-(formula|array|feature|other|trigger))/;

/** The grid's commands that shift cells, and so rewrite the references of formulas elsewhere. */
const shifting = /^sheet\.command\.(insert|remove|delete|move)-.*(row|col|range)/;

interface SheetChange {
  readonly subUnitId: string;
  readonly range?: IRange;
  readonly cellValue?: Record<string, Record<string, unknown>>;
}

/** Turns the grid's own commands into the few pieces of news that the host passes on. */
export class GridWatch implements WatchPort {
  private readonly selectionListeners: Listeners<void> = new Set();
  private readonly cellListeners: Listeners<CellsChanged> = new Set();
  private readonly calculationListeners: Listeners<void> = new Set();
  private readonly anyListeners: Listeners<void> = new Set();
  private readonly moveListeners: Listeners<string> = new Set();
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
      } else if (command.id === sheets.SetFormulaCalculationResultMutation.id) {
        tell(this.calculationListeners, undefined);
      } else if (command.type === core.CommandType.MUTATION && !options?.onlyLocal) {
        const { trigger = "" } = (command.params ?? {}) as { trigger?: string };
        const isValues = command.id === sheets.SetRangeValuesMutation.id && !shifting.test(trigger);
        if (moving.test(command.id)) tell(this.moveListeners, (command.params as SheetChange).subUnitId);
        if (isValues || structure[command.id]) this.tellCells(command.id, command.params as SheetChange);
        if (!passing.test(command.id)) this.tellAnything();
      }
    });
  }

  selection(listener: () => void): Stopper {
    return listen(this.selectionListeners, listener);
  }

  cells(listener: (change: CellsChanged) => void): Stopper {
    return listen(this.cellListeners, listener);
  }

  calculated(listener: () => void): Stopper {
    return listen(this.calculationListeners, listener);
  }

  moved(listener: (sheetId: string) => void): Stopper {
    return listen(this.moveListeners, listener);
  }

  anything(listener: () => void): Stopper {
    return listen(this.anyListeners, listener);
  }

  tellAnything(): void {
    tell(this.anyListeners, undefined);
  }

  private tellSelection(): void {
    const selection = JSON.stringify(this.port.selection.get());
    if (selection === this.lastSelection) return;
    this.lastSelection = selection;
    tell(this.selectionListeners, undefined);
  }

  private tellCells(id: string, change: SheetChange): void {
    const kind = structure[id] ?? "edited";
    const area = change.range ? wholeLines(kind, fromRange(change.subUnitId, change.range)) : areaOfCells(change);
    if (area) tell(this.cellListeners, { kind, area, byHost: this.isHost() });
  }
}

/** Rows and columns come and go whole, also where the grid is smaller than the host's sheet. */
function wholeLines(kind: CellsChanged["kind"], area: Area): Area {
  if (kind === "rowsInserted" || kind === "rowsDeleted") return { ...area, column: 0, columnCount: sheetColumns };
  if (kind === "columnsInserted" || kind === "columnsDeleted") return { ...area, row: 0, rowCount: sheetRows };
  return area;
}

/** The area round the cells whose content was written; a change of looks alone is no news. */
function areaOfCells({ subUnitId, cellValue }: SheetChange): Area | undefined {
  // One by one, since a file or a paste has more cells than a call takes arguments.
  const reach = { startRow: Infinity, startColumn: Infinity, endRow: -Infinity, endColumn: -Infinity };
  for (const [row, cells] of Object.entries(cellValue ?? {})) {
    for (const [column, cell] of Object.entries(cells ?? {})) {
      if (cell && typeof cell === "object" && !("v" in cell) && !("f" in cell) && !("p" in cell)) continue;
      reach.startRow = Math.min(reach.startRow, Number(row));
      reach.endRow = Math.max(reach.endRow, Number(row));
      reach.startColumn = Math.min(reach.startColumn, Number(column));
      reach.endColumn = Math.max(reach.endColumn, Number(column));
    }
  }
  return reach.endRow < 0 ? undefined : fromRange(subUnitId, reach);
}

function listen<T>(listeners: Listeners<T>, listener: (news: T) => void): Stopper {
  listeners.add(listener);
  return { stop: () => listeners.delete(listener) };
}

function tell<T>(listeners: Listeners<T>, news: T): void {
  for (const listener of listeners) listener(news);
}
