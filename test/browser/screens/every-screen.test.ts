import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launch, openPractice, type Practice, picture } from "../openPractice";
import { screenNames } from "../openScreen";
import { estimateVisits } from "./estimateVisits";
import { jobRowsVisits } from "./jobRowsVisits";
import { inEveryLook, paneWidth, pictures } from "./looks";
import { checkVisits, copyVisits, explainVisits, helpVisits } from "./lookVisits";
import { misfitsEverywhere } from "./measures";
import { papersVisits } from "./papersVisits";
import { ratesVisits } from "./ratesVisits";
import { templatesVisits } from "./templatesVisits";

const visits = [
  ...estimateVisits,
  ...jobRowsVisits,
  ...ratesVisits,
  ...papersVisits,
  ...checkVisits,
  ...explainVisits,
  ...templatesVisits,
  ...copyVisits,
  ...helpVisits,
];

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  // The checker itself comes in past the page's content security policy.
  practice = await openPractice(browser, { bypassCSP: true });
  page = practice.page;
  // So narrow, the pane lies over the grid and takes the whole width.
  await page.setViewportSize(paneWidth);
  // The pane covers the grid, which would be painted again for each look and each height all the same.
  await page.addStyleTag({ content: "#practice-grid { position: fixed; width: 300px; height: 300px; }" });
});
afterAll(() => browser.close());

test("every screen of the pane is visited", async () => {
  const listed = await screenNames(page);
  expect(listed.length).toBeGreaterThan(0);
  expect(listed.filter((screen) => !visits.some((visit) => visit.screen === screen))).toEqual([]);
});

describe("every screen is without findings in light, dark and forced colors, and fits", () => {
  // One workbook goes through all of them, each beginning where the last one ended: nothing comes after one that isn't
  // reached, since each of the rest would wait for what can't come.
  let notReached = "";
  for (const [index, visit] of visits.entries()) {
    const isFirstOfScreen = visit.screen !== visits[index - 1]?.screen;
    const name = `${visit.screen}: ${visit.state}`;
    test(name, async ({ onTestFailed }) => {
      expect(notReached, "the screen that wasn't reached").toBe("");
      onTestFailed(() => picture(page, "screen-failed", true));
      notReached = name;
      await visit.show(page);
      const found = [
        ...(await inEveryLook(page, "#pane", isFirstOfScreen)),
        ...(await misfitsEverywhere(page, "#pane")),
      ];
      await pictures(page, `screen ${name.replace(":", "")}`);
      await visit.leave?.(page);
      notReached = "";
      expect(found).toEqual([]);
    });
  }

  test("and meets no error on the way", () => {
    expect(practice.errors).toEqual([]);
  });
});
