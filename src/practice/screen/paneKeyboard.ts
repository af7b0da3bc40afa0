import { element } from "./element";

/**
 * Leaves the keyboard with the pane while the person is in it, as the host does: the grid would take it whenever a
 * sheet comes to the front. A click on the grid, or Tab, moves it there.
 */
export function leaveKeyboardToPane(): void {
  const grid = element("practice-grid");
  const pane = element("practice-pane");
  const isIn = (place: HTMLElement, target: EventTarget | null) => target instanceof Node && place.contains(target);
  let isInPane = false;
  window.addEventListener(
    "pointerdown",
    ({ target }) => {
      isInPane = isIn(pane, target);
    },
    true,
  );
  window.addEventListener(
    "keydown",
    ({ target, key }) => {
      isInPane = isIn(pane, target) && key !== "Tab";
    },
    true,
  );
  window.addEventListener(
    "focusin",
    (event) => {
      const { target, relatedTarget } = event;
      if (!isInPane || !isIn(grid, target)) return;
      // The grid is not to learn of what it does not keep.
      event.stopPropagation();
      if (relatedTarget instanceof HTMLElement && isIn(pane, relatedTarget)) relatedTarget.focus();
      else if (target instanceof HTMLElement) target.blur();
    },
    true,
  );
}
