import { Button } from "./Button";
import type { Update } from "./useUpdate";

/** Longer lists are cut: what matters is at their top. */
const MOST_LINES = 12;

/** Which bed of the sheet is open, and what was changed there by hand. */
export function OpenedNote({ update }: { readonly update: Update }) {
  const { opened, canBringBack, bringBack, close } = update;
  if (!opened) return null;
  const { where, name, kept } = opened;
  return (
    <div class="notice">
      <p>
        Open: <strong>{[name, where].filter(Boolean).join(", ")}</strong>
      </p>
      {kept.length > 0 && (
        <p class="below">
          {kept.length === 1 ? "1 change made" : `${kept.length} changes made`} on the sheet{" "}
          {kept.length === 1 ? "is" : "are"} kept: {kept.slice(0, MOST_LINES).join("; ")}
          {kept.length > MOST_LINES && ` and ${kept.length - MOST_LINES} more`}.
        </p>
      )}
      <p class="row">
        <Button onPress={close}>Close</Button>
        {canBringBack && <Button onPress={bringBack}>Undo: back to my last bed</Button>}
      </p>
    </div>
  );
}
