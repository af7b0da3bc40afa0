import { useState } from "preact/hooks";
import { type KeptTemplate, renamedTemplate, withoutTemplate } from "../../sheets/templates/keptTemplates";
import type { Template } from "../../sheets/templates/template";
import { Button } from "../Button";
import { TextField } from "../Field";
import { onEscape } from "../onEscape";
import type { Reporter } from "../useStatus";
import { Question } from "./Question";
import { saveTemplateFile } from "./templateFiles";
import type { Kept } from "./useKept";
import { shownName, sizeWords } from "./words";

interface KeptListProps {
  readonly kept: Kept;
  readonly reporter: Reporter;
  readonly working: boolean;
  readonly onOpen: (template: Template) => void;
}

/** The templates of this workbook, and what can be done with each. */
export function KeptList({ kept, reporter, working, onOpen }: KeptListProps) {
  const { templates, trouble } = kept;
  return (
    <>
      <h2>In this workbook</h2>
      {trouble && <p class="notice trouble">{trouble}</p>}
      {templates.length === 0 && !trouble && <p class="below">No templates yet.</p>}
      {templates.map((one) => (
        <KeptOne
          // Templates that cannot be read may have the name of another.
          key={one.template ? one.name : JSON.stringify(one.content)}
          one={one}
          kept={kept}
          reporter={reporter}
          working={working}
          onOpen={onOpen}
        />
      ))}
    </>
  );
}

function KeptOne({ one, kept, reporter, working, onOpen }: KeptListProps & { readonly one: KeptTemplate }) {
  const [asking, setAsking] = useState<"delete" | "rename">();
  const [wanted, setWanted] = useState(one.name);
  const name = shownName(one.name);
  const { template } = one;
  const done = () => setAsking(undefined);
  const remove = () =>
    reporter.attempt("Deleting…", async () => {
      await kept.change((templates) => withoutTemplate(templates, one));
      return `Deleted “${name}” from this workbook.`;
    });
  const rename = () =>
    reporter.attempt("Renaming…", async () => {
      await kept.change((templates) => renamedTemplate(templates, one.name, wanted));
      done();
      return `Renamed “${name}” to “${wanted.trim()}”.`;
    });
  return (
    <div class="kept">
      <p class="row">
        <span class="grow">
          {name}
          {template && <span class="below"> {sizeWords(template)}</span>}
        </span>
        {template && (
          <Button label={`Preview ${name}`} off={working} onPress={() => onOpen(template)}>
            Preview
          </Button>
        )}
      </p>
      {one.why && <p class="notice trouble">It can't be opened, and wasn't changed. {one.why.join(" ")}</p>}
      <p class="row small">
        {template && (
          <>
            <Button
              label={`Save ${name} to a file`}
              off={working}
              onPress={() => reporter.say(`Saved as ${saveTemplateFile(template)}.`)}
            >
              Save
            </Button>
            <Button label={`Rename ${name}`} off={working} onPress={() => setAsking("rename")}>
              Rename
            </Button>
          </>
        )}
        <Button label={`Delete ${name}`} off={working} onPress={() => setAsking("delete")}>
          Delete
        </Button>
      </p>
      {asking === "delete" && (
        <Question
          text={`Delete the template “${name}” from this workbook? Sheets made with it stay. This can't be undone unless you saved it to a file.`}
          yes="Delete template"
          no="Keep"
          working={working}
          onYes={() => void remove()}
          onNo={done}
        />
      )}
      {asking === "rename" && (
        <form
          onKeyDown={onEscape(done, working)}
          onSubmit={(event) => {
            event.preventDefault();
            if (!working) void rename();
          }}
        >
          <TextField label={`New name for ${name}`} value={wanted} onType={setWanted} takesOver />
          <p class="row">
            <Button off={working} onPress={() => void rename()}>
              Save name
            </Button>
            <Button off={working} onPress={done}>
              Cancel
            </Button>
          </p>
        </form>
      )}
    </div>
  );
}
