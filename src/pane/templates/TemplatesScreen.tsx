import { Button } from "../Button";
import { Said } from "../Said";
import { useFocusBack } from "../useFocusBack";
import { useSelection } from "../useSelection";
import { useWord } from "../useWord";
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
  const speaking = useWord();
  const kept = useKept();
  const saving = useSaving(speaking, kept);
  const opening = useOpening(speaking);
  const selected = useSelection();
  const { word, isWorking: working } = speaking;
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
            A template keeps lines, markups, notes and looks as you changed them, to be put into any workbook. Select a
            cell of an estimate block, or the cells that are meant.
          </p>
          <p class="row">
            <Button at={saveButton} main off={working} onPress={() => void saving.look("block")}>
              Save the estimate block
            </Button>
            <Button off={working} onPress={() => void saving.look("cells")}>
              Save the selected cells
            </Button>
            {opening.canTakeBack && (
              <Button off={working} onPress={() => void opening.takeBack()}>
                Take back
              </Button>
            )}
          </p>
          <KeptList
            kept={kept}
            speaking={speaking}
            working={working}
            onOpen={(template) => void opening.look(template)}
          />
          <OfficeList working={working} onOpen={(template) => void opening.look(template)} />
          <FilePart speaking={speaking} onOpen={(template) => void opening.look(template)} />
        </>
      )}
      <Said word={word} />
    </>
  );
}
