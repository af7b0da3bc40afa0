import { ErrorMessages } from "../functions/messages";
import { registerFunctions, type WorksheetFunction } from "../functions/register";
import { boundFormulas } from "./bounds";
import { Calculation } from "./calculation";
import { GridCells } from "./cells";
import { GridGroups } from "./groups";
import { GridKept } from "./kept";
import type { OpenGrid } from "./library";

import { GridLooks } from "./looks";
import { markMoved } from "./moved";
import { GridNames } from "./names";
import { GridPages } from "./pages";
import { GridPictures } from "./pictures";
import type { GridPort } from "./port";
import { GridRules } from "./rules";
import { GridSelection } from "./selection";
import { GridSheets } from "./sheets";
import { GridTables } from "./tables";
import { GridWatch } from "./watch";

/** The one workbook of a grid that is up, as the host's objects see it. */
export class Grid implements GridPort {
  readonly sheets: GridSheets;
  readonly cells: GridCells;
  readonly looks: GridLooks;
  readonly rules: GridRules;
  readonly names: GridNames;
  readonly pictures: GridPictures;
  readonly tables: GridTables;
  readonly pages: GridPages;
  readonly groups: GridGroups;
  readonly selection: GridSelection;
  readonly kept: GridKept;
  readonly watch: GridWatch;
  private readonly messages = new ErrorMessages();
  private readonly calculation: Calculation;
  private hostDepth = 0;

  /**
   * @param isEditing Whether a person is typing into a cell just now.
   */
  constructor(
    private readonly grid: OpenGrid,
    readonly isEditing: () => boolean,
  ) {
    this.sheets = new GridSheets(grid);
    this.cells = new GridCells(grid, this.messages);
    this.looks = new GridLooks(grid);
    this.rules = new GridRules(grid);
    this.names = new GridNames(grid);
    this.pictures = new GridPictures(grid);
    this.selection = new GridSelection(grid);
    this.calculation = new Calculation(grid);
    this.watch = new GridWatch(grid, this, () => this.hostDepth > 0);
    this.tables = new GridTables(grid, this.watch);
    this.pages = new GridPages(grid, this.watch);
    this.groups = new GridGroups(grid, this.watch);
    markMoved(grid, this.watch);
    this.kept = new GridKept(grid, () => this.watch.tellAnything());
    this.watch.cells((change) => {
      if (change.kind !== "edited") this.rememberReasonsAnew();
    });
  }

  /** Cells have moved, so the reasons for errors are asked for again where the cells stand now. */
  private rememberReasonsAnew(): void {
    this.messages.forgetAll();
    this.grid.api.getFormula().executeCalculation();
  }

  /**
   * Makes the functions known under `namespace` and shows their results in the cells that call them.
   *
   * @param areShown whether the cells show them already, as in a workbook that was kept with the same functions.
   */
  async register(namespace: string, functions: readonly WorksheetFunction[], areShown = false): Promise<void> {
    boundFormulas(this.grid);
    registerFunctions(this.grid, namespace, functions, this.messages);
    if (!areShown) await this.recalculate();
  }

  async asHost(work: () => void | Promise<void>): Promise<void> {
    this.hostDepth += 1;
    try {
      await work();
    } finally {
      this.hostDepth -= 1;
    }
  }

  settled(): Promise<void> {
    return this.calculation.settled();
  }

  recalculate(): Promise<void> {
    return this.calculation.recalculate();
  }
}
