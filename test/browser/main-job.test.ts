import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { shownPrice } from "./bedForm";
import { chooseCell, placeOf, readCells, selectCells } from "./cells";
import { launch, openPractice, type Practice, picture, ready } from "./openPractice";

let browser: Browser;
let practice: Practice;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  practice = await openPractice(browser, { permissions: ["clipboard-read", "clipboard-write"] });
  page = practice.page;
});
afterAll(() => browser.close());

/** What cells show. */
const values = async (address: string) => (await readCells(page, ...placeOf(address))).values;
const value = async (address: string) => (await values(address))[0]?.[0];

const select = (address: string) => selectCells(page, ...placeOf(address));

/** Selects with the keyboard's attention on the grid, as after a click. */
async function selectByHand(address: string): Promise<void> {
  const grid = await page.locator("#practice-grid").boundingBox();
  if (!grid) throw new Error("The grid is not on the screen.");
  // Near the left edge, where no drawing lies over the cells.
  await page.mouse.click(grid.x + 90, grid.y + grid.height / 2);
  // Two clicks on one place in quick order open the cell for editing.
  await page.keyboard.press("Escape");
  await select(address);
}

/** Types into a cell with the keyboard, as a person does. */
async function typeInto(address: string, text: string): Promise<void> {
  await selectByHand(address);
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

/** Opens or folds the fields of rounded corners, however they are: a window that is just being resized may miss a click. */
async function foldCorners(open: boolean): Promise<void> {
  const heading = page.locator("summary", { hasText: /^Rounded corners, areas to deduct/ });
  const isOpen = () => heading.evaluate(({ parentElement }) => (parentElement as HTMLDetailsElement).open);
  const fold = async () => {
    if ((await isOpen()) !== open) await heading.click();
    return isOpen();
  };
  await expect.poll(fold).toBe(open);
}

/** Where in column A of the sheet a label stands. */
async function rowOf(label: string): Promise<number> {
  const column = (await values("Estimate!A1:A140")).map(([cell]) => cell);
  const row = column.indexOf(label);
  if (row < 0) throw new Error(`No row is labelled ${label}.`);
  return row + 1;
}

describe("the main job, in the practice workbook", () => {
  test("opens on an invented office with a dozen beds, all worked out", async () => {
    const rows = await values("Jobs!A5:N16");
    expect(rows).toHaveLength(12);
    // 18' 6" × 5' less two corners of 2 ft: 92.5 − 2 × 0.858407 sq ft (see the block's contract test).
    expect(rows[0]?.[9]).toBeCloseTo(90.783185, 6);
    for (const row of rows) for (const cell of row.slice(9)) expect(cell).toBeTypeOf("number");
    await picture(page, "practice-jobs");
  });

  test("prices and inserts a rectangle with three fields, no click, and no scroll", async () => {
    await page.setViewportSize({ width: 350, height: 700 });
    const pane = page.locator("#practice-pane");
    const bars = 700 - ((await pane.boundingBox())?.height ?? 0);
    await page.setViewportSize({ width: 350, height: Math.ceil(700 + bars) });
    // All that a bed takes is in sight, above the strip with the answer.
    const strip = await page.locator(".insert-bar").boundingBox();
    for (const label of ["Bed name", "Rectangle", "Length", "Width", "Front", "Stone", "Edging"]) {
      const box = await page.getByLabel(label, { exact: true }).first().boundingBox();
      expect(box && strip && box.y + box.height <= strip.y, label).toBe(true);
    }
    await page.getByText("Still needed: Length, Width").waitFor();
    await page.getByLabel("Bed name").focus();
    for (const text of ["Side bed", "20", "6"]) {
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
    }
    const preview = page.getByRole("dialog", { name: /^Side bed: \$[\d,.]+, inserted on a new sheet, “Side bed”$/ });
    // One long side and both ends: 20 + 6 + 6.
    await preview.getByText("32 lin ft of edging").waitFor();
    await page.keyboard.press("Escape");
    await preview.waitFor({ state: "detached" });
    expect(await page.getByLabel("Width", { exact: true }).evaluate((field) => field === document.activeElement)).toBe(
      true,
    );
    // A side that is picked on the drawing is edged and priced; its check box follows.
    const before = await shownPrice(page);
    const house = page.locator('.drawing .hit[data-side="1"]');
    const along = await house.boundingBox();
    await page.mouse.click(along!.x + along!.width / 2, along!.y + along!.height / 2);
    await expect.poll(() => page.getByLabel("House", { exact: true }).isChecked()).toBe(true);
    await expect.poll(() => shownPrice(page)).toBeGreaterThan(before);
    // The house side alone is laid out at the house.
    for (const label of ["Front", "Left end", "Right end"]) await page.getByLabel(label, { exact: true }).uncheck();
    await page.getByText(/^Edging: 20' in 3 pieces/).waitFor();
    expect(await page.locator("#pane-plan").textContent()).toContain("3 pieces");
    await page.getByLabel("House", { exact: true }).uncheck();
    for (const label of ["Front", "Left end", "Right end"]) await page.getByLabel(label, { exact: true }).check();
    await expect.poll(() => shownPrice(page)).toBe(before);
    // A corner clicked on the drawing asks for its radius.
    const left = page.locator('.drawing .hit[data-corner="1"]');
    const place = await left.boundingBox();
    await page.mouse.click(place!.x + place!.width / 2, place!.y + place!.height / 2);
    await expect.poll(() => page.getByLabel("Front left corner").isChecked()).toBe(true);
    await page.getByText("Type the radius of the rounded corners.").waitFor();
    await page.mouse.click(place!.x + place!.width / 2, place!.y + place!.height / 2);
    await expect.poll(() => page.getByLabel("Front left corner").isChecked()).toBe(false);
    await page.getByLabel("Width", { exact: true }).focus();
    await page.keyboard.press("Enter");
    await preview.waitFor();
    expect(await pane.evaluate((element) => element.scrollTop)).toBe(0);
    await picture(page, "pane-first-view");
    await page.keyboard.press("Enter");
    await page.getByText("Added to Side bed").waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("from Side bed").waitFor();
    await page.getByRole("button", { name: "New bed" }).click();

    // The same by mouse: three fields, a click into each and one on the button, and the pane stays where it is.
    const ofMouse = { fields: 0, clicks: 0 };
    const click = async (spot: Locator) => {
      const box = await spot.boundingBox();
      const top = (await page.locator(".insert-bar").boundingBox())?.y;
      const isButton = (await spot.evaluate((element) => element.tagName)) === "BUTTON";
      // In sight, and not under the strip at the foot.
      expect(box && top && (isButton || box.y + box.height <= top)).toBe(true);
      await page.mouse.click(box!.x + box!.width / 2, box!.y + box!.height / 2);
      ofMouse.clicks += 1;
    };
    for (const [label, text] of [
      ["Bed name", "Side bed"],
      ["Length", "20"],
      ["Width", "6"],
    ] as const) {
      await click(page.getByLabel(label, { exact: true }));
      await page.keyboard.type(text);
      ofMouse.fields += 1;
    }
    expect(await shownPrice(page)).toBe(before);
    await click(page.getByRole("button", { name: "Insert on a new sheet" }));
    await page.getByText("Added to Side bed").waitFor();
    expect(ofMouse).toEqual({ fields: 3, clicks: 4 });
    expect(await pane.evaluate((element) => element.scrollTop)).toBe(0);
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("from Side bed").waitFor();
    await page.getByRole("button", { name: "New bed" }).click();
    await page.setViewportSize({ width: 1280, height: 800 });
    // The corner had opened its fields.
    await foldCorners(false);
  });

  test("shows quantities and price in the pane before anything is written", async () => {
    await page.getByLabel("Bed name").fill("Front walk");
    await page.getByLabel("Length", { exact: true }).fill(`18' 6"`);
    await page.getByLabel("Width", { exact: true }).fill("5");
    await foldCorners(true);
    await page.getByLabel("Corner radius").fill("2");
    await page.getByLabel("Front left corner").check();
    await page.getByLabel("Front right corner").check();
    await page.getByText("Quantities and prices").click();
    expect(await page.getByText("= 18.5 ft").count()).toBe(1);
    expect(await page.getByRole("definition").filter({ hasText: "90.78 sq ft" }).count()).toBe(1);
    await picture(page, "pane-filled");
  });

  test("writes nothing over the job rows, and offers another place", async () => {
    const before = await values("Jobs!A1:N30");
    await select("Jobs!A5");
    await chooseCell(page);
    await page.getByRole("button", { name: /^Insert at/ }).click();
    const dialog = page.getByRole("alertdialog");
    await dialog.waitFor();
    expect(await dialog.textContent()).toMatch(/Nothing was written.*cells with contents: A5/);
    await picture(page, "in-the-way");
    await page.keyboard.press("Escape");
    await dialog.waitFor({ state: "detached" });
    expect(await values("Jobs!A1:N30")).toEqual(before);
  });

  test("inserts the estimate at the selected cell, as the pane showed it", async () => {
    await select("Estimate!A4");
    await page.getByRole("button", { name: "Insert at Estimate!A4" }).click();
    await page.getByText("Added to Estimate!A4").waitFor();
    expect(await shownPrice(page)).toBeCloseTo(Number(await value("Estimate!B5")), 2);
    expect(await value(`Estimate!B${await rowOf("Edging")}`)).toBeCloseTo(26.783185, 6);
    await picture(page, "block");
  });

  test("follows a markup that is typed over its line", async () => {
    const row = await rowOf("Stone");
    const before = (await values(`Estimate!E${row}:G${row}`))[0] as number[];
    expect(before[1]).toBeCloseTo(0.2, 12);
    await typeInto(`Estimate!F${row}`, "0.5");
    await expect.poll(() => value(`Estimate!G${row}`)).toBeCloseTo(before[0]! * 1.5, 9);
    expect(await value(`Estimate!I${row}`)).toBe("markup typed over. sample price");
    await select(`Estimate!A${row - 14}`);
    await picture(page, "markup-typed-over");
  });

  test("follows a measurement that is typed over in tape text", async () => {
    const row = await rowOf("Length");
    await typeInto(`Estimate!B${row}`, `20' 6"`);
    await expect
      .poll(async () => value(`Estimate!B${await rowOf("Area to cover")}`))
      .toBeCloseTo(20.5 * 5 - 2 * 0.858407, 5);
  });

  test("copies a job row down with its formulas", async () => {
    await selectByHand("Jobs!A5:N5");
    await page.keyboard.press("Control+C");
    await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toContain("river rock");
    await select("Jobs!A19");
    await page.keyboard.press("Control+V");
    await expect.poll(() => value("Jobs!J19")).toBeCloseTo(90.783185, 6);
    // Typed without a mark for inches, it stays what was typed, and reads as 4 ft 6 in.
    await typeInto("Jobs!C19", "4'6");
    await expect.poll(() => value("Jobs!J19")).toBeCloseTo(4.5 * 5 - 2 * 0.858407, 5);
    expect(await value("Jobs!C19")).toBe("4'6");
    await typeInto("Jobs!C19", "18-6");
    await expect.poll(() => value("Jobs!J19")).toBeCloseTo(18.5 * 5 - 2 * 0.858407, 5);
    expect(await value("Jobs!C19")).toBe("18-6");
    await typeInto("Jobs!C19", "10 ft");
    await expect.poll(() => value("Jobs!J19")).toBeCloseTo(50 - 2 * 0.858407, 5);
    await expect.poll(() => value("Jobs!J5")).toBeCloseTo(90.783185, 6);
  });

  test("keeps the work over a reload", async () => {
    const price = await value("Estimate!B5");
    // The work is saved a moment after the last change, and when the page goes.
    await page.reload();
    await ready(page);
    await expect.poll(() => value("Estimate!B5")).toBe(price);
    await expect.poll(() => value("Jobs!J19")).toBeCloseTo(50 - 2 * 0.858407, 5);
    expect(await page.getByLabel("Bed name").inputValue()).toBe("Front walk");
  });

  test("will not undo what someone has typed into", async () => {
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText(/were changed or moved since/).waitFor();
    expect(await value("Estimate!A4")).toBe("Stone bed estimate");
  });

  test("takes an untouched insert back", async () => {
    await select("Estimate!L4");
    await chooseCell(page);
    await page.getByRole("button", { name: "Insert at Estimate!L4" }).click();
    await page.getByText("Added to Estimate!L4").waitFor();
    await page.getByRole("button", { name: "Undo" }).click();
    await page.getByText("from Estimate L4").waitFor();
    expect((await values("Estimate!L1:T140")).flat().every((cell) => cell === "")).toBe(true);
  });

  test("starts afresh only when told to", async () => {
    await page.getByRole("button", { name: "Start over…" }).click();
    await page.getByRole("button", { name: "Keep my work" }).click();
    expect(await value("Jobs!J19")).toBeTypeOf("number");
    await page.getByRole("button", { name: "Start over…" }).click();
    await page.getByRole("dialog").getByRole("button", { name: "Start over", exact: true }).click();
    await expect.poll(() => value("Jobs!J19").catch(() => "loading")).toBe("");
  });

  test("edges a side with something else, and prices, draws, and inserts it", async () => {
    await page.getByRole("button", { name: "New bed" }).click();
    await page.getByLabel("Length", { exact: true }).fill("30");
    await page.getByLabel("Width", { exact: true }).fill("10");
    await page.getByText(/^Edging: 50' in 7 pieces/).waitFor();
    const steel = await shownPrice(page);
    await page.locator("summary", { hasText: /^Second edging/ }).click();
    await page.getByLabel("Another edging along some sides").selectOption({ label: "Pavers or brick, in sand" });
    await page.getByText("Second edging: pick the sides that it goes along.").first().waitFor();
    await picture(page, "second-edging-asked");
    const sides = page.getByRole("group", { name: "Second edging along" });
    await sides.getByLabel("Front").check();
    // The front has had steel until now: a side has one edging.
    await page.getByText(/^Edging: 20' in 4 pieces/).waitFor();
    // 360 in of 4 in pavers an eighth apart: 87.3.
    await page.getByText(/^Pavers: 30' in 88 pavers/).waitFor();
    const price = await shownPrice(page);
    expect(price).not.toBe(steel);
    await picture(page, "second-edging");
    await page.getByRole("button", { name: /^Insert/ }).click();
    await page.getByText(/^Added to /).waitFor();
    const [, sheet = "", row = ""] =
      /Added to (.+)!\D+(\d+)/.exec((await page.getByText(/^Added to /).textContent()) ?? "") ?? [];
    await expect.poll(() => value(`${sheet}!B${Number(row) + 1}`)).toBe(price);
    await picture(page, "second-edging-inserted");
  });

  test("asks no one outside, and meets no error", () => {
    expect(practice.outside).toEqual([]);
    expect(practice.errors).toEqual([]);
  });
});
