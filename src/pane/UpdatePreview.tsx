import { useEffect, useRef } from "preact/hooks";
import { Button } from "./Button";
import { onEscape } from "./onEscape";
import type { KeptChange } from "./updateWords";

/** Longer lists are cut: what matters is at their top. */
const MOST_LINES = 12;

interface UpdatePreviewProps {
  /** The first cell of the block. */
  readonly where: string;
  readonly preview: { readonly lines: readonly string[]; readonly kept: readonly KeptChange[] };
  readonly replaced: readonly KeptChange[];
  readonly onTick: (one: KeptChange, on: boolean) => void;
  readonly onWrite: () => unknown;
  readonly onCancel: () => void;
}

/** What an update will change on the sheet, and what was changed there by hand: kept, unless it is checked. */
export function UpdatePreviewPanel({ where, preview, replaced, onTick, onWrite, onCancel }: UpdatePreviewProps) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  const { lines, kept } = preview;
  const more = lines.length - MOST_LINES;
  const isNothing = lines.length === 0 && replaced.length === 0;
  return (
    <div role="dialog" aria-labelledby="update-preview" class="notice" onKeyDown={onEscape(onCancel, false)}>
      <p id="update-preview">
        {lines.length === 0
          ? `Nothing in ${where} changes.`
          : `${lines.length === 1 ? "1 change" : `${lines.length} changes`} in ${where}:`}
      </p>
      <ul>
        {lines.slice(0, MOST_LINES).map((line) => (
          <li key={line}>{line}</li>
        ))}
        {more > 0 && <li>and {more} more</li>}
      </ul>
      {kept.length > 0 && (
        <fieldset>
          <legend>Changed on the sheet and kept. Check what to replace:</legend>
          {kept.map((one) => (
            <label key={one.words} class="tick">
              <input
                type="checkbox"
                checked={replaced.includes(one)}
                onChange={(event) => onTick(one, event.currentTarget.checked)}
              />
              {one.words}
            </label>
          ))}
        </fieldset>
      )}
      <p class="row">
        <Button at={first} main off={isNothing} onPress={() => void onWrite()}>
          Update
        </Button>
        <Button onPress={onCancel}>Cancel</Button>
      </p>
    </div>
  );
}
