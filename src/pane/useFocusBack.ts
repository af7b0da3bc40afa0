import { useEffect, useRef } from "preact/hooks";

/**
 * A button that gets the keyboard back once the part that it opened is gone, with what was pressed in it. Whoever is
 * somewhere else by then stays there.
 */
export function useFocusBack(shows: boolean) {
  const button = useRef<HTMLButtonElement>(null);
  const showed = useRef(false);
  useEffect(() => {
    if (showed.current && !shows && document.activeElement === document.body) button.current?.focus();
    showed.current = shows;
  }, [shows]);
  return button;
}
