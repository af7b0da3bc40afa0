import type * as gridPackages from "./core/gridPackages";

type Preset = { readonly plugins: readonly unknown[] };
type Plugin = Parameters<InstanceType<typeof gridPackages.core.Univer>["registerPlugin"]>[0];

/**
 * The grid by itself on a bare page: nothing of ours in it but a mark when the first cell is usable, by the same rule
 * as on the practice page.
 *
 * @param packages the grid's packages.
 * @param more what else of the grid's packages comes with it.
 */
export function openBareGrid(
  { core, FUniver, sheets, sheetsLocale }: typeof gridPackages,
  more: readonly Preset[],
  words: Parameters<typeof gridPackages.core.mergeLocales>,
): void {
  const locale = core.LocaleType.EN_US;
  const univer = new core.Univer({
    locale,
    locales: { [locale]: core.mergeLocales(sheetsLocale, ...words) },
    logLevel: core.LogLevel.ERROR,
  });
  const core_ = sheets.UniverSheetsCorePreset({ container: "practice-grid", ribbonType: "simple" });
  for (const plugin of [core_, ...more].flatMap(({ plugins }) => plugins)) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0] as Plugin, plugin[1]);
    else univer.registerPlugin(plugin as Plugin);
  }
  const api = FUniver.newAPI(univer);
  api.addEvent(api.Event.LifeCycleChanged, ({ stage }) => {
    if (stage !== core.LifecycleStages.Rendered) return;
    requestAnimationFrame(() => setTimeout(() => performance.mark("Bedrow first cell usable")));
  });
  api.createWorkbook({ id: "bare", name: "Bare", sheetOrder: ["one"], sheets: { one: sheetOfRows(16) } });
}

/** As many rows as the invented office has, with formulas of the grid's own. */
function sheetOfRows(rows: number) {
  const cellData = Object.fromEntries(
    Array.from({ length: rows }, (_, row) => [
      row,
      Object.fromEntries(
        Array.from({ length: 14 }, (_, column) => [column, column < 9 ? { v: row } : { f: `=A${row + 1}*2` }]),
      ),
    ]),
  );
  return { id: "one", name: "One", cellData, rowCount: 200, columnCount: 26 };
}
