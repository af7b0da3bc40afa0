import { useEffect, useRef } from "preact/hooks";
import type { Anchor } from "../spreadsheet/areas";
import type { InTheWay } from "../workbook/change/place";
import { Button } from "./Button";
import { inTheWayWords } from "./inTheWayWords";
import { onEscape } from "./onEscape";

/** Another place for what could not be written. */
export type OtherPlace =
  | { readonly kind: "cell"; readonly sheetId: string; readonly at: Anchor }
  | { readonly kind: "new sheet" };

interface NoticeProps {
  readonly inTheWay: InTheWay;
  /** What was to be written: "block". */
  readonly what: string;
  readonly onPlace: (place: OtherPlace) => void;
  readonly onCancel: () => void;
}

/** What is in the way of something that was to be written, and where it can go instead. */
export function InTheWayNotice({ inTheWay, what, onPlace, onCancel }: NoticeProps) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  const { sheetId, nearestFree } = inTheWay;
  const { lead, things, instead } = inTheWayWords(inTheWay, what);
  return (
    <div role="alertdialog" aria-labelledby="in-the-way" class="notice trouble" onKeyDown={onEscape(onCancel, false)}>
      <p id="in-the-way">{lead}</p>
      <ul>
        {things.map((thing) => (
          <li key={thing}>{thing}</li>
        ))}
      </ul>
      <p class="row">
        {nearestFree && (
          <Button at={first} main onPress={() => onPlace({ kind: "cell", sheetId, at: nearestFree.at })}>
            {instead}
          </Button>
        )}
        <Button at={nearestFree ? undefined : first} onPress={() => onPlace({ kind: "new sheet" })}>
          On a new sheet
        </Button>
        <Button onPress={onCancel}>Cancel</Button>
      </p>
    </div>
  );
}
