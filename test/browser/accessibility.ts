import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Rules whose answer depends on the colors; all others have the same answer in each look. */
export const OF_COLORS = ["color-contrast", "link-in-text-block"] as const;

/**
 * What an accessibility checker finds in a part of the page. The page must have been opened past its content security
 * policy, since the checker itself comes in as a script. What it found nothing in isn't looked at again in the same
 * look and the same place of the page: a screen's states differ in a few of its parts.
 *
 * @param rules those to be looked at; all where left out.
 */
export async function findings(page: Page, at = "#pane", rules?: readonly string[]): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(AXE);
  const { violations } = await page.evaluate(
    async ([place, only]) => {
      const kept = globalThis as unknown as {
        axe: { run(where: object, how: object): Promise<AxeResults> };
        fine?: Set<string>;
      };
      kept.fine ??= new Set();
      const { axe, fine } = kept;
      const asked = ["(prefers-color-scheme: dark)", "(forced-colors: active)"].map(
        (query) => matchMedia(query).matches,
      );
      const exclude: Element[] = [];
      const looked: string[] = [];
      const walk = (element: Element, where: string) => {
        // What is hidden wasn't looked at, and is to be once it shows.
        if (!element.checkVisibility()) return;
        const key = `${where} ${element.outerHTML}`;
        if (fine.has(key)) {
          exclude.push(element);
          return;
        }
        looked.push(key);
        for (const child of element.children) walk(child, `${where}/${element.className}`);
      };
      for (const child of document.querySelector(place)?.children ?? []) walk(child, `${only} ${asked} ${place}`);
      const found = await axe.run(
        { include: [place], exclude },
        // What passes is not told, which is most of the work; style sheets are fetched for one rule, of a phone that is turned.
        { resultTypes: ["violations"], preload: false, ...(only && { runOnly: { type: "rule", values: only } }) },
      );
      if (found.violations.length === 0) for (const key of looked) fine.add(key);
      return { violations: found.violations };
    },
    [at, rules] as const,
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 90)).join(" | ")}`);
}
