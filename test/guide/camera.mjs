import { join } from "node:path";

/** High enough that the longest screen of the pane stands in it whole. */
export const TALL = { height: 6000 };
/** The pane's small letters are drawn larger than they stand there. */
export const SHARP = { ...TALL, scale: 1.25 };
/** Wide enough for all columns of the practice list beside the pane. */
export const WIDE = { height: 900, width: 1480 };
/** Where the cells of the sheet begin: below the toolbars of the practice grid. */
export const CELLS_TOP = 108;
export const LETTERS_HIGH = 20;
/** Where the bar with the formula of the selected cell begins. */
export const NAME_BOX_TOP = 79;

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

  /** Cells of the sheet in front, below the letters of the columns. */
  async cells(page, name, width, height, y = CELLS_TOP) {
    // The grid draws a moment after the cells have changed.
    await page.waitForTimeout(800);
    await page.screenshot({ path: this.file(name), clip: { x: 0, y, width, height } });
  }
}

export const heading = (page, name) => page.getByRole("heading", { name, exact: true }).last();
