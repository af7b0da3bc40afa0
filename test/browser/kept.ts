import type { Page } from "playwright-core";
import { expect } from "vitest";

/** What the practice page has kept as the work by now, in a database of any version. */
export const keptWork = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<unknown>((resolve, reject) => {
        const request = indexedDB.open("practice-workbook");
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const got = request.result.transaction("work").objectStore("work").get("workbook");
          got.onsuccess = () => {
            request.result.close();
            resolve(got.result);
          };
        };
      }),
  );

/** Waits until the page has kept work with this text in it: it does so a moment after the last change. */
export async function untilKept(page: Page, text: string): Promise<void> {
  await expect.poll(async () => JSON.stringify(await keptWork(page)) ?? "").toContain(text);
}
