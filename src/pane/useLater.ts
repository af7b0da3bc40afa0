import { useEffect, useState } from "preact/hooks";
import { PAUSE_MS } from "./useSettled";

/**
 * What takes a while to work out, once what it is of has stopped changing.
 *
 * @param of what it is worked out of: the same object as long as nothing changes.
 * @returns undefined until then.
 */
export function useLater<Of extends object, Result>(of: Of, make: (of: Of) => Result): Result | undefined {
  const [made, setMade] = useState<{ readonly of: Of; readonly result: Result }>();
  useEffect(() => {
    const timer = setTimeout(() => setMade({ of, result: make(of) }), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [of, make]);
  return made?.of === of ? made.result : undefined;
}
