import { useState } from "preact/hooks";
import { type KeptTemplate, renamedTemplate, withoutTemplate } from "../../sheets/templates/keptTemplates";
import type { Template } from "../../sheets/templates/template";
import { TextField } from "../Field";
import type { Speaking } from "../useWord";
import { Question } from "./Question";
import { saveTemplateFile } from "./templateFiles";
import type { Kept } from "./useKept";
import { shownName, sizeWords } from "./words";

interface KeptListProps {
  readonly kept: Kept;
  readonly speaking: Speaking;
  readonly working: boolean;
  readonly onOpen: (template: Template) => void;
}

/** The templates of this workbook, and what can be done with each. */
export function KeptList({ kept, speaking, working, onOpen }: KeptListProps) {
  const { templates, trouble } = kept;
  return (
    <>
      <h2>In this workbook</h2>
      {trouble && <p class="notice trouble">{trouble}</p>}
      {templates.length === 0 && !trouble && <p class="below">It keeps no templates yet.</p>}
      {templates.map((one) => (
        <KeptOne
          // Templates that cannot be read may have the name of another.
          key={one.template ? one.name : JSON.stringify(one.content)}
          one={one}
          kept={kept}
          speaking={speaking}
          working={working}
          onOpen={onOpen}
        />
      ))}
    </>
  );
}

function KeptOne({ one, kept, speaking, working, onOpen }: KeptListProps & { readonly one: KeptTemplate }) {
  const [asking, setAsking] = useState<"delete" | "rename">();
  const [wanted, setWanted] = useState(one.name);
  const name = shownName(one.name);
  const { template } = one;
  const done = () => setAsking(undefined);
  const remove = () =>
    speaking.attempt("Deleting it…", async () => {
      await kept.change((templates) => withoutTemplate(templates, one));
      return `“${name}” is no longer kept in this workbook.`;
    });
  const rename = () =>
    speaking.attempt("Renaming it…", async () => {
      await kept.change((templates) => renamedTemplate(templates, one.name, wanted));
      done();
      return `“${name}” is called “${wanted.trim()}” now.`;
    });
  return (
    <div class="kept">
      <p class="row">
        <span class="grow">
          {name}
          {template && <span class="below"> {sizeWords(template)}</span>}
        </span>
        {template && (
          <button type="button" aria-label={`Look at ${name}`} disabled={working} onClick={() => onOpen(template)}>
            Look
          </button>
        )}
      </p>
      {one.why && <p class="notice trouble">It cannot be opened, and was left alone. {one.why.join(" ")}</p>}
      <p class="row small">
        {template && (
          <>
            <button
              type="button"
              aria-label={`Save ${name} to a file`}
              disabled={working}
              onClick={() => speaking.say(`It is saved as ${saveTemplateFile(template)}.`)}
            >
              To a file
            </button>
            <button type="button" aria-label={`Rename ${name}`} disabled={working} onClick={() => setAsking("rename")}>
              Rename
            </button>
          </>
        )}
        <button type="button" aria-label={`Delete ${name}`} disabled={working} onClick={() => setAsking("delete")}>
          Delete
        </button>
      </p>
      {asking === "delete" && (
        <Question
          text={`Delete the template “${name}” from this workbook? What was made with it stays. It cannot be taken back, except from a file.`}
          yes="Delete it"
          no="Keep it"
          working={working}
          onYes={() => void remove()}
          onNo={done}
        />
      )}
      {asking === "rename" && (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void rename();
          }}
        >
          <TextField label={`New name for ${name}`} value={wanted} onType={setWanted} />
          <p class="row">
            <button type="submit" disabled={working}>
              Rename it
            </button>
            <button type="button" onClick={done}>
              Leave it
            </button>
          </p>
        </form>
      )}
    </div>
  );
}
