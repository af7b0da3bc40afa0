import type { Page } from "playwright-core";

/** A pane this wide is what the reflow criterion asks for: 1280 px at four times the size. */
export const NARROWEST_PX = 320;

/** What WCAG 2.2, 1.4.12, lets a person set without anything being lost. */
const SPACED = `* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
p { margin-bottom: 2em !important; }`;

/**
 * Everything of a part of the page that does not fit: what is wider than its room, what is cut, what lies over
 * something else that can be pressed, and what is too small to be hit (24 px, WCAG 2.2, 2.5.8).
 */
export function misfits(page: Page, at: string): Promise<string[]> {
  return page.evaluate(
    ([place, least]) => {
      const root = document.querySelector<HTMLElement>(place)!;
      const shown = (element: Element) => element.checkVisibility() && element.getClientRects().length > 0;
      const named = (element: Element) => element.outerHTML.replace(/\s+/g, " ").slice(0, 90);
      // What is only read out has no place on the screen.
      const all = [...root.querySelectorAll<HTMLElement>("*:not(.read-out)")].filter(shown);
      const edge = root.getBoundingClientRect();
      const found: string[] = [];
      for (const element of all) {
        const { display, overflowX } = getComputedStyle(element);
        // What scrolls by itself must be reached by keyboard and say what it is.
        const scrolls = overflowX === "auto" || overflowX === "scroll";
        const isReached = element.tabIndex >= 0 && element.hasAttribute("aria-label");
        const isOwn =
          !/^(INPUT|SELECT|TEXTAREA|OPTION|PROGRESS)$/.test(element.tagName) && !element.closest("svg svg *");
        // A bar reaches to the pane's edges from within its section; whether that is too far is looked at below.
        const isWide = element.querySelector(".insert-bar") === null;
        if (
          display !== "inline" &&
          isOwn &&
          isWide &&
          element.scrollWidth > element.clientWidth + 1 &&
          !(scrolls && isReached)
        ) {
          if (!element.closest("svg")) found.push(`wider than its room: ${named(element)}`);
        }
        const inScroller = element.parentElement?.closest(".sample, .wide");
        const box = element.getBoundingClientRect();
        if (!inScroller && !element.closest("svg") && box.width > 1 && box.right > edge.right + 1)
          found.push(`over the edge: ${named(element)}`);
        if (element instanceof HTMLButtonElement && element.scrollHeight > element.clientHeight + 1)
          found.push(`cut: ${named(element)}`);
      }
      const pressed = all.filter((element) =>
        element.matches(
          "button, input:not([aria-hidden=true]), select, textarea, summary, a[href]:not(p a, li a, dd a, td a)",
        ),
      );
      // Measured once: in a long form there are thousands of pairs.
      const placed = pressed.map((element) => ({
        element,
        box: (element.matches("label input")
          ? element.closest("label")!
          : (element.querySelector("a > img") ?? element)
        ).getBoundingClientRect(),
        bar: element.closest(".insert-bar"),
      }));
      for (const { element, box } of placed) {
        const { width, height } = box;
        if (Math.min(width, height) < least) found.push(`small, ${width} by ${height}: ${named(element)}`);
      }
      for (const [index, one] of placed.entries()) {
        const next = placed[index + 1];
        if (!next || one.bar || next.bar) continue;
        if (next.box.bottom < one.box.top - 2) {
          found.push(`out of order: ${named(one.element)} before ${named(next.element)}`);
        }
      }
      for (const [index, { element: one, box: a, bar }] of placed.entries()) {
        for (const { element: other, box: b, bar: otherBar } of placed.slice(index + 1)) {
          const over = Math.min(a.right, b.right) - Math.max(a.left, b.left);
          const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
          if (over <= 1 || down <= 1 || bar !== otherBar || one.contains(other) || other.contains(one)) continue;
          found.push(`overlapping: ${named(one)} and ${named(other)}`);
        }
      }
      return found;
    },
    [at, 24] as const,
  );
}

/** The misfits at the narrowest pane, with text twice as large, and with the spacing that a person may set. */
export async function misfitsEverywhere(page: Page, at: string): Promise<string[]> {
  const size = page.viewportSize()!;
  const found: string[] = [];
  const look = async (how: string) => found.push(...(await misfits(page, at)).map((one) => `${how}: ${one}`));
  await look("350 px");
  const style = await page.addStyleTag({ content: SPACED });
  await look("spaced");
  await style.evaluate((element) => (element as Element).remove());
  const zoom = (times: string) =>
    page.evaluate(
      ([place, value]) => document.querySelector<HTMLElement>(place!)!.style.setProperty("zoom", value!),
      [at, times],
    );
  await zoom("2");
  await look("twice the size");
  await zoom("");
  await page.setViewportSize({ ...size, width: NARROWEST_PX });
  await look(`${NARROWEST_PX} px`);
  await page.setViewportSize(size);
  return found;
}
