import type { Page } from "playwright-core";

const OFFICE_JS = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

/**
 * A host that is there and has not answered anything yet: the pane has to be of use before it does. It keeps which
 * functions it was told of.
 */
const SILENT_HOST = `
globalThis.associated = [];
globalThis.CustomFunctions = {
  associate: (id) => globalThis.associated.push(id),
  Error: class extends Error {},
  ErrorCode: {},
};
globalThis.Office = {
  HostType: { Excel: "Excel" },
  onReady: async () => ({ host: "Excel" }),
  context: {},
};
globalThis.Excel = { run: () => new Promise(() => {}) };
`;

/** Opens the pane's own page, as the host loads it, with a silent host in place of the host's library. */
export async function openPane(page: Page, origin: string): Promise<void> {
  await page.route(OFFICE_JS, (route) => route.fulfill({ body: SILENT_HOST, contentType: "text/javascript" }));
  await page.goto(`${origin}/pane.html`);
}

/** The marks that the page has set, in milliseconds since it was asked for. */
export function marksOf(page: Page): Promise<Record<string, number>> {
  return page.evaluate(() =>
    Object.fromEntries(performance.getEntriesByType("mark").map(({ name, startTime }) => [name, startTime])),
  );
}
