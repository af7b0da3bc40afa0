const KEY = "practice-workbook-opening";

/**
 * Marks that the saved workbook is being opened. A page that hangs on it, or that the browser closes over it, leaves
 * the mark; one that a person leaves while it still answers takes it along.
 *
 * @returns takes the mark off, once the workbook is open and calculated.
 */
export function markOpening(): () => void {
  const unmark = () => {
    withStorage((storage) => storage.removeItem(KEY));
    removeEventListener("pagehide", unmark);
  };
  withStorage((storage) => storage.setItem(KEY, "1"));
  addEventListener("pagehide", unmark);
  return unmark;
}

/** Whether a page was left before it had the saved workbook open. */
export function wasLeftOpening(): boolean {
  let isMarked = false;
  withStorage((storage) => (isMarked = storage.getItem(KEY) !== null));
  return isMarked;
}

/** A browser that keeps its storage from the page keeps no work that could hang, either. */
function withStorage(use: (storage: Storage) => void): void {
  try {
    use(localStorage);
  } catch {
    // Without storage there is no mark.
  }
}
