import { readFile, writeFile } from "node:fs/promises";
import { basename } from "node:path";
import ExcelJS from "exceljs";
import { cellAddress } from "../../src/spreadsheet/areas";
import { FileRefusal } from "../../src/xlsx/limits";
import { openPackage } from "../../src/xlsx/read/package";
import { openFile, savedFile } from "../files";
import { createProductHost } from "../productHost";

/** What became of a workbook's parts when it was saved. */
export interface Comparison {
  readonly name: string;
  readonly status: "opened" | "refused" | "failed";
  readonly words?: string;
  /** The parts that are other in a copy of a workbook that no one touched. */
  readonly untouched?: readonly string[];
  /** The cell that was changed for the second copy, and the parts that are other in it. */
  readonly cell?: string;
  readonly changed?: readonly string[];
  /** What a second program finds other in that copy than in the file, but for the cell, and results of formulas. */
  readonly second?: readonly string[];
  readonly lost?: readonly string[];
  readonly milliseconds?: { readonly open: number; readonly save: number };
}

/** Opens a workbook and saves it as it is, and once more with one cell changed. @param copies where the copies go. */
export async function compareBook(path: string, copies?: string): Promise<Comparison> {
  const name = basename(path);
  const reader = await createProductHost();
  let host: typeof reader | undefined;
  try {
    const bytes = new Uint8Array(await readFile(path));
    const start = performance.now();
    ({ host } = await openFile(reader, bytes));
    const opened = performance.now();
    const untouched = await savedFile(host);
    const saved = performance.now();
    if (copies) await writeFile(`${copies}/untouched-${name}`, untouched.bytes);
    const cell = await changeOne(host);
    const changed = await savedFile(host);
    if (copies) await writeFile(`${copies}/changed-${name}`, changed.bytes);
    return {
      name,
      status: "opened",
      untouched: otherParts(bytes, untouched.bytes),
      cell,
      changed: otherParts(bytes, changed.bytes),
      second: await otherFacts(bytes, changed.bytes, cell),
      lost: [...new Set([...untouched.lost, ...changed.lost])],
      milliseconds: { open: Math.round(opened - start), save: Math.round(saved - opened) },
    };
  } catch (error) {
    if (error instanceof FileRefusal) return { name, status: "refused", words: error.message };
    return { name, status: "failed", words: (error as Error).stack ?? String(error) };
  } finally {
    host?.dispose();
    reader.dispose();
  }
}

/** Types another number over the first one of the workbook, or one into A1. */
async function changeOne(host: Awaited<ReturnType<typeof createProductHost>>): Promise<string> {
  for (const { id, name } of host.grid.sheets.list()) {
    const used = host.grid.cells.used(id, true);
    const rows = used ? host.grid.cells.read(used) : [];
    for (const [down, cells] of rows.entries()) {
      const across = cells.findIndex(({ kind, formula }) => kind === "number" && formula === undefined);
      if (across < 0 || !used) continue;
      const place = { sheetId: id, row: used.row + down, column: used.column + across, rowCount: 1, columnCount: 1 };
      host.grid.cells.write(place, [[Number(cells[across]?.value) + 1]]);
      await host.grid.settled();
      return `${name}!${cellAddress(place)}`;
    }
  }
  const [{ id = "", name = "" } = {}] = host.grid.sheets.list();
  host.grid.cells.write({ sheetId: id, row: 0, column: 0, rowCount: 1, columnCount: 1 }, [[1]]);
  await host.grid.settled();
  return `${name}!A1`;
}

/** The parts that one file has and another has not, or not with the same bytes. */
function otherParts(one: Uint8Array, other: Uint8Array): string[] {
  const [before, after] = [openPackage(one), openPackage(other)];
  const isSame = (name: string) => {
    const [was, is] = [before.part(name), after.part(name)];
    return was !== undefined && is !== undefined && Buffer.compare(was, is) === 0;
  };
  return [...new Set([...before.names, ...after.names])].filter((name) => !isSame(name)).sort();
}

async function otherFacts(one: Uint8Array, other: Uint8Array, cell: string): Promise<string[]> {
  const before = await factsOf(one).catch(() => undefined);
  // A file that the second program can't read is no measure.
  if (!before) return [];
  const after = await factsOf(other);
  const names = [...new Set([...before.keys(), ...after.keys()])];
  return names.filter((name) => before.get(name) !== after.get(name) && !name.startsWith(cell));
}

/** What the second program finds in a file, each fact under its name: cells, formats, formulas, widths, rules, names. */
async function factsOf(bytes: Uint8Array): Promise<Map<string, string>> {
  const book = new ExcelJS.Workbook();
  await book.xlsx.load(new Uint8Array(bytes).buffer);
  const facts = new Map<string, string>();
  const add = (name: string, fact: unknown) => facts.set(name, JSON.stringify(fact) ?? "");
  add("names", book.definedNames.model);
  for (const sheet of book.worksheets) {
    const { name, state, model, views, pageSetup } = sheet;
    const { merges, conditionalFormattings } = model as ExcelJS.WorksheetModel & { conditionalFormattings?: unknown };
    add(`${name}: sheet`, {
      state,
      merges,
      conditionalFormattings,
      views,
      pageSetup,
      images: sheet.getImages().length,
    });
    sheet.eachRow((row) => {
      row.eachCell((cell) => {
        const held = cell.formula === undefined ? { value: cell.value } : { formula: cell.formula };
        add(`${name}!${cell.address}`, { ...held, style: cell.style });
      });
    });
  }
  return facts;
}
