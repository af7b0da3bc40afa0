import { element } from "./element";

/** In the browser's own list of marks; the benchmark reads it. */
export const FIRST_CELL_USABLE = "Bedrow first cell usable";

/** Says in the page's foot how long it took until the first cell could be typed into. */
export function sayFirstCell(): void {
  const { startTime } = performance.mark(FIRST_CELL_USABLE);
  // A page in the background is not drawn, so its time tells nothing.
  if (document.visibilityState !== "visible") return;
  element("practice-measured").textContent =
    `First cell usable after ${(startTime / 1000).toFixed(1)} s on this machine.`;
}
