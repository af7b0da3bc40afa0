import type { InTheWay, Place } from "../workbook/change/place";
import type { SelectedBlock } from "../workbook/read/selectedBlock";
import { Button } from "./Button";
import { InTheWayNotice } from "./InTheWayNotice";
import { Said } from "./Said";
import type { Word } from "./useWord";

interface InsertBarProps {
  readonly word: Word | undefined;
  readonly inTheWay: InTheWay | undefined;
  readonly canTakeBack: string | undefined;
  readonly newSheetName: string;
  /** The first selected cell; "" where the host tells none. */
  readonly selected: string;
  /** The estimate block in which the selection lies. */
  readonly block: SelectedBlock | undefined;
  readonly onDraw: () => void;
  readonly onInsert: (place: Place) => void;
  readonly onTakeBack: () => void;
  readonly onCancel: () => void;
}

export function InsertBar(props: InsertBarProps) {
  const { word, inTheWay, canTakeBack, newSheetName, selected, block, onDraw, onInsert, onTakeBack, onCancel } = props;
  const working = word?.kind === "working";
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
          <Button off={working || !canTakeBack} title={canTakeBack} onPress={onTakeBack}>
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
      <Said word={word} />
    </section>
  );
}

function drawingWords({ name, drawing }: SelectedBlock): string {
  if (drawing === "none") return `${name || "This bed"} is not drawn yet.`;
  return `The drawing of ${name || "this bed"} is ${drawing === "current" ? "up to date" : "out of date"}.`;
}
