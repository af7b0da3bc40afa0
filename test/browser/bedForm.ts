import type { Page } from "playwright-core";
import type { Way } from "../../src/quantities/bed/form";

/** Chooses how the bed of the pane was measured. */
export const measureBy = (page: Page, way: Way) => page.locator(`#pane input[name=way][value=${way}]`).check();

/** The price that the pane shows, as a number. */
export async function shownPrice(page: Page): Promise<number> {
  return Number((await page.locator(".answer strong").textContent())?.replace(/[$,]/g, ""));
}
