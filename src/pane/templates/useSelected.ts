import { useEffect, useState } from "preact/hooks";
import { watchSelection } from "../../workbook/selection";

/** The first selected cell, as `Jobs!B4`; "" where the host tells none. */
export function useSelected(): string {
  const [address, setAddress] = useState("");
  useEffect(() => {
    const watching = watchSelection(setAddress);
    watching.catch(() => setAddress(""));
    return () => void watching.then((stop) => stop()).catch(() => undefined);
  }, []);
  return address;
}
