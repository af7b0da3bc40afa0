import type { ICellData, ICommandService } from "@univerjs/core";
import type { OpenGrid } from "./library";

/** Waiting ends in an error once the grid has shown no sign of life for this long. */
const patienceMs = 60_000;

/** What formulas show now, by workbook, sheet, row, and column. */
interface Results {
  readonly unitData: Record<
    string,
    Record<string, Record<number, Record<number, ICellData | null> | null> | null> | null
  >;
}

/**
 * Takes out of results what the grid would do to formulas: a cell gets a format when its formula is typed, and not when
 * it's worked out again.
 */
function correctResults({ workbook }: OpenGrid, { unitData }: Results): void {
  for (const [id, rows] of Object.entries(unitData[workbook.getId()] ?? {})) {
    const sheet = workbook.getWorkbook().getSheetBySheetId(id);
    for (const [row, cells] of Object.entries(rows ?? {})) {
      for (const [column, cell] of Object.entries(cells ?? {})) {
        const before = sheet?.getCellRaw(Number(row), Number(column));
        if (cell?.s && before?.v !== undefined && before.v !== null) delete cell.s;
        // A formula that reads its own cell may come to nothing, which would take the formula away.
        if (cell === null && before?.f && cells) delete cells[Number(column)];
      }
    }
  }
}

/** What the grid's collector of changes keeps to itself. Its version is pinned exactly. */
interface Collector {
  _waitingCommandQueue: object[];
  _executingDirtyData: object;
  readonly _setTimeoutKey: ReturnType<typeof setTimeout>;
  _generateDirty(changes: object[]): object;
  _mergeDirty(before: object, now: object): object;
}

/**
 * Knows whether every formula shows its result. The grid collects changes for a tenth of a second, then calculates in
 * slices; a change that comes while it calculates gets a calculation of its own afterward. So the changes that still
 * wait and the calculations that still run are counted here, by the same rules by which the grid collects and runs them.
 */
export class Calculation {
  /** A change was made, and no calculation with it has started. */
  private isWaiting = false;
  /** Calculations that started, and whose results are not in the cells. */
  private running = 0;
  /** The calculation that runs has nothing left to work out; its results come next. */
  private isFinishing = false;
  private readonly listeners = new Set<() => void>();
  private readonly commands: ICommandService;
  private readonly collector: Collector;

  constructor(private readonly grid: OpenGrid) {
    const { core, sheets } = grid.library;
    // Whatever changes before the collector is there is never collected, so it comes first.
    this.collector = grid.injector.get(sheets.TriggerCalculationController) as unknown as Collector;
    this.commands = grid.injector.get(core.ICommandService);
    const dirtying = grid.injector.get(sheets.IActiveDirtyManagerService);
    const looksOnly: string[] = [
      sheets.SetStyleCommand.id,
      sheets.SetBorderCommand.id,
      sheets.ClearSelectionFormatCommand.id,
    ];
    const isCollected = (id: string, params: object | undefined, onlyLocal: boolean | undefined) => {
      if (!dirtying.get(id)) return false;
      if (id !== sheets.SetRangeValuesMutation.id) return true;
      return !onlyLocal && !looksOnly.includes((params as { trigger?: string }).trigger ?? "");
    };

    // Counted before the command runs, since a change may follow right behind it.
    this.commands.beforeCommandExecuted(({ id, params }) => {
      if (id === sheets.SetFormulaCalculationResultMutation.id) correctResults(grid, params as Results);
      if (id !== sheets.SetFormulaCalculationStartMutation.id) return;
      this.isWaiting = false;
      this.running += 1;
    });
    this.commands.onCommandExecuted(({ id, params }, options) => {
      if (id === sheets.SetFormulaCalculationNotificationMutation.id) {
        const { stageInfo } = params as { stageInfo?: { stage: number } };
        if (stageInfo?.stage === sheets.FormulaExecuteStageType.CALCULATION_COMPLETED) this.isFinishing = true;
        else if (!stageInfo && this.isFinishing) {
          this.isFinishing = false;
          this.running -= 1;
        }
        for (const listener of [...this.listeners]) listener();
      } else if (isCollected(id, params, options?.onlyLocal)) this.isWaiting = true;
    });
  }

  /**
   * Resolves once every formula shows its result.
   *
   * @throws Error where the grid stays stuck.
   */
  async settled(): Promise<void> {
    while (this.isWaiting || this.running > 0) {
      const news = this.news();
      if (this.running === 0) this.start();
      await news;
    }
  }

  async recalculate(): Promise<void> {
    const everything = { commands: [], forceCalculation: true };
    const { id } = this.grid.library.sheets.SetTriggerFormulaCalculationStartMutation;
    await this.commands.executeCommand(id, everything, { onlyLocal: true });
    await this.settled();
  }

  /** Calculates now, as the grid would a tenth of a second after the last change: someone waits for the results. */
  private start(): void {
    const { collector } = this;
    clearTimeout(collector._setTimeoutKey);
    const dirty = collector._generateDirty(collector._waitingCommandQueue);
    collector._waitingCommandQueue = [];
    collector._executingDirtyData = collector._mergeDirty(collector._executingDirtyData, dirty);
    const { id } = this.grid.library.sheets.SetFormulaCalculationStartMutation;
    void this.commands.executeCommand(id, { ...collector._executingDirtyData }, { onlyLocal: true });
  }

  /** Resolves when the grid says anything about how far it is. */
  private news(): Promise<void> {
    return new Promise((resolve, reject) => {
      const stop = () => {
        clearTimeout(late);
        this.listeners.delete(heard);
      };
      const heard = () => {
        stop();
        resolve();
      };
      const late = setTimeout(() => {
        stop();
        reject(new Error("The grid does not finish its calculation."));
      }, patienceMs);
      this.listeners.add(heard);
    });
  }
}
