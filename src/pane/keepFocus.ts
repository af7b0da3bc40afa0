const PRESSED = "button, input, select, textarea, summary, a[href]";
/** What belongs together closely enough that the keyboard goes on within it. */
const NEAR = "p.row, li, fieldset, details, .field, .kept, .finding, .insert-bar";
/** Parts that come up give the keyboard their own place first. */
const AFTER_MS = 80;

/**
 * Sees to it that the keyboard's place is never lost: where what had it goes away, it goes to what is near, to what was
 * said, or to the screen's heading.
 */
export function keepFocus(pane: HTMLElement): void {
  let around: readonly Element[] = [];
  const page = pane.ownerDocument;
  page.addEventListener("focusin", ({ target }) => {
    around = target instanceof Element && pane.contains(target) ? pathOf(target, pane) : [];
  });
  // A click beside everything gives the place away on purpose.
  page.addEventListener("pointerdown", ({ target }) => {
    if (target instanceof Element && !target.closest(PRESSED)) around = [];
  });
  new MutationObserver(() => {
    const [had] = around;
    if (!had || isShown(had)) return;
    const path = around;
    setTimeout(() => {
      if (path !== around || page.activeElement !== page.body || !page.hasFocus()) return;
      placeAfter(path, pane)?.focus();
    }, AFTER_MS);
  }).observe(pane, { childList: true, subtree: true, attributes: true, attributeFilter: ["hidden", "open"] });
}

function placeAfter(path: readonly Element[], pane: HTMLElement): HTMLElement | undefined {
  const left = path.find(isShown);
  const near = left?.closest(NEAR);
  const beside = near && shownIn(near, PRESSED).at(0);
  const said = shownIn(pane, ".said").find((one) => one.textContent?.trim());
  const [heading] = shownIn(pane, ".screen h1");
  if (heading) heading.tabIndex = -1;
  return beside ?? said ?? heading;
}

/** An element and all that it is in, from the inside out. */
function pathOf(element: Element, pane: Element): Element[] {
  const path: Element[] = [];
  for (let at: Element | null = element; at && at !== pane; at = at.parentElement) path.push(at);
  return path;
}

const isShown = (element: Element) => element.isConnected && element.checkVisibility();

const shownIn = (within: Element, selector: string) =>
  [...within.querySelectorAll<HTMLElement>(selector)].filter(isShown);
