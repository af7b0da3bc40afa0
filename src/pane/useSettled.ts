import { useEffect, useState } from "preact/hooks";

/** Long enough for the next key, short enough to belong to what was typed. */
export const PAUSE_MS = 700;

/** A text once it has stopped changing: what is read out is not read again with every key. */
export function useSettled(text: string): string {
  const [settled, setSettled] = useState("");
  useEffect(() => {
    const timer = setTimeout(() => setSettled(text), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [text]);
  return settled;
}
