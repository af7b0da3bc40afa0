import type { Page } from "playwright-core";
import { openScreen } from "../openScreen";

/** A state in which a screen shows something else than before. */
export interface Visit {
  /** The screen, as its button calls it. */
  readonly screen: string;
  readonly state: string;
  /** Brings the page there from the visit before. */
  readonly show: (page: Page) => Promise<void>;
  /** What of the page is looked at; the pane where left out. */
  readonly at?: string;
  /** What lies in front and is to go before the next visit. */
  readonly leave?: (page: Page) => Promise<void>;
}

/** Visits of one screen, which the first of them opens. */
export function visitsOf(
  screen: string,
  states: readonly (readonly [state: string, show: Visit["show"], more?: Pick<Visit, "leave">])[],
): Visit[] {
  return states.map(([state, show, more], index) => ({
    screen,
    state,
    ...more,
    show: async (page) => {
      if (index === 0) await openScreen(page, screen);
      await show(page);
    },
  }));
}

export const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).click();

/** Opens everything of the pane that is folded. */
export function openGroups(page: Page): Promise<void> {
  return page.evaluate(() => {
    for (const group of document.querySelectorAll("#pane details")) group.setAttribute("open", "");
  });
}

export function writeCells(page: Page, sheet: string, cells: Readonly<Record<string, string | number>>): Promise<void> {
  return page.evaluate(
    ([name, given]) =>
      Excel.run(async (context) => {
        const worksheet = context.workbook.worksheets.getItem(name);
        for (const [address, content] of Object.entries(given)) worksheet.getRange(address).formulas = [[content]];
        await context.sync();
      }),
    [sheet, cells] as const,
  );
}

/** Has the workbook keep everyone waiting until it is let go, so that what is said meanwhile can be looked at. */
export async function holdWorkbook(page: Page): Promise<() => Promise<void>> {
  await page.evaluate(() => {
    const host = globalThis as unknown as { letGo?: () => void };
    const run = Excel.run;
    const held = new Promise<void>((resolve) => {
      host.letGo = () => {
        Excel.run = run;
        resolve();
      };
    });
    Excel.run = (async (...given: unknown[]) => {
      await held;
      return (run as unknown as (...args: unknown[]) => Promise<unknown>)(...given);
    }) as typeof Excel.run;
  });
  return () => page.evaluate(() => (globalThis as unknown as { letGo?: () => void }).letGo?.());
}
