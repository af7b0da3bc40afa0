import { Button } from "../Button";
import { StatusMessage } from "../StatusMessage";
import { useFocusBack } from "../useFocusBack";
import { useSelection } from "../useSelection";
import { useStatus } from "../useStatus";
import { FilePart } from "./FilePart";
import { KeptList } from "./KeptList";
import { OfficeList } from "./OfficeList";
import { OpenPanel } from "./OpenPanel";
import { SavePanel } from "./SavePanel";
import { useKept } from "./useKept";
import { useOpening } from "./useOpening";
import { useSaving } from "./useSaving";

/** Templates: saving cells as one, and opening one from the workbook, a file or the office's folder. */
export function TemplatesScreen() {
  const reporter = useStatus();
  const kept = useKept();
  const saving = useSaving(reporter, kept);
  const opening = useOpening(reporter);
  const selected = useSelection();
  const { status, isWorking: working } = reporter;
  const { toSave } = saving;
  const { looking } = opening;
  const saveButton = useFocusBack(toSave !== undefined || looking !== undefined);
  return (
    <>
      <header>
        <h1>Templates</h1>
      </header>
      {toSave && <SavePanel saving={saving} toSave={toSave} working={working} />}
      {looking && <OpenPanel opening={opening} looking={looking} working={working} selected={selected} />}
      {!toSave && !looking && (
        <>
          <p class="below">
            A template saves lines, markups, notes, and formatting as you changed them, to use in any workbook. Select a
            cell in an estimate, or the cells to save.
          </p>
          <p class="row">
            <Button at={saveButton} main off={working} onPress={() => void saving.look("block")}>
              Save the estimate
            </Button>
            <Button off={working} onPress={() => void saving.look("cells")}>
              Save the selected cells
            </Button>
            {opening.canUndo && (
              <Button off={working} onPress={() => void opening.undo()}>
                Undo
              </Button>
            )}
          </p>
          <KeptList
            kept={kept}
            reporter={reporter}
            working={working}
            onOpen={(template) => void opening.look(template)}
          />
          <OfficeList working={working} onOpen={(template) => void opening.look(template)} />
          <FilePart reporter={reporter} onOpen={(template) => void opening.look(template)} />
        </>
      )}
      <StatusMessage status={status} />
    </>
  );
}
