import type { OpenGrid } from "./library";

/** Waiting ends in an error once the grid has shown no sign of life for this long. */
const patienceMs = 60_000;

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

  constructor(private readonly grid: OpenGrid) {
    const { core, sheets } = grid.library;
    // Whatever changes before the grid's own collector is there is never collected, so it comes first.
    grid.injector.get(sheets.TriggerCalculationController);
    const commands = grid.injector.get(core.ICommandService);
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
    commands.beforeCommandExecuted(({ id }) => {
      if (id !== sheets.SetFormulaCalculationStartMutation.id) return;
      this.isWaiting = false;
      this.running += 1;
    });
    commands.onCommandExecuted(({ id, params }, options) => {
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
    while (this.isWaiting || this.running > 0) await this.news();
  }

  async recalculate(): Promise<void> {
    this.isWaiting = true;
    this.grid.api.getFormula().executeCalculation();
    await this.settled();
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
