import type { Page } from "playwright-core";
import { findings, OF_COLORS } from "../accessibility";
import { picture, TAKES_PICTURES } from "../openPractice";

export const paneWidth = { width: 350, height: 900 } as const;
const MOST_PX = 5000;

const looks = [
  ["light", { colorScheme: "light", forcedColors: "none" }],
  ["dark", { colorScheme: "dark", forcedColors: "none" }],
  ["forced colors", { colorScheme: "light", forcedColors: "active" }],
] as const;

/**
 * What the checker finds in a part of the page, in each look that a person may have set.
 *
 * @param forced whether in forced colors, too: those are the system's own, so once for each screen says as much as for
 * each of its states.
 */
export async function inEveryLook(page: Page, at: string, forced = true): Promise<string[]> {
  const found: string[] = [];
  for (const [name, look] of looks) {
    if (name === "forced colors" && !forced) continue;
    await page.emulateMedia(look);
    const rules = name === "light" ? undefined : OF_COLORS;
    found.push(...(await findings(page, at, rules)).map((one) => `${name}: ${one}`));
  }
  await page.emulateMedia(looks[0][1]);
  return found;
}

/** Pictures in each look, as long as what is shown. */
export async function pictures(page: Page, name: string): Promise<void> {
  if (!TAKES_PICTURES) return;
  const height = await page.evaluate(
    () => document.querySelector("#practice-pane")?.scrollHeight ?? document.documentElement.scrollHeight,
  );
  // What is above and below the pane.
  const bar = await page.evaluate(() => {
    const pane = document.querySelector("#practice-pane")?.getBoundingClientRect();
    return pane ? innerHeight - pane.height : 0;
  });
  await page.setViewportSize({
    ...paneWidth,
    height: Math.min(MOST_PX, Math.max(paneWidth.height, Math.ceil(height + bar))),
  });
  for (const [look, media] of looks) {
    await page.emulateMedia(media);
    await picture(page, `${name} ${look}`.replace(/\W+/g, "-").toLowerCase());
  }
  await page.emulateMedia(looks[0][1]);
  await page.setViewportSize(paneWidth);
}
