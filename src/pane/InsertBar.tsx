import type { InTheWay, Place } from "../workbook/change/place";
import type { SelectedBlock } from "../workbook/read/selectedBlock";
import { Button } from "./Button";
import { InTheWayNotice } from "./InTheWayNotice";
import { StatusMessage } from "./StatusMessage";
import type { Status } from "./useStatus";

interface InsertBarProps {
  readonly status: Status | undefined;
  readonly inTheWay: InTheWay | undefined;
  readonly canUndo: string | undefined;
  readonly newSheetName: string;
  /** The first selected cell; "" where the host tells none. */
  readonly selected: string;
  /** The estimate block in which the selection lies. */
  readonly block: SelectedBlock | undefined;
  readonly onDraw: () => void;
  readonly onInsert: (place: Place) => void;
  readonly onUndo: () => void;
  readonly onCancel: () => void;
}

export function InsertBar(props: InsertBarProps) {
  const { status, inTheWay, canUndo, newSheetName, selected, block, onDraw, onInsert, onUndo, onCancel } = props;
  const working = status?.kind === "working";
  return (
    <section class="insert-bar" aria-label="Insert">
      {inTheWay ? (
        <InTheWayNotice
          inTheWay={inTheWay}
          what="block"
          onPlace={(place) => onInsert(place.kind === "cell" ? place : { ...place, name: newSheetName })}
          onCancel={onCancel}
        />
      ) : (
        <p class="row">
          <Button main off={working} onPress={() => onInsert({ kind: "selection" })}>
            Insert {selected ? `at ${selected}` : "at the selected cell"}
          </Button>
          <Button off={working || !canUndo} title={canUndo} onPress={onUndo}>
            Take back
          </Button>
        </p>
      )}
      {block && !inTheWay && (
        <p class="row">
          <span class="grow">{drawingWords(block)}</span>
          <Button off={working || block.drawing === "current"} onPress={onDraw}>
            {block.drawing === "none" ? "Draw" : "Redraw"}
          </Button>
        </p>
      )}
      <StatusMessage status={status} />
    </section>
  );
}

function drawingWords({ name, drawing }: SelectedBlock): string {
  if (drawing === "none") return `${name || "This bed"} is not drawn yet.`;
  return `The drawing of ${name || "this bed"} is ${drawing === "current" ? "up to date" : "out of date"}.`;
}
