import type { Page } from "playwright-core";

/** Opens a screen of the pane by its name, through the tools where it's listed there, and waits for its heading. */
export async function openScreen(page: Page, name: string): Promise<void> {
  await pressScreen(page, name);
  await page.locator("#pane h1:visible").waitFor();
}

/** The same without waiting for what comes up. */
export async function pressScreen(page: Page, name: string): Promise<void> {
  const menu = page.getByRole("navigation", { name: "What to do" });
  const button = menu.getByRole("button", { name, exact: true });
  if (!(await button.isVisible())) await menu.getByRole("button", { name: "Tools" }).click();
  await button.click();
}

/** What the screens are called, in the order of the menu. */
export async function screenNames(page: Page): Promise<string[]> {
  const names = await page.locator("#pane nav button:not([aria-controls])").allTextContents();
  return names.map((name) => name.trim());
}
