import { Button } from "../Button";
import { dollarText, shareText } from "../numbers";
import { UpdatePreviewPanel } from "../UpdatePreview";
import { JobOptions } from "./JobOptions";
import type { Job } from "./makePapers";
import { ownTerms } from "./ownTerms";
import type { Papers } from "./usePapers";

interface JobPriceProps {
  readonly work: Papers;
  readonly job: Job;
  readonly disabled: boolean;
}

/** What the beds cost as one job, and its estimate in the workbook. */
export function JobPrice({ work, job: { onSheet, beds, options, order }, disabled }: JobPriceProps) {
  const { together, advice, insertJob, details, addOption, there, outdated, update } = work;
  const { value, problem } = together;
  if (problem) return <p class="notice trouble">{problem}</p>;
  if (!value) return null;
  const { job, apart } = value;
  const { price, profit, marginOnPrice } = onSheet?.amounts ?? (job.amounts as Readonly<Record<string, number>>);
  const saved = apart === undefined || price === undefined ? 0 : apart - price;
  const terms = onSheet ? [] : ownTerms(beds);
  const sheetName = details.job.trim() || "Job";
  return (
    <section aria-labelledby="job-price-heading">
      <h2 id="job-price-heading">Price of the job</h2>
      {price === undefined ? (
        <p class="notice trouble">The job estimate on the sheet {onSheet?.sheet} has no price. It says why.</p>
      ) : (
        <p>
          <strong>{dollarText(price)}</strong> before tax for {beds.length === 1 ? "1 bed" : `${beds.length} beds`}
          {profit !== undefined && `, profit ${dollarText(profit)} (margin ${shareText(marginOnPrice)})`}.
          {saved > 0 &&
            apart !== undefined &&
            ` Priced one by one they come to ${dollarText(apart)}: ${dollarText(saved)} more.`}
        </p>
      )}
      {terms.length > 0 && (
        <ul class="notice">
          {terms.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      {[...order.lines.flatMap(({ warnings = [] }) => warnings), ...advice].map((warning) => (
        <p key={warning} class="notice">
          {warning}
        </p>
      ))}
      {onSheet && (
        <p class="below">
          From the job estimate on the sheet {onSheet.sheet}. The order, the crew sheet, and the proposal follow it.
        </p>
      )}
      {there && outdated.length > 0 && !update.preview && (
        <div class="notice">
          <p>The job estimate on the sheet {there.sheet} doesn't fit these beds yet:</p>
          <ul>
            {outdated.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </div>
      )}
      {update.preview ? (
        <UpdatePreviewPanel
          where={update.preview.where}
          preview={update.preview}
          replaced={update.replaced}
          onTick={update.tick}
          onWrite={update.write}
          onCancel={update.cancel}
        />
      ) : (
        <p class="row">
          {there && (
            <Button main={outdated.length > 0} off={disabled} onPress={() => void update.look()}>
              Update job estimate
            </Button>
          )}
          {!onSheet && (
            <Button main={!there} off={disabled} onPress={() => void insertJob()}>
              {there ? "Add another job estimate" : "Add job estimate"}
            </Button>
          )}
        </p>
      )}
      {onSheet ? (
        <JobOptions addOption={addOption} options={options} disabled={disabled} />
      ) : (
        <p class="below">
          The job estimate is a live sheet, “{sheetName}”: its beds, its lines priced once, discount, tax, and deposit,
          with room for lines of your own.
        </p>
      )}
    </section>
  );
}
