import { join } from "node:path";

/** High enough that the longest screen of the pane is in it whole. */
export const TALL = { height: 6000 };
/** The pane's small letters are drawn larger than they are there. */
export const SHARP = { ...TALL, scale: 1.25 };
/** Wide enough for all columns of the practice list beside the pane. */
export const WIDE = { height: 900, width: 1480 };
export const LETTERS_HIGH = 20;
/** How high the bar with the formula of the selected cell is, above the cells. */
export const NAME_BOX_HIGH = 29;

/** Takes pictures of a page into a folder. */
export class Camera {
  /** @param {string} folder */
  constructor(folder) {
    this.folder = folder;
  }

  /** Where the picture of a name is put. */
  file(name) {
    return join(this.folder, `${name}.png`);
  }

  /** Part of the pane, from the top of one element to the foot of another. */
  async between(page, name, from, to) {
    await to.waitFor();
    // What was said last may still push the rest about.
    await page.waitForTimeout(400);
    const [first, last, pane] = [
      await from.boundingBox(),
      await to.boundingBox(),
      await page.locator("#pane").boundingBox(),
    ];
    const y = first.y - 8;
    const clip = { x: pane.x, y, width: pane.width, height: last.y + last.height + 8 - y };
    await page.screenshot({ path: this.file(name), clip });
  }

  /** The drawing of the bed in plan. */
  async plan(page, name) {
    await page.locator(".drawing svg").nth(1).waitFor();
    // It follows what was typed last a moment later.
    await page.waitForTimeout(500);
    await page
      .locator(".drawing svg")
      .first()
      .screenshot({ path: this.file(name) });
  }

  /**
   * Cells of the sheet in front, from the letters of the columns on.
   *
   * @param {number} below how much further down the picture begins; less than 0 for what is above the letters.
   */
  async cells(page, name, width, height, below = 0) {
    // The grid draws a moment after the cells have changed.
    await page.waitForTimeout(800);
    // What is above the grid is higher where its words need two lines.
    const { y } = await page.locator("canvas[id^=univer-sheet-main]").boundingBox();
    const clip = { x: 0, y: Math.round(y) + below, width, height };
    await page.screenshot({ path: this.file(name), clip });
  }
}

export const heading = (page, name) => page.getByRole("heading", { name, exact: true }).last();
