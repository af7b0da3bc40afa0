import { useCallback, useEffect, useState } from "preact/hooks";

/**
 * Tells which screen is shown, in the page's title; and gives what is to be done once another screen has come up: its
 * heading gets the keyboard, so that it is read out and the next step is into the screen.
 *
 * @param label what the screen is called.
 */
export function useArrival(label: string): () => void {
  const [place] = useState(document.title);
  useEffect(() => {
    document.title = `${label} – ${place}`;
  }, [label, place]);
  return useCallback(() => {
    const heading = [...document.querySelectorAll<HTMLElement>(".bedrow .screen h1")].find((one) =>
      one.checkVisibility(),
    );
    if (!heading) return;
    heading.tabIndex = -1;
    heading.focus();
  }, []);
}
