import { createRequire } from "node:module";
import type * as Core from "@univerjs/core";
import type * as CoreFacade from "@univerjs/core/lib/facade";
import type * as Sheets from "@univerjs/preset-sheets-node-core";
import type * as ConditionalFormats from "@univerjs/sheets-conditional-formatting";
import type * as NumberFormats from "@univerjs/sheets-numfmt";
import { Associations } from "../src/practice/functions/associations";
import { createCustomFunctions } from "../src/practice/functions/customFunctions";
import type { AssociatedFunction, FunctionsFile } from "../src/practice/functions/metadata";
import { readAddress } from "../src/practice/grid/a1";
import { Grid } from "../src/practice/grid/grid";
import type { OpenGrid } from "../src/practice/grid/library";
import { openGrid } from "../src/practice/grid/openGrid";
import type { Area, CellContent, CellInput } from "../src/practice/grid/port";
import { emptyOffice, type PracticeOffice } from "../src/practice/grid/practiceOffice";
import { createExcel } from "../src/practice/host/excel";
import { createOffice } from "../src/practice/host/office";
import { officeExtension } from "../src/practice/host/officeExtension";
import { type HandedFile, HostSession } from "../src/practice/host/session";
import { chosenLibrary, installLibrary } from "./client/library";
import type { RequestCounts } from "./client/server";

// The grid's packages run in Node only as CommonJS, and all of them must come from that one build.
const require = createRequire(import.meta.url);
const core = require("@univerjs/core") as typeof Core;
const { FUniver } = require("@univerjs/core/lib/facade") as typeof CoreFacade;
const sheets = require("@univerjs/preset-sheets-node-core") as typeof Sheets;
const { UniverSheetsConditionalFormattingPlugin } =
  require("@univerjs/sheets-conditional-formatting") as typeof ConditionalFormats;
require("@univerjs/sheets-conditional-formatting/facade");
require("@univerjs/sheets-drawing/facade");
const { UniverSheetsNumfmtPlugin } = require("@univerjs/sheets-numfmt") as typeof NumberFormats;

export interface HostOptions {
  /** What the workbook holds at first; one empty sheet, Sheet1, where left out. */
  readonly office?: PracticeOffice;
  /** Worksheet functions by id, with the metadata that describes them. */
  readonly functions?: {
    readonly calls: Readonly<Record<string, AssociatedFunction>>;
    readonly metadata: FunctionsFile;
  };
  /** What is before the dot in a function's name. "BED" where left out. */
  readonly namespace?: string;
  /** A workbook that was saved, in place of the office. */
  readonly kept?: Partial<KeptWorkbook>;
  /** Whether the workbook that was saved has the results of its formulas, so that they needn't be worked out again. */
  readonly isCalculated?: boolean;
}

type KeptWorkbook = Core.IWorkbookData;

/** A host without a screen, on the same engine that the practice workbook runs on. */
export interface HeadlessHost {
  /** The host's globals, typed as the host types them. They are installed as globals, too. */
  readonly Excel: typeof Excel;
  readonly Office: typeof Office;
  readonly CustomFunctions: typeof CustomFunctions;
  readonly grid: Grid;
  /** What the grid is made of. */
  readonly open: OpenGrid;
  /** How many requests reached the host so far; those by which the client library only lets go of ranges are none. */
  readonly syncCount: number;
  /** The requests on the wire, where the tests run on the client library. */
  readonly wire: RequestCounts | undefined;
  /** The files that the host gave to the person, in their order. */
  readonly handed: readonly HandedFile[];
  /** The workbook as it is now, as the practice page keeps it over a reload. */
  save(): KeptWorkbook;
  /** Makes the n-th request from now fail, after this many of its changes took effect. */
  failAtSync: HostSession["failAtSync"];
  /** What all requests share, for what only a test has happen: protections, what happens meanwhile, what is selected. */
  readonly session: HostSession;
  /** Whether someone is typing into a cell; a test sets it. */
  isEditing: boolean;
  /** Types values or formulas into cells, by address (`B2`, `Jobs!B2`), and waits for the results. */
  type(cells: Readonly<Record<string, CellInput>>): Promise<void>;
  /** What a cell shows, by address: its value, "" where blank. */
  value(address: string): CellContent["value"];
  /** The rows of a range, such as `A1:C4`. */
  values(address: string): CellContent["value"][][];
  formula(address: string): string | undefined;
  /** What a function said about the error in a cell. */
  errorMessage(address: string): string | undefined;
  /** Takes the globals off again and ends the engine. */
  dispose(): void;
}

