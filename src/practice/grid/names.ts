import type { OpenGrid } from "./library";
import type { DefinedName, NamesPort } from "./port";

/** What can be a name in a formula, whole, so that it's told from one that is part of it. */
const WORD = /[\p{L}\p{N}_.\\]+/gu;

interface Cell {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** The workbook's defined names. */
export class GridNames implements NamesPort {
  private readonly changed = new Set<string>();
  /** By their names in lower case, until one of them changes: a workbook can have tens of thousands. */
  private byName: ReadonlyMap<string, DefinedName> | undefined;

  constructor(private readonly grid: OpenGrid) {
    const { core, sheets } = grid.library;
    grid.injector.get(sheets.IDefinedNamesService).update$.subscribe(() => {
      this.byName = undefined;
    });
    const changing = [sheets.SetDefinedNameMutation.id, sheets.RemoveDefinedNameMutation.id];
    grid.injector.get(core.ICommandService).onCommandExecuted(({ id, params }) => {
      if (changing.includes(id)) this.note((params as { name: string }).name);
    });
  }

  list(): DefinedName[] {
    const { injector, library, workbook } = this.grid;
    // The workbook's own list makes an object of each name, at twenty times the cost.
    const known = injector.get(library.sheets.IDefinedNamesService).getDefinedNameMap(workbook.getId()) ?? {};
    const shown = Object.values(known).filter(({ hidden }) => hidden !== true);
    return shown.map(({ name, formulaOrRefString: text, localSheetId }) => ({
      name,
      formula: text.startsWith("=") ? text : `=${text}`,
      scope: localSheetId === library.sheets.SCOPE_WORKBOOK_VALUE_DEFINED_NAME ? "Workbook" : "Worksheet",
    }));
  }

  find(name: string): DefinedName | undefined {
    this.byName ??= new Map(
      this.list()
        .reverse()
        .map((one) => [one.name.toLowerCase(), one]),
    );
    return this.byName.get(name.toLowerCase());
  }

  add(name: string, formula: string): void {
    this.grid.workbook.insertDefinedName(name, stored(formula));
  }

  change(name: string, formula: string): void {
    const { library } = this.grid;
    const known = this.known(name);
    if (!known) throw new Error(`The name ${name} is gone.`);
    this.execute(library.sheets.SetDefinedNameMutation.id, { ...known, formulaOrRefString: stored(formula) });
  }

  /** Formulas keep the name in their text, as in the host; the grid's own command would write #REF! into them. */
  remove(name: string): void {
    const { injector, library } = this.grid;
    const known = this.known(name);
    if (!known) return;
    this.execute(library.sheets.RemoveDefinedNameMutation.id, known);
    // Without any name left the grid takes every formula for what it was read as; this makes it forget them.
    if (this.list().length === 0) injector.get(library.sheets.LexerTreeBuilder).dispose();
  }

  private known(name: string) {
    const { injector, library, workbook } = this.grid;
    const unitId = workbook.getId();
    const known = injector.get(library.sheets.IDefinedNamesService).getValueByName(unitId, name);
    return known && { ...known, unitId };
  }

  /** A change often comes with others, as when rows are inserted above many named cells. */
  private note(name: string): void {
    if (this.changed.size === 0) queueMicrotask(() => this.workOutAnew());
    this.changed.add(name);
  }

  /** The grid remembers what a formula meant when it was first read, so the formulas with a name are read again. */
  private workOutAnew(): void {
    const { injector, library, workbook } = this.grid;
    const unitId = workbook.getId();
    const { cells, spellings, formulas } = this.callers([...this.changed]);
    this.changed.clear();
    if (cells.length === 0) return;
    // What it remembers goes by the formula's text, and of a long one by a number made of it.
    const hashes = formulas.map((formula) => library.core.hashAlgorithm(unitId + formula).toString());
    injector.get(library.sheets.IFunctionService).deleteFormulaAstCacheKey(...spellings, ...hashes);
    const sheetIds = new Set(cells.map(({ sheetId }) => sheetId));
    this.execute(library.sheets.SetTriggerFormulaCalculationStartMutation.id, {
      dirtyRanges: cells.map(({ sheetId, row, column }) => {
        return { unitId, sheetId, range: { startRow: row, endRow: row, startColumn: column, endColumn: column } };
      }),
      dirtyDefinedNameMap: { [unitId]: Object.fromEntries(spellings.map((spelling) => [spelling, "1"])) },
      clearDependencyTreeCache: { [unitId]: Object.fromEntries([...sheetIds].map((sheetId) => [sheetId, "1"])) },
    });
  }

  /** The cells whose formulas call one of the names, how they spell it, and the formulas. */
  private callers(names: readonly string[]) {
    const { injector, library, workbook } = this.grid;
    const called = new Set(names.map((name) => name.toLowerCase()));
    const model = injector.get(library.sheets.FormulaDataModel);
    const spellings = new Set<string>();
    const formulas = new Set<string>();
    const cells: Cell[] = [];
    for (const sheet of workbook.getSheets()) {
      const sheetId = sheet.getSheetId();
      const matrix = sheet.getSheet().getCellMatrix();
      matrix.forValue((row, column, cell) => {
        if (!cell?.f && !cell?.si) return;
        const formula = model.getFormulaStringByCell(row, column, sheetId, workbook.getId()) ?? "";
        const found = (formula.match(WORD) ?? []).filter((word) => called.has(word.toLowerCase()));
        if (found.length === 0) return;
        cells.push({ sheetId, row, column });
        formulas.add(formula);
        for (const spelling of found) spellings.add(spelling);
      });
    }
    return { cells, spellings: [...spellings], formulas: [...formulas] };
  }

  private execute(id: string, parameters: object): void {
    this.grid.injector.get(this.grid.library.core.ICommandService).syncExecuteCommand(id, parameters);
  }
}

/** The grid keeps cells without an "=" and anything else with one. */
function stored(formula: string): string {
  const text = formula.replace(/^=/, "");
  const isReference = /^(?:'(?:[^']|'')+'|[^'!()+\-*/^&,<>= ]+)!\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?$/i.test(text);
  return isReference ? text : `=${text}`;
}
