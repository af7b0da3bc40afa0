import { useState } from "preact/hooks";
import type { FieldKey } from "../quantities/bed/fields";
import type { Place } from "../workbook/change/place";
import { inOneBreath } from "./Answer";
import { Button } from "./Button";
import { Choices } from "./Choices";
import { Fetched } from "./Fetched";
import { InsertBar } from "./InsertBar";
import { Measurements } from "./Measurements";
import { onEnter } from "./onEnter";
import { Problems } from "./Problems";
import { ReadOut } from "./ReadOut";
import { useRates } from "./rates/store";
import { useDrawing } from "./useDrawing";
import { useForm } from "./useForm";
import { useInsert } from "./useInsert";
import { useUpdate } from "./useUpdate";

const below = async () => (await import(/* webpackChunkName: "below" */ "./BelowTheForm")).BelowTheForm;
const unkeptNote = async () => (await import(/* webpackChunkName: "below" */ "./keep/UnkeptNote")).UnkeptNote;
const openedNote = async () => (await import(/* webpackChunkName: "below" */ "./OpenedNote")).OpenedNote;

/** Measure a bed, look at what it comes to, and insert it. */
export function EstimateScreen({ onShowRates }: { onShowRates: () => void }) {
  const rates = useRates();
  const bed = useForm(rates?.found?.rates);
  const { form, preview, shownProblems, problemAt, change, fill, showAll, startNewBed } = bed;
  const { status, inTheWay, canUndo, whereTo, chooseWhereTo, attempt, insert, draw, undo, cancel } = useInsert();
  const drawing = useDrawing();
  const update = useUpdate(bed, rates, attempt, drawing.look);

  /** The field in which Enter was pressed, while what it will insert is shown. */
  const [asked, setAsked] = useState<HTMLElement>();
  const ifComplete = (work: () => unknown) => {
    showAll();
    if (preview.estimate) work();
    else requestAnimationFrame(focusFirstProblem);
  };
  const tryToInsert = (place: Place) =>
    ifComplete(() => {
      setAsked(undefined);
      void insert(form, place, preview.estimate && preview.plan && drawing.draw);
    });
  const tryToUpdate = () => ifComplete(() => void update.look());
  const finish = () =>
    update.opened ? tryToUpdate() : ifComplete(() => setAsked(document.activeElement as HTMLElement));
  const onType = (field: FieldKey, text: string) => fill({ [field]: text });

  return (
    <>
      <header>
        <h1>Stone bed estimate</h1>
        <Button
          onPress={() => {
            update.close();
            startNewBed();
          }}
        >
          New bed
        </Button>
      </header>
      {update.opened && <Fetched part={openedNote} given={{ update }} />}
      {bed.unkept && <Fetched part={unkeptNote} given={{ unkept: bed.unkept }} />}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the fields inside take the keys */}
      <div onKeyDown={onEnter(finish)}>
        <div class="first">
          <Measurements form={form} problemAt={problemAt} onChange={change} onType={onType} onFill={fill} />
          <Choices form={form} onFill={fill} />
        </div>
        <ReadOut text={preview.estimate ? inOneBreath(preview.estimate) : ""} />
        <Problems problems={shownProblems} />
        <Fetched
          part={below}
          given={{ form, problemAt, preview, rates, onChange: change, onType, onFill: fill, onShowRates }}
        />
      </div>
      <InsertBar
        preview={preview}
        status={status}
        inTheWay={inTheWay}
        canUndo={canUndo}
        newSheetName={form.name.trim() || "Estimate"}
        whereTo={whereTo}
        onWhereTo={chooseWhereTo}
        selected={drawing.cell}
        block={drawing.block}
        update={update}
        isAsked={asked !== undefined}
        onDismiss={() => {
          setAsked(undefined);
          asked?.focus();
        }}
        onUpdate={tryToUpdate}
        onDraw={() => void draw(drawing.draw)}
        onInsert={tryToInsert}
        onUndo={() => void undo()}
        onCancel={cancel}
      />
    </>
  );
}

/** Brings the person to the first field that is in the way, opening what hides it. */
function focusFirstProblem(): void {
  const field = document.querySelector<HTMLElement>(".bedrow [aria-invalid=true]");
  field?.closest("details")?.setAttribute("open", "");
  field?.focus();
}
