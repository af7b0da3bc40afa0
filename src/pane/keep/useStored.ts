import { useEffect, useRef, useState } from "preact/hooks";
import { readStored, type StoredThing, writeStored } from "./stored";

/** What a person types, kept in the browser over a closed pane, and why it is not, where it is not. */
export function useStored<T>(thing: StoredThing<T>, starting: T) {
  const [found] = useState(() => readStored(thing));
  const [value, setValue] = useState<T>(found.value ?? starting);
  const [trouble, setTrouble] = useState(found.trouble);
  /** As this pane kept it last. */
  const kept = useRef(value);
  const keep = (startOver: boolean) => {
    const trouble = writeStored(thing, kept.current, value, startOver);
    if (!trouble) kept.current = value;
    setTrouble(trouble);
  };
  const keepSoon = useRef(keep);
  keepSoon.current = keep;
  useEffect(() => {
    if (value !== kept.current) keepSoon.current(false);
  }, [value]);
  return {
    value,
    setValue,
    unkept: trouble && { trouble, startOver: () => keep(true) },
  };
}

/** Why what is typed is not kept, and how it could be. */
export type Unkept = ReturnType<typeof useStored>["unkept"];
