/** Lets Escape close what has the keyboard, and nothing round it. */
export function onEscape(close: () => void): (event: KeyboardEvent) => void {
  return (event) => {
    if (event.key !== "Escape") return;
    event.stopPropagation();
    close();
  };
}
