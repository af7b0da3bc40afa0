import { useEffect, useRef, useState } from "preact/hooks";
import type { SelectedBlock } from "../workbook/drawing";
import type { InTheWay, Place } from "../workbook/place";
import { watchSelection } from "../workbook/selection";
import type { Word } from "./useInsert";

interface InsertBarProps {
  readonly word: Word;
  readonly inTheWay: InTheWay | undefined;
  readonly canTakeBack: string | undefined;
  readonly newSheetName: string;
  /** The estimate block in which the selection lies. */
  readonly block: SelectedBlock | undefined;
  readonly onSelect: () => void;
  readonly onDraw: () => void;
  readonly onInsert: (place: Place) => void;
  readonly onTakeBack: () => void;
  readonly onCancel: () => void;
}

export function InsertBar(props: InsertBarProps) {
  const { word, inTheWay, canTakeBack, newSheetName, block, onSelect, onDraw, onInsert, onTakeBack, onCancel } = props;
  const selected = useSelection(onSelect);
  const working = word.kind === "working";
  return (
    <section class="insert-bar" aria-label="Insert">
      {inTheWay ? (
        <InTheWayNotice inTheWay={inTheWay} newSheetName={newSheetName} onInsert={onInsert} onCancel={onCancel} />
      ) : (
        <p class="row">
          {/* A button that is disabled loses the keyboard's place; one at work only does nothing. */}
          <button
            type="button"
            class="main"
            aria-disabled={working}
            onClick={() => working || onInsert({ kind: "selection" })}
          >
            Insert {selected ? `at ${selected}` : "at the selected cell"}
          </button>
          <button
            type="button"
            disabled={!canTakeBack}
            aria-disabled={working}
            title={canTakeBack}
            onClick={() => working || onTakeBack()}
          >
            Take back
          </button>
        </p>
      )}
      {block && !inTheWay && (
        <p class="row">
          <span class="grow">{drawingWords(block)}</span>
          <button type="button" disabled={working || block.drawing === "current"} onClick={onDraw}>
            {block.drawing === "none" ? "Draw" : "Redraw"}
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

/** What stands in the way of something that was to be written, and where it can go instead. */
export function InTheWayNotice({ inTheWay, newSheetName, onInsert, onCancel }: NoticeProps) {
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

function drawingWords({ name, drawing }: SelectedBlock): string {
  const bed = name || "This bed";
  if (drawing === "none") return `${bed} is not drawn yet.`;
  return drawing === "current" ? `The drawing of ${bed} is up to date.` : `The drawing of ${bed} is out of date.`;
}

function useSelection(onSelect: () => void): string {
  const [address, setAddress] = useState("");
  const tell = useRef(onSelect);
  tell.current = onSelect;
  useEffect(() => {
    const watching = watchSelection((selected) => {
      setAddress(selected);
      tell.current();
    });
    // Without the event the button just says "at the selected cell".
    watching.catch(() => setAddress(""));
    return () => void watching.then((stop) => stop()).catch(() => undefined);
  }, []);
  return address;
}
