import type { OpenGrid } from "./library";
import type { NamesPort } from "./port";

/** The workbook's defined names. */
export class GridNames implements NamesPort {
  constructor(private readonly grid: OpenGrid) {}

  list(): { name: string; formula: string }[] {
    return this.grid.workbook.getDefinedNames().map((item) => {
      const text = item.getFormulaOrRefString();
      return { name: item.getName(), formula: text.startsWith("=") ? text : `=${text}` };
    });
  }

  add(name: string, formula: string): void {
    this.grid.workbook.insertDefinedName(name, formula.replace(/^=/, ""));
  }

  remove(name: string): void {
    this.grid.workbook.deleteDefinedName(name);
  }
}
