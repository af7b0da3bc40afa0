import type { InTheWay, Place } from "../workbook/change/place";
import type { SelectedBlock } from "../workbook/read/selectedBlock";
import { Answer } from "./Answer";
import { Button } from "./Button";
import { Fetched } from "./Fetched";
import type { Preview } from "./preview";
import { StatusMessage } from "./StatusMessage";
import type { WhereTo } from "./useInsert";
import type { Status } from "./useStatus";
import type { Update } from "./useUpdate";

const inTheWayNotice = async () => (await import(/* webpackChunkName: "below" */ "./InTheWayNotice")).InTheWayNotice;
const insertPreview = async () => (await import(/* webpackChunkName: "below" */ "./InsertPreview")).InsertPreview;

interface InsertBarProps {
  readonly preview: Preview;
  readonly status: Status | undefined;
  readonly inTheWay: InTheWay | undefined;
  readonly canUndo: string | undefined;
  readonly newSheetName: string;
  readonly whereTo: WhereTo;
  readonly onWhereTo: (whereTo: WhereTo) => void;
  /** The first selected cell; "" where the host tells none. */
  readonly selected: string;
  /** The estimate block in which the selection lies. */
  readonly block: SelectedBlock | undefined;
  readonly update: Update;
  /** Shows first what will be inserted. */
  readonly isAsked: boolean;
  readonly onDismiss: () => void;
  readonly onUpdate: () => void;
  readonly onDraw: () => void;
  readonly onInsert: (place: Place) => void;
  readonly onUndo: () => void;
  readonly onCancel: () => void;
}

export function InsertBar(props: InsertBarProps) {
  const { status, inTheWay, canUndo, newSheetName, whereTo, onWhereTo, selected, block, update } = props;
  const { isAsked, onUpdate, onDraw, onInsert, onUndo, onCancel } = props;
  const working = status?.kind === "working";
  const { opened, preview, Panel } = update;
  const atCell = selected ? `at ${selected}` : "at the selected cell";
  const insertThere = () =>
    onInsert(whereTo === "cell" ? { kind: "selection" } : { kind: "new sheet", name: newSheetName });
  const insertRows = (
    <>
      <p class="row">
        <Button main={!opened} off={working} onPress={insertThere}>
          Insert {whereTo === "cell" ? atCell : "on a new sheet"}
        </Button>
        <Button off={working || !canUndo} title={canUndo} onPress={onUndo}>
          Undo
        </Button>
      </p>
      <p class="row">
        <select
          aria-label="Where it goes"
          value={whereTo}
          onChange={(event) => onWhereTo(event.currentTarget.value as WhereTo)}
        >
          <option value="new sheet">New sheet “{newSheetName}”</option>
          <option value="cell">{selected ? `At ${selected}` : "At the selected cell"}</option>
        </select>
      </p>
    </>
  );
  return (
    <section class="insert-bar" aria-label="Insert">
      {!inTheWay && !preview && !(isAsked && props.preview.estimate) && <Answer preview={props.preview} />}
      {inTheWay ? (
        <Fetched
          part={inTheWayNotice}
          given={{
            inTheWay,
            what: "block",
            onPlace: (place) => onInsert(place.kind === "cell" ? place : { ...place, name: newSheetName }),
            onCancel,
          }}
        />
      ) : preview && opened && Panel ? (
        <Panel
          where={opened.where}
          preview={preview}
          replaced={update.replaced}
          onTick={update.tick}
          onWrite={update.write}
          onCancel={update.cancel}
        />
      ) : isAsked && props.preview.estimate ? (
        <Fetched
          part={insertPreview}
          given={{
            name: props.preview.form.name,
            estimate: props.preview.estimate,
            where: whereTo === "cell" ? atCell : `on a new sheet, “${newSheetName}”`,
            onInsert: insertThere,
            onCancel: props.onDismiss,
          }}
        />
      ) : opened ? (
        <>
          <p class="row">
            <Button main off={working} onPress={onUpdate}>
              Update {opened.where}
            </Button>
            {update.canUndo && (
              <Button off={working} onPress={() => void update.undo()}>
                Undo the update
              </Button>
            )}
          </p>
          <details open={update.isRefused}>
            <summary>Insert it as a new estimate</summary>
            {insertRows}
          </details>
        </>
      ) : (
        insertRows
      )}
      {block && !inTheWay && !preview && (
        <p class="row">
          <span class="grow">
            {[block.name, block.where].filter(Boolean).join(", ")}: {drawingWords[block.drawing]}
          </span>
          {block.where !== opened?.where && (
            <Button off={working} onPress={() => void update.open()}>
              Open this bed
            </Button>
          )}
          <Button off={working || block.drawing === "current"} onPress={onDraw}>
            {block.drawing === "none" ? "Draw" : "Redraw"}
          </Button>
        </p>
      )}
      <StatusMessage status={status} />
    </section>
  );
}

const drawingWords = {
  none: "not drawn yet",
  current: "drawing up to date",
  "out of date": "drawing out of date",
} as const satisfies Record<SelectedBlock["drawing"], string>;
