import type { FieldKey } from "../quantities/bed/fields";
import { cautions } from "../sheets/cautions";
import type { Place } from "../workbook/change/place";
import { Button } from "./Button";
import { Choices } from "./Choices";
import { Details } from "./Details";
import { InsertBar } from "./InsertBar";
import { UnkeptNote } from "./keep/UnkeptNote";
import { Measurements } from "./Measurements";
import { Problems } from "./Problems";
import { Result } from "./Result";
import { RatesNote } from "./rates/RatesNote";
import { useRates } from "./rates/store";
import { OpenedNote } from "./UpdatePanel";
import { useDrawing } from "./useDrawing";
import { useForm } from "./useForm";
import { useInsert } from "./useInsert";
import { useUpdate } from "./useUpdate";

/** Measure a bed, look at what it comes to, and insert it. */
export function EstimateScreen({ onShowRates }: { onShowRates: () => void }) {
  const rates = useRates();
  const bed = useForm(rates?.found?.rates);
  const { form, preview, shownProblems, problemAt, change, fill, showAll, startNewBed } = bed;
  const { status, inTheWay, canUndo, whereTo, chooseWhereTo, attempt, insert, draw, undo, cancel } = useInsert();
  const drawing = useDrawing();
  const update = useUpdate(bed, rates, attempt, drawing.look);

  const tryToInsert = (place: Place) => {
    showAll();
    if (preview.estimate) void insert(form, place, preview.plan && drawing.draw);
    else requestAnimationFrame(focusFirstProblem);
  };
  const tryToUpdate = () => {
    showAll();
    if (preview.estimate) void update.look();
    else requestAnimationFrame(focusFirstProblem);
  };
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
      <OpenedNote update={update} />
      <UnkeptNote unkept={bed.unkept} />
      <Measurements form={form} problemAt={problemAt} onChange={change} onType={onType} />
      <Choices form={form} onFill={fill} />
      <RatesNote rates={rates} onShow={onShowRates} />
      <Details form={form} problemAt={problemAt} onType={onType} onUseRate={(field) => fill({ [field]: undefined })} />
      <Result preview={preview} />
      <Problems problems={shownProblems} />
      <details>
        <summary>Cautions</summary>
        <p class="below">Local codes, the locate ticket, and licensed professionals come first.</p>
        <dl class="cautions">
          {cautions.map(({ about, text }) => (
            <>
              <dt key={about}>{about}</dt>
              <dd>{text}</dd>
            </>
          ))}
        </dl>
      </details>
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
        onUpdate={tryToUpdate}
        onDraw={() => void draw(drawing.draw)}
        onInsert={tryToInsert}
        onUndo={() => void undo()}
        onCancel={cancel}
      />
    </>
  );
}

/** Brings the person to the first field that stands in the way, opening what hides it. */
function focusFirstProblem(): void {
  const field = document.querySelector<HTMLElement>(".bedrow [aria-invalid=true]");
  field?.closest("details")?.setAttribute("open", "");
  field?.focus();
}
