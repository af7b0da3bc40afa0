import { useState } from "preact/hooks";
import { isoDate } from "../../../quantities/calendar/calendarDay";
import { countJobs } from "../../../sheets/office/pastJobs";
import { Button } from "../../Button";
import { TextField } from "../../Field";
import { onEscape } from "../../onEscape";
import { PanelHeading } from "../../PanelHeading";
import { today } from "../../papers/today";
import { counted } from "../../templates/words";
import type { Ticks } from "./makeOfficeFile";
import { storedTexts } from "./officeDetails";
import type { OfficePanel, OfficeWork } from "./useOffice";

interface SaveOfficeProps {
  readonly office: OfficeWork;
  readonly panel: OfficePanel & { readonly kind: "save" };
  readonly working: boolean;
}

/** What goes into the office's file, and under which name. */
export function SaveOffice({ office, panel: { workbook, number }, working }: SaveOfficeProps) {
  const { rates, past, known } = workbook;
  const [name, setName] = useState(() => known.record?.office ?? storedTexts().details.office);
  const [ticks, setTicks] = useState<Ticks>({ rates: rates !== undefined, texts: true, past: false });
  const jobs = past ? countJobs(past.lines) : 0;
  return (
    <section aria-labelledby="save-office" onKeyDown={onEscape(office.close, working)}>
      <PanelHeading id="save-office">Save office settings</PanelHeading>
      <TextField label="Office" value={name} onType={setName} />
      <fieldset>
        <legend>What to save</legend>
        <Tick
          label="Rates"
          note={rates ? "prices, lists, crew, markups, and stone weights" : "this workbook has none"}
          checked={ticks.rates}
          off={!rates}
          onTick={(on) => setTicks({ ...ticks, rates: on })}
        />
        <Tick
          label="Letterhead and terms"
          note="also what isn't included, days of notice, and holidays"
          checked={ticks.texts}
          onTick={(on) => setTicks({ ...ticks, texts: on })}
        />
        <Tick
          label="Past jobs"
          note={jobs > 0 ? counted(jobs, "job") : "this workbook has none"}
          checked={ticks.past}
          off={jobs === 0}
          onTick={(on) => setTicks({ ...ticks, past: on })}
        />
      </fieldset>
      <p class="below">
        This will be version {isoDate(today())}, no. {number}.
      </p>
      <p class="insert-bar row">
        <Button main off={working} onPress={() => void office.save(name, ticks)}>
          Save to a file
        </Button>
        <Button off={working} onPress={office.close}>
          Cancel
        </Button>
      </p>
    </section>
  );
}

interface TickProps {
  readonly label: string;
  readonly note: string;
  readonly checked: boolean;
  readonly off?: boolean;
  readonly onTick: (on: boolean) => void;
}

function Tick({ label, note, checked, off = false, onTick }: TickProps) {
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={checked}
        disabled={off}
        onChange={(event) => onTick(event.currentTarget.checked)}
      />
      <span class="grow">
        {label} <span class="below">{note}</span>
      </span>
    </label>
  );
}
