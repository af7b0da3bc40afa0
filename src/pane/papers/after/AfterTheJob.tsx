import { Button } from "../../Button";
import { TextField } from "../../Field";
import { amountText } from "../../numbers";
import type { Job } from "../makePapers";
import type { PastJobsOnSheet } from "../readJob";
import type { Papers } from "../usePapers";
import { PastJobs } from "./PastJobs";
import { useActuals } from "./useActuals";

interface AfterTheJobProps {
  readonly work: Papers;
  readonly job: Job;
  readonly past: PastJobsOnSheet | undefined;
  readonly disabled: boolean;
}

/** What was really used comes back, and what past jobs say about the office's rates. */
export function AfterTheJob({ work, job, past, disabled }: AfterTheJobProps) {
  const { measures, typed, type, problemOf, hasSome, add } = useActuals(work, job);
  return (
    <section aria-labelledby="after-heading">
      <h2 id="after-heading">After the job</h2>
      <details>
        <summary>Type what was actually used</summary>
        <p class="below">From the crew sheet, for all checked beds together. Leave blank what wasn't counted.</p>
        {measures.map(({ measure: { key, label, unit }, planned }) => (
          <TextField
            key={key}
            label={`${label}, actual`}
            unit={unit}
            value={typed[key] ?? ""}
            note={`planned ${amountText(planned)}`}
            problem={problemOf(key)}
            onType={(text) => type(key, text)}
          />
        ))}
        <p class="row">
          <Button main off={disabled || !hasSome} onPress={() => void add()}>
            Add to past jobs
          </Button>
        </p>
      </details>
      <PastJobs work={work} past={past} disabled={disabled} />
    </section>
  );
}
