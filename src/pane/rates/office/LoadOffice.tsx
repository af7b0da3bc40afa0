import { versionWords } from "../../../sheets/office/officeFile";
import { Button } from "../../Button";
import { JsonFileField } from "../../JsonFileField";
import { onEscape } from "../../onEscape";
import { PanelHeading } from "../../PanelHeading";
import type { OfficeWork } from "./useOffice";

/** Where office settings come from: the office's folder, or a file. */
export function LoadOffice({ office, working }: { readonly office: OfficeWork; readonly working: boolean }) {
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
      <JsonFileField label="Office settings file (.json)" onFile={(file) => void office.previewFile(file)} />
      <p class="row">
        <Button off={working} onPress={office.close}>
          Cancel
        </Button>
      </p>
    </section>
  );
}
