import { useEffect, useRef, useState } from "preact/hooks";
import { watchSelection } from "../workbook/selection";

/**
 * The first selected cell, such as `Jobs!B4`; "" where the host tells none.
 *
 * @param onSelect told of each selection.
 */
export function useSelection(onSelect?: () => void): string {
  const [address, setAddress] = useState("");
  const tell = useRef(onSelect);
  tell.current = onSelect;
  useEffect(() => {
    const watching = watchSelection((selected) => {
      setAddress(selected);
      tell.current?.();
    });
    // A host without the event tells none.
    watching.catch(() => setAddress(""));
    return () => void watching.then((stop) => stop()).catch(() => undefined);
  }, []);
  return address;
}
