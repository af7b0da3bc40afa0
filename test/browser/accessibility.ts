import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** Rules whose answer depends on the colors; all others have the same answer in each look. */
export const OF_COLORS = ["color-contrast", "link-in-text-block"] as const;

/**
 * What an accessibility checker finds in a part of the page. The page must have been opened past its content security
 * policy, since the checker itself comes in as a script.
 *
 * @param rules those to be looked at; all where left out.
 */
export async function findings(page: Page, at = "#pane", rules?: readonly string[]): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in globalThis))) await page.evaluate(AXE);
  const { violations } = await page.evaluate(
    ([place, only]) =>
      (globalThis as unknown as { axe: { run(at: string, how: object): Promise<AxeResults> } }).axe.run(
        place,
        // What passes is not told, which is most of the work.
        { resultTypes: ["violations"], ...(only && { runOnly: { type: "rule", values: only } }) },
      ),
    [at, rules] as const,
  );
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 90)).join(" | ")}`);
}
