/**
 * Lets Escape close what has the keyboard, and nothing round it.
 *
 * @param off nothing can be closed now, as with a button that is off: what is being written would land all the same.
 */
export function onEscape(close: () => void, off: boolean): (event: KeyboardEvent) => void {
  return (event) => {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    if (!off) close();
  };
}
