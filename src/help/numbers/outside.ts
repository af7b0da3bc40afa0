import { dateWords } from "../../quantities/calendar/calendarDay";
import { federalHolidays } from "../../quantities/calendar/federalHolidays";
import { EDGING_KINDS } from "../../quantities/edgingKinds";
import { edgingCautions } from "../../quantities/edgingWork";
import { coveringCautions } from "../../quantities/tableSources";
import { cautions } from "../../sheets/cautions";
import { escaped, table } from "../html";

/** A year of which the holidays are shown, as an example. */
const SHOWN_YEAR = 2026;

/** The federal holidays as the days of notice pass over them. */
export function holidayTable(): string {
  return table(
    ["Holiday", `Observed in ${SHOWN_YEAR}`],
    federalHolidays(SHOWN_YEAR).map(({ name, keptOn }) => [escaped(name), dateWords(keptOn)]),
  );
}

/** What each caution goes by, and how sure that is. */
export const cautionSources: Readonly<Record<string, string>> = {
  "Buried lines":
    "49 CFR 196.103, read in the source: one call before digging, and wait for the marks. That private lines aren't marked: common practice",
  "Meters and vents": "49 CFR 192.353 and 192.355, read in the source: meters accessible, vents free",
  Dust: "29 CFR 1926.1153, read in the source",
  Lifting:
    "A wheelbarrow with 6 cu ft of crushed rock at 95 lb per cubic foot (US Army TM 9-2320-366-10-1, read in the source) weighs 570 lb. The NIOSH lifting constant is 51 lb under ideal conditions (read in the source). 50 lb bags: common practice",
  "Trailers and trucks": "GVWR is the maker’s maximum loaded weight: 49 CFR 390.5, from memory",
  Water: "IRC R401.3, read in the source: ground drops 6 in within the first 10 ft. Siding and weep holes: local code",
};

export function cautionTable(): string {
  return table(
    ["About", "Reminder", "Source"],
    [
      ...cautions.map(({ about, text }) => ({ about, text, source: cautionSources[about] ?? "" })),
      ...Object.values(coveringCautions),
      ...edgingCautions(EDGING_KINDS.map(({ name }) => name)),
    ].map(({ about, text, source }) => [escaped(about), escaped(text), escaped(source)]),
  );
}