/** Boots a host in Node; takes about a tenth of a second after the first. */
export async function createHost(options: HostOptions = {}): Promise<HeadlessHost> {
  const locale = core.LocaleType.EN_US;
  const univer = new core.Univer({ locale, locales: { [locale]: {} }, logLevel: core.LogLevel.ERROR });
  for (const plugin of sheets.UniverSheetsNodeCorePreset({}).plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  univer.registerPlugin(UniverSheetsNumfmtPlugin);
  univer.registerPlugin(UniverSheetsConditionalFormattingPlugin);
  const open = openGrid(
    { core, drawing: sheets, sheets },
    univer,
    FUniver.newAPI(univer),
    options.office ?? emptyOffice,
    options.kept,
  );
  let isEditing = false;
  const grid = new Grid(open, () => isEditing);
  const handed: HandedFile[] = [];
  const namespace = options.namespace ?? "BED";
  const session = new HostSession(grid, namespace, (file) => handed.push(file));

  const associations = new Associations();
  const { calls = {}, metadata = { functions: [] } } = options.functions ?? {};
  for (const [id, call] of Object.entries(calls)) associations.add(id, call);
  await grid.register(
    namespace,
    metadata.functions.flatMap((one) => {
      const call = associations.get(one.id);
      return call ? [{ metadata: one, call }] : [];
    }),
    options.isCalculated,
  );

  // The stand-in carries only what the product uses, so its globals pass for the host's whole ones here.
  const globals = {
    Excel: createExcel(Promise.resolve(session)),
    Office: createOffice(Promise.resolve()),
    OfficeExtension: officeExtension,
    CustomFunctions: createCustomFunctions(associations),
  } as unknown as Pick<HeadlessHost, "Excel" | "Office" | "CustomFunctions">;
  const file = chosenLibrary();
  const library = file && (await installLibrary(file, session));
  Object.assign(globals, library?.globals);
  const before = Object.keys(globals).map((name) => [name, Reflect.get(globalThis, name)] as const);
  Object.assign(globalThis, globals);

  const areaAt = (address: string): Area => {
    const read = readAddress(address);
    const all = grid.sheets.list();
    const sheet = read?.sheetName === undefined ? all[0] : all.find(({ name }) => name === read.sheetName);
    if (!read || !sheet) throw new RangeError(`There is no ${address} in this workbook.`);
    return { sheetId: sheet.id, ...read.rectangle };
  };
  const contentAt = (address: string) => grid.cells.read(areaAt(address))[0]?.[0];

  return {
    ...globals,
    grid,
    open,
    handed,
    save: () => open.workbook.save(),
    get syncCount() {
      return session.syncCount;
    },
    wire: library?.counts,
    session,
    get isEditing() {
      return isEditing;
    },
    set isEditing(given) {
      isEditing = given;
    },
    failAtSync: (...planned) => session.failAtSync(...planned),
    async type(cells) {
      for (const [address, input] of Object.entries(cells)) grid.cells.write(areaAt(address), [[input]]);
      await grid.settled();
    },
    value: (address) => contentAt(address)?.value ?? "",
    values: (address) => grid.cells.read(areaAt(address)).map((row) => row.map((cell) => cell.value)),
    formula: (address) => contentAt(address)?.formula,
    errorMessage(address) {
      const { sheetId, row, column } = areaAt(address);
      return grid.cells.errorMessage(sheetId, row, column);
    },
    dispose() {
      for (const [name, value] of before) Reflect.set(globalThis, name, value);
      // A calculation that is cut off would still report its progress a second later, in words that are gone by then.
      const calculation = univer.__getInjector().get(sheets.TriggerCalculationController);
      Reflect.set(calculation, "_startProgress", () => undefined);
      univer.dispose();
    },
  };
}
