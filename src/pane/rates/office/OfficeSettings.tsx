import type { Ref } from "preact";
import { isSameVersion, type OfficeVersion, versionWords } from "../../../sheets/office/officeFile";
import { someOf } from "../../../sheets/someOf";
import { Button } from "../../Button";
import { LoadOffice } from "./LoadOffice";
import { PreviewOffice } from "./PreviewOffice";
import { SaveOffice } from "./SaveOffice";
import type { OfficeWork } from "./useOffice";

interface OfficeProps {
  readonly office: OfficeWork;
  readonly working: boolean;
}

const MOST_NAMED = 4;

/** Which settings the workbook uses, what of them was changed since, and what the office's folder offers beyond them. */
export function OfficeUse({ office, working }: OfficeProps) {
  const { state, offer } = office;
  const { record } = state?.known ?? {};
  const changed = state?.changedSince ?? [];
  const isOffered = state && offer.file && !(record && isCurrent(record, offer.file));
  return (
    <>
      {record && (
        <p>
          This workbook uses {record.office}, {versionWords(record)}.
          {changed.length > 0 && ` Changed since: ${someOf(changed, MOST_NAMED)}.`}
        </p>
      )}
      {offer.why !== undefined && <p class="notice trouble">Your office's settings can't be loaded. {offer.why}</p>}
      {isOffered && offer.file && (
        <p class="row notice">
          <span class="grow">
            Your office's settings: {versionWords(offer.file)}. This workbook uses {usedWords(record, offer.file)}.
          </span>
          <Button label="Preview your office's settings" off={working} onPress={() => void office.previewOffer()}>
            Preview
          </Button>
        </p>
      )}
    </>
  );
}

/** Whether a workbook has what the office offers, or later settings of the same office. */
function isCurrent(used: OfficeVersion, offered: OfficeVersion): boolean {
  return isSameVersion(used, offered) || (used.office === offered.office && used.number > offered.number);
}

function usedWords(record: OfficeVersion | undefined, offered: OfficeVersion): string {
  if (!record) return "none yet";
  return record.office === offered.office ? `no. ${record.number}` : `${record.office}, no. ${record.number}`;
}

interface OfficePartProps extends OfficeProps {
  /** Gets the keyboard back once a panel is closed. */
  readonly at: Ref<HTMLButtonElement>;
}

/** Saving and loading office settings. */
export function OfficePart({ office, working, at }: OfficePartProps) {
  const { state, canUndo } = office;
  const why = state?.known.why;
  return (
    <section aria-labelledby="office-heading">
      <h2 id="office-heading">Office settings</h2>
      {why && <p class="notice trouble">{why}</p>}
      <p class="below">
        Set up rates, letterhead, and terms once. Save them to a file, and load them in the next workbook.
      </p>
      <p class="row">
        <Button at={at} off={working} onPress={() => void office.openSave()}>
          Save office settings…
        </Button>
        <Button off={working} onPress={office.openLoad}>
          Load office settings…
        </Button>
        {canUndo && (
          <Button off={working} onPress={() => void office.undo()}>
            Undo loading
          </Button>
        )}
      </p>
    </section>
  );
}

/** The panel that takes the screen's place while settings are saved or loaded. */
export function OfficePanel({ office, working }: OfficeProps) {
  const { panel } = office;
  if (panel?.kind === "save") return <SaveOffice office={office} panel={panel} working={working} />;
  if (panel?.kind === "load") return <LoadOffice office={office} working={working} />;
  return panel ? <PreviewOffice office={office} plan={panel.plan} working={working} /> : null;
}
