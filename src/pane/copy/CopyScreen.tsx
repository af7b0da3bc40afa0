import type { CopyMode } from "../../sheets/plain/toPlain";
import { Button } from "../Button";
import { InTheWayNotice } from "../InTheWayNotice";
import { onEscape } from "../onEscape";
import { Select } from "../Select";
import { StatusMessage } from "../StatusMessage";
import { useFocusBack } from "../useFocusBack";
import { CopyPreview } from "./CopyPreview";
import type { What } from "./source";
import { type Looked, useCopy, type Where } from "./useCopy";

const whats = [
  { value: "sheet", label: "This sheet" },
  { value: "block", label: "The selected estimate block" },
  { value: "cells", label: "The selected cells" },
];
const wheres = [
  { value: "new sheet", label: "On a new sheet" },
  { value: "cell", label: "At a cell I select next" },
  { value: "workbook", label: "As a separate workbook" },
];
const modes = [
  { value: "formulas", label: "Ordinary formulas that keep working" },
  { value: "values only", label: "Values only" },
];

/** A copy of cells for people who do not have the add-in. */
export function CopyScreen() {
  const copying = useCopy();
  const { choice, looked, inTheWay, status, isWorking: working, selected, choose } = copying;
  const lookButton = useFocusBack(looked !== undefined);
  return (
    <>
      <header>
        <h1>Copy for others</h1>
      </header>
      <p class="below">
        Makes a copy that works without this add-in: its functions become ordinary formulas, and taped lengths become
        decimal numbers. The original doesn't change. Pictures, drop-down lists, and color rules aren't copied.
      </p>
      <Select
        label="What to copy"
        value={choice.what}
        options={whats}
        onChoose={(what) => choose({ what: what as What })}
      />
      <Select
        label="Copy to"
        value={choice.where}
        options={wheres}
        onChoose={(where) => choose({ where: where as Where })}
      />
      <Select
        label="What to keep"
        value={choice.mode}
        options={modes}
        onChoose={(mode) => choose({ mode: mode as CopyMode })}
      />
      {!looked && (
        <p class="row">
          <Button at={lookButton} main off={working} onPress={() => void copying.look()}>
            Preview copy
          </Button>
          <Button off={working || !copying.canUndo} onPress={() => void copying.undo()}>
            Undo
          </Button>
        </p>
      )}
      {looked && (
        <section aria-labelledby="copy-preview" onKeyDown={onEscape(copying.cancel, working)}>
          <CopyPreview looked={looked} />
          {inTheWay ? (
            <InTheWayNotice
              inTheWay={inTheWay}
              what="copy"
              onPlace={(place) =>
                void copying.makeAt(looked, place.kind === "cell" ? { ...place, sheetName: inTheWay.sheetName } : place)
              }
              onCancel={copying.cancel}
            />
          ) : (
            <p class="insert-bar row">
              <Button main off={working} onPress={() => void copying.make(looked)}>
                {makeLabel(looked, selected, copying.opens)}
              </Button>
              <Button off={working} onPress={copying.cancel}>
                Cancel
              </Button>
            </p>
          )}
        </section>
      )}
      <StatusMessage status={status} />
    </>
  );
}

function makeLabel({ choice }: Looked, selected: string, opens: boolean): string {
  if (choice.where === "workbook") return opens ? "Open the copy" : "Download the copy";
  if (choice.where === "new sheet") return "Make the copy";
  return `Put it at ${selected || "the selected cell"}`;
}
