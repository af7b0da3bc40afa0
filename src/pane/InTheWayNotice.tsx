import { useEffect, useRef } from "preact/hooks";
import type { Anchor } from "../sheets/plan";
import type { InTheWay } from "../workbook/place";
import { Button } from "./Button";
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

/** Longer lists of addresses are cut. */
const MOST_CHARACTERS = 80;

/** What stands in the way of something that was to be written, and where it can go instead. */
export function InTheWayNotice({ inTheWay, what, onPlace, onCancel }: NoticeProps) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  const { sheetId, sheetName, address, obstacles, nearestFree } = inTheWay;
  return (
    <div role="alertdialog" aria-labelledby="in-the-way" class="notice trouble" onKeyDown={onEscape(onCancel)}>
      <p id="in-the-way">
        Nothing was written. The {what} needs {address} on {sheetName}, and there {obstacles.length > 1 ? "are" : "is"}:
      </p>
      <ul>
        {obstacles.map(({ what: obstacle, where }) => (
          <li key={obstacle + where}>
            {obstacle}: {where.length > MOST_CHARACTERS ? `${where.slice(0, MOST_CHARACTERS)}…` : where}
          </li>
        ))}
      </ul>
      <p class="row">
        {nearestFree && (
          <Button at={first} main onPress={() => onPlace({ kind: "cell", sheetId, at: nearestFree.at })}>
            Put it at {nearestFree.address.split(":")[0]}
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
