import { useEffect, useRef } from "preact/hooks";
import type { Status } from "./useStatus";

/**
 * What a screen says about its last action. The two places are there before anything is said, since only then is what
 * comes into them read out: a refusal at once, all else when there is a pause.
 */
export function StatusMessage({ status }: { readonly status: Status | undefined }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // It may be below all else, which may be long.
    if (status && status.kind !== "working") place.current?.scrollIntoView({ block: "nearest" });
  }, [status]);
  const isTrouble = status?.kind === "trouble";
  return (
    <div class="said" ref={place} tabIndex={-1}>
      <p role="status" class="notice">
        {isTrouble ? "" : status?.text}
      </p>
      <p role="alert" class="notice trouble">
        {isTrouble ? status.text : ""}
      </p>
    </div>
  );
}
