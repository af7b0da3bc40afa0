import { useMemo } from "preact/hooks";
import { Button } from "../Button";
import { TextField } from "../Field";
import { onEscape } from "../onEscape";
import { PanelHeading } from "../PanelHeading";
import { OutsideQuestions } from "./OutsideQuestions";
import { PartList } from "./PartList";
import { Question } from "./Question";
import { type ToSave, templateOfCells } from "./saving";
import type { Saving } from "./useSaving";
import { sizeWords } from "./words";

interface SavePanelProps {
  readonly saving: Saving;
  readonly toSave: ToSave;
  readonly working: boolean;
}

/** What a template of the cells would be, and what the person has to say about it. */
export function SavePanel({ saving, toSave, working }: SavePanelProps) {
  const { words, treatments, setWords, replacing } = saving;
  const made = useMemo(() => {
    // Until all is answered, the account is given as if everything were read on.
    const all = new Map(toSave.outside.map(({ reads }) => [reads, treatments.get(reads) ?? "keep"]));
    return templateOfCells(toSave, all, { name: "-", note: "", by: "" }, new Date());
  }, [toSave, treatments]);
  const { where, hiddenRows } = toSave;
  return (
    <section
      aria-labelledby="save-template"
      onKeyDown={onEscape(replacing ? saving.dontReplace : saving.cancel, working)}
    >
      <PanelHeading id="save-template">Save as template</PanelHeading>
      <p>
        {where}: {sizeWords(made.template)}. Pictures aren't saved.
        {hiddenRows > 0 && ` Its hidden rows show in the template (${hiddenRows}).`}
      </p>
      {made.faults.length > 0 && (
        <div class="notice trouble">
          <p>These cells can't be a template until you change this:</p>
          <ul>
            {made.faults.slice(0, 12).map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
          </ul>
        </div>
      )}
      <PartList summary="Different from the sheet" items={made.told} open />
      <OutsideQuestions saving={saving} outside={toSave.outside} />
      <TextField label="Name" value={words.name} onType={(name) => setWords({ ...words, name })} />
      <TextField
        label="Note for the person who opens it"
        value={words.note}
        onType={(note) => setWords({ ...words, note })}
        placeholder="optional"
      />
      <TextField
        label="Saved by"
        value={words.by}
        onType={(by) => setWords({ ...words, by })}
        placeholder="optional"
        note="Sent along with the template."
      />
      {replacing ? (
        <Question
          text={`This workbook already has a template “${replacing.name}”. Replace it?`}
          yes="Replace it"
          no="Keep the old one"
          working={working}
          onYes={saving.replace}
          onNo={saving.dontReplace}
        />
      ) : (
        <p class="insert-bar row">
          <Button main off={working || made.faults.length > 0} onPress={saving.keep}>
            Save in this workbook
          </Button>
          <Button off={working || made.faults.length > 0} onPress={saving.toFile}>
            Save to a file
          </Button>
          <Button off={working} onPress={saving.cancel}>
            Cancel
          </Button>
        </p>
      )}
    </section>
  );
}
