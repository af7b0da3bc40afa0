import { useState } from "preact/hooks";
import { Problem } from "../../quantities/problem";
import type { Proposal } from "../../sheets/papers/proposal";
import { Button } from "../Button";
import { TextField } from "../Field";
import { Group } from "../Group";
import { dollarText } from "../numbers";
import { Select } from "../Select";
import { DAYS } from "./days";
import type { JobDetails } from "./details";
import type { Job } from "./makePapers";
import { DEPOSIT, proposalOf } from "./proposalOf";
import { SET_YOUR_OWN, samplesIn } from "./samplePrices";
import { TextArea } from "./TextArea";
import type { Papers } from "./usePapers";

interface ProposalPartProps {
  readonly work: Papers;
  readonly job: Job;
  readonly disabled: boolean;
}

/** The proposal to the customer, to check before it is made. */
export function ProposalPart({ work: { details, type, makeProposal, opens }, job, disabled }: ProposalPartProps) {
  /** The line about sample prices that the person accepted: another line has to be accepted again. */
  const [accepted, setAccepted] = useState<string>();
  const unpriced = job.beds.filter(({ block }) => block.price === undefined);
  const samples = samplesIn(job.beds);
  const isRefused = samples !== undefined && samples !== accepted;
  const proposal = unpriced.length === 0 ? proposed(job, details) : undefined;
  const problem = proposal instanceof Problem ? proposal : undefined;
  const problemOf = (field: string) => (problem?.argument === field ? problem.message : undefined);
  const field = (label: string, key: keyof JobDetails, more: { unit?: string; problem?: string | undefined } = {}) => (
    <TextField label={label} value={details[key]} {...more} onType={(text) => type({ [key]: text })} />
  );
  return (
    <section aria-labelledby="proposal-heading">
      <h2 id="proposal-heading">Proposal</h2>
      <p class="below">
        A separate workbook with text and numbers only: no costs, markups, formulas, notes, or hidden cells.
      </p>
      <Group heading="Letterhead" opens={!details.officeAddress && !details.officePhone && !details.officeLicense}>
        <TextArea
          label="Office address"
          rows={2}
          value={details.officeAddress}
          onType={(officeAddress) => type({ officeAddress })}
        />
        {field("Office phone", "officePhone")}
        {field("License number", "officeLicense")}
      </Group>
      {field("Proposal number", "proposalNumber")}
      {field("Customer", "customer")}
      <Select
        label="Price"
        value={details.byBed}
        options={[
          { value: "bed", label: "by bed" },
          { value: "sum", label: "one price for the job" },
        ]}
        onChoose={(byBed) => type({ byBed: byBed as JobDetails["byBed"] })}
      />
      {field("Good for", "validDays", { unit: "days", problem: problemOf(DAYS.valid) })}
      {field("Deposit", "depositPercent", { unit: "% of the total", problem: problemOf(DEPOSIT) })}
      <TextArea
        label="Not included, one per line"
        rows={4}
        value={details.notIncluded}
        onType={(notIncluded) => type({ notIncluded })}
      />
      <TextArea label="Terms" value={details.terms} onType={(terms) => type({ terms })} />
      {unpriced.length > 0 && (
        <p class="notice trouble">
          {unpriced.map(({ block, where }) => block.name || where).join(", ")} has no price yet, so there is nothing to
          propose. Check its unit costs and rates.
        </p>
      )}
      {problem && problem.argument !== DAYS.valid && problem.argument !== DEPOSIT && (
        <p role="alert" class="notice trouble">
          {problem.message}
        </p>
      )}
      {proposal && !(proposal instanceof Problem) && (
        <>
          <details>
            <summary>Preview</summary>
            <dl class="cautions">
              {proposal.scope.map(({ name, text, price }) => (
                <>
                  <dt key={name}>
                    {name}
                    {price !== undefined && `: ${dollarText(price)}`}
                  </dt>
                  <dd>{text}</dd>
                </>
              ))}
            </dl>
            <p>Good through {proposal.goodThrough || "a date you write in"}.</p>
          </details>
          {samples && (
            <>
              <p class="notice trouble">
                {samples} {SET_YOUR_OWN}
              </p>
              <label class="tick">
                <input
                  type="checkbox"
                  checked={!isRefused}
                  onChange={(event) => setAccepted(event.currentTarget.checked ? samples : undefined)}
                />
                <span class="grow">These are sample prices; make it anyway</span>
              </label>
            </>
          )}
          <p class="row">
            <span class="grow">{dueText(proposal)}</span>
            <Button
              main
              off={disabled || isRefused}
              title={isRefused ? "Set your own prices first" : undefined}
              onPress={() => void makeProposal(accepted)}
            >
              {opens ? "Open the proposal" : "Download the proposal"}
            </Button>
          </p>
        </>
      )}
    </section>
  );
}

function dueText({ price, options }: Proposal): string {
  if (!price) return `${options.length} options, for the customer to choose from`;
  const tax = price.salesTax > 0 ? `, with ${dollarText(price.salesTax)} sales tax` : "";
  const deposit = price.deposit > 0 ? `; deposit ${dollarText(price.deposit)}` : "";
  return `Total due ${dollarText(price.total)}${tax}${deposit}`;
}

function proposed(job: Job, details: JobDetails) {
  try {
    return proposalOf(job, details);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
