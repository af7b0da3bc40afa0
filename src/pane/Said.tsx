import { useEffect, useRef } from "preact/hooks";
import type { Word } from "./useWord";

/**
 * What a screen says about its last deed. The two places are there before anything is said, since only then is what
 * comes into them read out: a refusal at once, all else when there is a pause.
 */
export function Said({ word }: { readonly word: Word | undefined }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // It may stand below all else, which may be long.
    if (word && word.kind !== "working") place.current?.scrollIntoView({ block: "nearest" });
  }, [word]);
  const isTrouble = word?.kind === "trouble";
  return (
    <div class="said" ref={place} tabIndex={-1}>
      <p role="status" class="notice">
        {isTrouble ? "" : word?.text}
      </p>
      <p role="alert" class="notice trouble">
        {isTrouble ? word.text : ""}
      </p>
    </div>
  );
}
