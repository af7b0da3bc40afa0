import { useEffect, useState } from "preact/hooks";
import { selectedCell, watchSelection } from "../workbook/read/selection";

/** The first selected cell, such as `Jobs!B4`; "" where the host tells none. */
export function useSelection(): string {
  return useSelected(selectedCell)[0] ?? "";
}

/**
 * What is selected, read again at each change of the selection.
 *
 * @param read reads what is wanted of it.
 * @returns it, undefined where the host tells nothing; and what sets it when something else has changed it.
 */
export function useSelected<T>(read: () => Promise<T>) {
  const [selected, setSelected] = useState<T>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is read is settled when the screen comes up
  useEffect(() => {
    const watching = watchSelection(read, setSelected);
    // A host without the event tells nothing.
    watching.catch(() => setSelected(undefined));
    return () => void watching.then((stop) => stop()).catch(() => undefined);
  }, []);
  return [selected, setSelected] as const;
}
