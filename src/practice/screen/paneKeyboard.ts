import { element } from "./element";

/**
 * Leaves the keyboard with the pane while the person is in it, as the host does: the grid would take it whenever a
 * sheet comes to the front. A click on the grid moves it there, and F6 goes from the one to the other.
 */
export function partKeyboard(): void {
  const grid = element("practice-grid");
  const pane = element("practice-pane");
  const isIn = (place: HTMLElement, target: EventTarget | null) => target instanceof Node && place.contains(target);
  let isInPane = false;
  let inGrid = grid.querySelector<HTMLElement>("[contenteditable]") ?? undefined;
  window.addEventListener(
    "pointerdown",
    ({ target }) => {
      isInPane = isIn(pane, target);
    },
    true,
  );
  window.addEventListener(
    "keydown",
    (event) => {
      const { target, key } = event;
      isInPane = isIn(pane, target) && key !== "Tab";
      if (key !== "F6") return;
      event.preventDefault();
      isInPane = !isIn(pane, target);
      if (isInPane) pane.querySelector<HTMLElement>("button")?.focus();
      else inGrid?.focus();
    },
    true,
  );
  window.addEventListener(
    "focusin",
    (event) => {
      const { target, relatedTarget } = event;
      if (!isIn(grid, target)) return;
      if (target instanceof HTMLElement) inGrid = target;
      if (!isInPane) return;
      // The grid is not to learn of what it does not keep.
      event.stopPropagation();
      if (relatedTarget instanceof HTMLElement && isIn(pane, relatedTarget)) relatedTarget.focus();
      else if (target instanceof HTMLElement) target.blur();
    },
    true,
  );
}
