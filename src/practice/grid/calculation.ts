import type { OpenGrid } from "./library";

type SessionState = InstanceType<OpenGrid["library"]["sheets"]["FormulaCalculationSessionService"]>["state"];

/** Waiting ends in an error after this long, so that a sheet which never comes to rest is met with words. */
const patienceMs = 30_000;

/**
 * Tells when every formula shows its result. The grid calculates a moment after a change, so between the two a read
 * would still see the old number.
 */
export class Calculation {
  private changesSeen = 0;
  private changesStarted = 0;

  constructor(private readonly grid: OpenGrid) {
    const { core, sheets } = grid.library;
    const dirtying = grid.injector.get(sheets.IActiveDirtyManagerService);
    const looksOnly = [sheets.SetStyleCommand.id, sheets.SetBorderCommand.id, sheets.ClearSelectionFormatCommand.id];
    grid.injector.get(core.ICommandService).onCommandExecuted((command, options) => {
      const { trigger = "" } = (command.params ?? {}) as { trigger?: string };
      if (command.id === sheets.SetFormulaCalculationStartMutation.id) this.changesStarted = this.changesSeen;
      else if (looksOnly.includes(trigger)) return;
      else if (dirtying.get(command.id) && !options?.onlyLocal) this.changesSeen += 1;
    });
  }

  async settled(): Promise<void> {
    const sessions = this.grid.injector.get(this.grid.library.sheets.FormulaCalculationSessionService);
    while (!this.isIdle(sessions.state)) {
      const { changesStarted } = this;
      await sessions.waitForLatestApplied(patienceMs);
      // Nothing was started meanwhile, so the change was one that needs no calculation.
      if (this.changesStarted === changesStarted) this.changesStarted = this.changesSeen;
    }
  }

  private isIdle({ started, completed, resultApplied }: SessionState): boolean {
    const isRunning = started && !(completed && resultApplied);
    return !isRunning && this.changesStarted >= this.changesSeen;
  }

  async recalculate(): Promise<void> {
    this.changesSeen += 1;
    this.grid.api.getFormula().executeCalculation();
    await this.settled();
  }
}
