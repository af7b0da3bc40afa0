import { Grid } from "../grid/grid";
import type { OpenGrid } from "../grid/library";
import { openGrid } from "../grid/openGrid";
import type { PracticeOffice } from "../grid/practiceOffice";
import { giveReasons } from "./errorNotes";
import {
  conditionalFormattingLocale,
  core,
  dataValidationLocale,
  drawing,
  drawingLocale,
  FUniver,
  sheets,
  sheetsLocale,
  UniverSheetsConditionalFormattingPreset,
  UniverSheetsDataValidationPreset,
} from "./gridPackages";
import { restFrames } from "./restingFrames";
import { closeStaleSuggestions } from "./suggestions";

export type KeptWorkbook = Partial<core.IWorkbookData>;

/** A grid on the page, and how to take a copy of its workbook. */
export interface BrowserGrid {
  readonly grid: Grid;
  /** What the grid is made of, for what reads and makes files of it. */
  readonly open: OpenGrid;
  readonly save: () => KeptWorkbook;
  /** Resolves once the sheet is on the screen and takes what is typed. */
  readonly drawn: Promise<void>;
}

/**
 * Puts the grid into the page.
 *
 * @param container The id of the element that it fills.
 * @param office What it opens on where nothing is kept.
 * @param kept The workbook as it was saved.
 */
export function createBrowserGrid(
  container: string,
  office: PracticeOffice,
  kept: KeptWorkbook | undefined,
): BrowserGrid {
  const wake = restFrames(window);
  const locale = core.LocaleType.EN_US;
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const univer = new core.Univer({
    darkMode: dark.matches,
    locale,
    locales: {
      [locale]: core.mergeLocales(sheetsLocale, drawingLocale, conditionalFormattingLocale, dataValidationLocale),
    },
    logLevel: core.LogLevel.ERROR,
  });
  const presets = [
    // Kept results are not taken for granted: lists are kept without what they spill, and a file may hold anything.
    sheets.UniverSheetsCorePreset({
      container,
      ribbonType: "simple",
      formula: { initialFormulaComputing: sheets.CalculationMode.FORCED },
    }),
    drawing.UniverSheetsDrawingPreset(),
    UniverSheetsConditionalFormattingPreset(),
    // The list's own search box would take the keys away from the cell that is being typed into.
    UniverSheetsDataValidationPreset({ showEditOnDropdown: false, showSearchOnDropdown: false }),
  ];
  for (const plugin of presets.flatMap(({ plugins }) => plugins)) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  const api = FUniver.newAPI(univer);
  dark.addEventListener("change", () => api.toggleDarkMode(dark.matches));
  const drawn = new Promise<void>((resolve) => {
    api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
      if (stage >= core.LifecycleStages.Rendered) resolve();
    });
  });
  const open = openGrid({ core, drawing, sheets }, univer, api, office, kept);
  const injector = univer.__getInjector();
  injector.get(core.ICommandService).onCommandExecuted(wake);
  const editor = injector.get(sheets.IEditorBridgeService);
  const grid = new Grid(open, () => editor.isVisible().visible);
  closeStaleSuggestions(injector);
  giveReasons(injector.get(sheets.CellAlertManagerService), grid);
  return { grid, open, save: () => open.workbook.save(), drawn };
}
