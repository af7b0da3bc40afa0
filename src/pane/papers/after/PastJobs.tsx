import { type ComparedJob, compareJobs } from "../../../quantities/history/compareJobs";
import type { Lesson } from "../../../quantities/history/learn";
import { Button } from "../../Button";
import { amountText } from "../../numbers";
import type { PastJobsOnSheet } from "../readJob";
import type { Papers } from "../usePapers";
import { useLessons } from "./useLessons";

interface PastJobsProps {
  readonly work: Papers;
  readonly past: PastJobsOnSheet | undefined;
  readonly disabled: boolean;
}

/** Estimated against actual, by job and by line, and what that says about the office's rates. */
export function PastJobs({ work, past, disabled }: PastJobsProps) {
  const { entries, lessons, hasRates, changed, change, undo } = useLessons(work, past);
  if (!past || past.lines.length === 0) return <p class="below">No past jobs in this workbook yet.</p>;
  const jobs = compareJobs(entries);
  return (
    <>
      {past.unusable.length > 0 && (
        <p class="notice trouble">
          {past.unusable.length === 1 ? "A row" : "Rows"} of {past.sheet} without a number or an item{" "}
          {past.unusable.length === 1 ? "is" : "are"} left out: {past.unusable.map((row) => row + 1).join(", ")}.
        </p>
      )}
      <details>
        <summary>
          {jobs.length} past {jobs.length === 1 ? "job" : "jobs"} on {past.sheet}
        </summary>
        <JobsTable jobs={jobs} />
      </details>
      <h3>What past jobs say</h3>
      <dl class="cautions">
        {lessons.map((lesson) => (
          <>
            <dt key={lesson.measure.key}>{lesson.measure.label}</dt>
            <dd>
              {lesson.text}
              {lesson.verdict === "change" && lesson.proposal && (
                <ChangeButton lesson={lesson} disabled={disabled || !hasRates} onChange={() => void change(lesson)} />
              )}
            </dd>
          </>
        ))}
      </dl>
      {!hasRates && lessons.some(({ verdict }) => verdict === "change") && (
        <p class="below">To change a rate here, add a Rates sheet first (Rates).</p>
      )}
      {changed && (
        <p class="row">
          <span class="grow">{changed.title}</span>
          <Button off={disabled} onPress={() => void undo()}>
            Undo the rate change
          </Button>
        </p>
      )}
    </>
  );
}

interface ChangeButtonProps {
  readonly lesson: Lesson;
  readonly disabled: boolean;
  readonly onChange: () => void;
}

function ChangeButton({ lesson: { proposal, measure }, disabled, onChange }: ChangeButtonProps) {
  if (!proposal || !measure.rate) return null;
  const shown = (value: number) =>
    measure.rate?.kind === "share on top"
      ? `${amountText(value * 100)} %`
      : `${amountText(value)} ${measure.rate?.unit}`;
  return (
    <p class="row">
      <Button off={disabled} onPress={onChange}>
        Change “{measure.rate.label}” from {shown(proposal.now)} to {shown(proposal.proposed)}
      </Button>
    </p>
  );
}

/** The jobs below one another, so that the columns of all of them are below one heading. */
function JobsTable({ jobs }: { readonly jobs: readonly ComparedJob[] }) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" class="number">
            Estimated
          </th>
          <th scope="col" class="number">
            Actual
          </th>
          <th scope="col" class="number">
            Off by
          </th>
        </tr>
      </thead>
      {jobs.map(({ job, date, lines }) => (
        <tbody key={`${date} ${job}`}>
          <tr>
            <th scope="rowgroup" colSpan={4} class="group">
              {job || "Unnamed"}
            </th>
          </tr>
          {lines.map(({ measure, estimated, actual, ratio }) => (
            <tr key={measure.key}>
              <th scope="row">
                {measure.label} <span class="below">{measure.unit}</span>
              </th>
              <td class="number">{amountText(estimated)}</td>
              <td class="number">{amountText(actual)}</td>
              <td class="number">{ratio === undefined ? "" : offBy(ratio)}</td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}

function offBy(ratio: number): string {
  const percent = Math.round((ratio - 1) * 100);
  return `${percent > 0 ? "+" : ""}${percent} %`;
}
