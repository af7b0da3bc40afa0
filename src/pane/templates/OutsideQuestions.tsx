import { someOf } from "../../sheets/someOf";
import type { Outside, Treatment } from "../../sheets/templates/findOutside";
import { Select } from "../Select";
import type { Saving } from "./useSaving";
import { shownValue } from "./words";

interface OutsideQuestionsProps {
  readonly saving: Saving;
  readonly outside: readonly Outside[];
}

const MOST_NAMED = 8;
const UNANSWERED = { value: "", label: "Choose…" };

/** What cells that become a template read outside of it, each asked about. */
export function OutsideQuestions({ saving, outside }: OutsideQuestionsProps) {
  const asked = outside.filter(({ cannotStay }) => cannotStay === undefined);
  const forced = outside.filter(({ cannotStay }) => cannotStay !== undefined);
  if (outside.length === 0) return <p class="below">Its formulas read nothing outside it except your rates.</p>;
  const all = [
    { value: "keep", label: "Read them in the workbook where it's opened" },
    { value: "value", label: "Use the values shown now" },
    { value: "ask", label: "Ask when it's opened" },
  ];
  return (
    <>
      <h3>It reads cells outside itself ({outside.length})</h3>
      {asked.length > 1 && (
        <Select
          label="For all of them"
          value=""
          options={[UNANSWERED, ...all]}
          onChoose={(treatment) =>
            treatment !== "" &&
            saving.treat(
              asked.map(({ reads }) => reads),
              treatment as Treatment,
            )
          }
        />
      )}
      {asked.map((one) => (
        <Select
          key={one.reads}
          label={one.reads}
          value={saving.treatments.get(one.reads) ?? ""}
          options={[UNANSWERED, ...optionsOf(one)]}
          onChoose={(treatment) => treatment !== "" && saving.treat([one.reads], treatment as Treatment)}
          note={`Read by ${someOf(one.readBy, MOST_NAMED)}`}
        />
      ))}
      {forced.length > 0 && (
        <ul class="lines">
          {forced.map(({ reads, readBy, cannotStay }) => (
            <li key={reads}>
              {reads}: {cannotStay}, so {someOf(readBy, MOST_NAMED)} will hold what{" "}
              {readBy.length === 1 ? "it shows" : "they show"}.
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function optionsOf({ reads, value, treatments }: Outside) {
  const labels: Readonly<Record<Treatment, string>> = {
    keep: `Read ${reads} in the workbook where it's opened`,
    value:
      value === undefined ? "Replace its formulas with the values shown" : `Use the value shown: ${shownValue(value)}`,
    ask: "Ask when it's opened",
  };
  return treatments.map((treatment) => ({ value: treatment, label: labels[treatment] }));
}
