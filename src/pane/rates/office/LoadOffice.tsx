import { useId } from "preact/hooks";
import { versionWords } from "../../../sheets/office/officeFile";
import { Button } from "../../Button";
import { onEscape } from "../../onEscape";
import { PanelHeading } from "../../PanelHeading";
import type { OfficeWork } from "./useOffice";

/** Where office settings come from: the office's folder, or a file. */
export function LoadOffice({ office, working }: { readonly office: OfficeWork; readonly working: boolean }) {
  const id = useId();
  const { file } = office.offer;
  return (
    <section aria-labelledby="load-office" onKeyDown={onEscape(office.close, working)}>
      <PanelHeading id="load-office">Load office settings</PanelHeading>
      <p class="below">You'll see what would change before anything is written.</p>
      {file && (
        <p class="row">
          <span class="grow">
            {file.office} <span class="below">{versionWords(file)}, from the office's folder</span>
          </span>
          <Button label="Preview your office's settings" off={working} onPress={() => void office.previewOffer()}>
            Preview
          </Button>
        </p>
      )}
      <div class="field">
        <label for={id}>Office settings file (.json)</label>
        <input
          id={id}
          type="file"
          accept=".json,application/json"
          onChange={(event) => {
            const input = event.currentTarget;
            const [chosen] = input.files ?? [];
            if (chosen) void office.previewFile(chosen);
            // The same file can be chosen once more after it was fixed.
            input.value = "";
          }}
        />
      </div>
      <p class="row">
        <Button off={working} onPress={office.close}>
          Cancel
        </Button>
      </p>
    </section>
  );
}
