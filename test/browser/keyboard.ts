import type { Page } from "playwright-core";
import { expect } from "vitest";

/** More stops than any screen has. */
const MOST_STOPS = 250;

/** A person without a mouse. */
export interface Keyboard {
  /** What has the keyboard: its label, or its words; "" where nothing of the pane has it. */
  focused(): Promise<string>;
  /** Goes on with Tab until something of this name has the keyboard. */
  tabTo(name: RegExp): Promise<void>;
  /** Goes there and presses it. */
  press(name: RegExp, key?: "Enter" | "Space"): Promise<void>;
  /** Goes there and types over what is in it. */
  type(name: RegExp, text: string): Promise<void>;
  /** Opens a screen, and sees that its heading has the keyboard. */
  open(screen: string, heading: string): Promise<void>;
  /** Waits until something of this name has the keyboard. */
  arrives(name: RegExp): Promise<void>;
}

export function keyboardOf(page: Page): Keyboard {
  const focused = () =>
    page.evaluate(() => {
      const at = document.activeElement;
      if (!at?.closest("#pane")) return "";
      const label = (at as HTMLInputElement).labels?.[0]?.textContent;
      return (label ?? at.getAttribute("aria-label") ?? at.textContent ?? "").trim();
    });
  const tabTo = async (name: RegExp) => {
    for (let stops = 0; stops < MOST_STOPS; stops += 1) {
      const at = await focused();
      if (name.test(at)) return;
      // Past the pane's last stop, F6 comes back to its first, as in the host.
      await page.keyboard.press(at === "" ? "F6" : "Tab");
    }
    throw new Error(`Tab never reached ${name}.`);
  };
  const arrives = (name: RegExp) => expect.poll(focused).toMatch(name);
  const press = async (name: RegExp, key: "Enter" | "Space" = "Enter") => {
    await tabTo(name);
    await page.keyboard.press(key);
  };
  return {
    focused,
    tabTo,
    arrives,
    press,
    type: async (name, text) => {
      await tabTo(name);
      await page.keyboard.press("Control+A");
      await page.keyboard.type(text);
    },
    open: async (screen, heading) => {
      const button = page
        .getByRole("navigation", { name: "What to do" })
        .getByRole("button", { name: screen, exact: true });
      if (!(await button.isVisible())) await press(/^Tools/);
      await press(new RegExp(`^${screen}$`));
      await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
      await arrives(new RegExp(`^${heading}$`));
      await expect.poll(() => page.title()).toMatch(new RegExp(`^${screen} – `));
    },
  };
}

/** What is wrong with how the thing that has the keyboard shows it: nothing marks it, or something lies over it. */
export function focusFault(page: Page): Promise<string | undefined> {
  return page.evaluate(() => {
    const at = document.activeElement as HTMLElement | null;
    if (!at?.closest("#pane")) return undefined;
    const { outlineStyle, outlineWidth } = getComputedStyle(at);
    const name = at.outerHTML.slice(0, 90);
    if (outlineStyle === "none" || Number.parseFloat(outlineWidth) < 2) return `nothing marks ${name}`;
    const box = at.getBoundingClientRect();
    const over = document.elementFromPoint(box.left + box.width / 2, box.top + Math.min(box.height / 2, 12));
    const isSeen = over && (at.contains(over) || over.contains(at) || at.closest("label")?.contains(over));
    return isSeen ? undefined : `something lies over ${name}: ${over?.outerHTML.slice(0, 60)}`;
  });
}
