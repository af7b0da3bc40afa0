import { useState } from "preact/hooks";
import type { KeptChange } from "./updateWords";

/** A preview of an update while it's shown, with the changes made by hand that are checked to be replaced. */
export function useUpdatePreview<Preview extends object>() {
  const [preview, setPreview] = useState<Preview>();
  const [replaced, setReplaced] = useState<readonly KeptChange[]>([]);
  return {
    preview,
    replaced,
    show: (next: Preview) => {
      setReplaced([]);
      setPreview(next);
    },
    tick: (one: KeptChange, on: boolean) =>
      setReplaced((now) => (on ? [...now, one] : now.filter((other) => other !== one))),
    cancel: () => setPreview(undefined),
  };
}
