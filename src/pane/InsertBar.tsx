import { useEffect, useRef, useState } from "preact/hooks";
import type { InTheWay, Place } from "../workbook/place";
import { watchSelection } from "../workbook/selection";
import type { Word } from "./useInsert";

interface InsertBarProps {
  readonly word: Word;
  readonly inTheWay: InTheWay | undefined;
  readonly canTakeBack: string | undefined;
  readonly newSheetName: string;
  readonly onInsert: (place: Place) => void;
  readonly onTakeBack: () => void;
  readonly onCancel: () => void;
}

export function InsertBar({
  word,
  inTheWay,
  canTakeBack,
  newSheetName,
  onInsert,
  onTakeBack,
  onCancel,
}: InsertBarProps) {
  const selected = useSelection();
  const working = word.kind === "working";
  return (
    <section class="insert-bar" aria-label="Insert">
      {inTheWay ? (
        <InTheWayNotice inTheWay={inTheWay} newSheetName={newSheetName} onInsert={onInsert} onCancel={onCancel} />
      ) : (
        <p class="row">
          <button type="button" class="main" disabled={working} onClick={() => onInsert({ kind: "selection" })}>
            Insert {selected ? `at ${selected}` : "at the selected cell"}
          </button>
          <button type="button" disabled={working || !canTakeBack} title={canTakeBack} onClick={onTakeBack}>
            Take back
          </button>
        </p>
      )}
      <p role="status" class={word.kind === "trouble" ? "notice trouble" : "notice"} hidden={word.kind === "none"}>
        {word.kind === "none" ? "" : word.text}
      </p>
    </section>
  );
}

type NoticeProps = Pick<InsertBarProps, "newSheetName" | "onInsert" | "onCancel"> & { readonly inTheWay: InTheWay };

function InTheWayNotice({ inTheWay, newSheetName, onInsert, onCancel }: NoticeProps) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);
  const { sheetId, sheetName, address, obstacles, nearestFree } = inTheWay;
  return (
    <div
      role="alertdialog"
      aria-labelledby="in-the-way"
      class="notice trouble"
      onKeyDown={(event) => event.key === "Escape" && onCancel()}
    >
      <p id="in-the-way">
        Nothing was written. The block needs {address} on {sheetName}, and there {obstacles.length > 1 ? "are" : "is"}:
      </p>
      <ul>
        {obstacles.map(({ what, where }) => (
          <li key={what + where}>
            {what}: {where.length > 80 ? `${where.slice(0, 80)}…` : where}
          </li>
        ))}
      </ul>
      <p class="row">
        {nearestFree && (
          <button
            type="button"
            ref={first}
            class="main"
            onClick={() => onInsert({ kind: "cell", sheetId, at: nearestFree.at })}
          >
            Put it at {nearestFree.address.split(":")[0]}
          </button>
        )}
        <button
          type="button"
          ref={nearestFree ? undefined : first}
          onClick={() => onInsert({ kind: "new sheet", name: newSheetName })}
        >
          On a new sheet
        </button>
        <button type="button" onClick={onCancel}>
          Cancel
        </button>
      </p>
    </div>
  );
}

function useSelection(): string {
  const [address, setAddress] = useState("");
  useEffect(() => {
    const watching = watchSelection(setAddress);
    // Without the event the button just says "at the selected cell".
    watching.catch(() => setAddress(""));
    return () => void watching.then((stop) => stop()).catch(() => undefined);
  }, []);
  return address;
}
