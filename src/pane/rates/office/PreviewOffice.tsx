import type { RateDifference } from "../../../sheets/office/compareRates";
import { versionWords } from "../../../sheets/office/officeFile";
import { Button } from "../../Button";
import { onEscape } from "../../onEscape";
import { PanelHeading } from "../../PanelHeading";
import { PartList } from "../../templates/PartList";
import { counted } from "../../templates/words";
import { changesNothing, type LoadPlan } from "./planLoad";
import type { OfficeWork } from "./useOffice";

interface PreviewOfficeProps {
  readonly office: OfficeWork;
  readonly plan: LoadPlan;
  readonly working: boolean;
}

/** What loading office settings would change, before anything is written. */
export function PreviewOffice({ office, plan, working }: PreviewOfficeProps) {
  const { file, differences = [], newSheet = [], stays, texts, past, notes } = plan;
  const typed = differences.filter((one) => one.typed);
  const others = differences.filter((one) => !one.typed);
  return (
    <section aria-labelledby="preview-office" onKeyDown={onEscape(office.close, working)}>
      <PanelHeading id="preview-office">{file.office}</PanelHeading>
      <p>Office settings, {versionWords(file)}. Each line shows this workbook → the file. Nothing is written yet.</p>
      {notes.map((note) => (
        <p class="notice trouble" key={note}>
          {note}
        </p>
      ))}
      {changesNothing(plan) && <p>This workbook already has all of it.</p>}
      <PartList summary="Your own rates this replaces" items={typed.map(differenceWords)} open />
      <PartList summary="Samples and defaults this replaces" items={others.map(differenceWords)} open />
      <PartList summary="Rates for a new Rates sheet" items={newSheet} open />
      <PartList summary="Rows only this workbook lists, which stay" items={stays} />
      <PartList summary="Letterhead and terms this replaces" items={texts} open />
      {past && <p>{pastWords(past)}</p>}
      <p class="insert-bar row">
        <Button main off={working} onPress={() => void office.load()}>
          Load these settings
        </Button>
        <Button off={working} onPress={office.close}>
          Cancel
        </Button>
      </p>
    </section>
  );
}

function differenceWords({ label, now, file }: RateDifference): string {
  return `${label}: ${now} → ${file}`;
}

function pastWords({ jobs, lines, there }: NonNullable<LoadPlan["past"]>): string {
  const known =
    there > 0 ? ` ${counted(there, "line")} of the file ${there === 1 ? "is" : "are"} already in the list.` : "";
  if (lines === 0) return `No past jobs to add.${known}`;
  return `Adds ${counted(jobs, "past job")} (${counted(lines, "line")}) to the list of past jobs.${known}`;
}
