import { Problem } from "../../quantities/problem";
import { totalOf } from "../../sheets/papers/customerSheet";
import { Button } from "../Button";
import { TextField } from "../Field";
import { moneyText } from "../numbers";
import { Select } from "../Select";
import { DAYS } from "./days";
import type { JobDetails } from "./details";
import { type Job, quoteOf } from "./makePapers";
import { TextArea } from "./TextArea";
import type { Papers } from "./usePapers";

interface CustomerPartProps {
  readonly work: Papers;
  readonly job: Job;
  readonly disabled: boolean;
}

/** What the customer is told, to look at before it is made. */
export function CustomerPart({ work: { details, type, makeForCustomer, opens }, job, disabled }: CustomerPartProps) {
  const unpriced = job.beds.filter(({ block }) => block.price === undefined);
  const quote = unpriced.length === 0 ? quoted(job, details) : undefined;
  const problem = quote instanceof Problem ? quote : undefined;
  const isOfDays = problem?.argument === DAYS.valid;
  const total = totalOf(job.beds.map(({ block }) => ({ price: block.price ?? 0 })));
  return (
    <section aria-labelledby="customer-heading">
      <h2 id="customer-heading">Price for the customer</h2>
      <p class="below">
        A workbook of its own with text and numbers alone: no cost, markup, formula, note or hidden cell is in it.
      </p>
      <TextField label="Customer" value={details.customer} onType={(customer) => type({ customer })} />
      <Select
        label="Price"
        value={details.byBed}
        options={[
          { value: "bed", label: "by bed" },
          { value: "sum", label: "one sum for the job" },
        ]}
        onChoose={(byBed) => type({ byBed: byBed as JobDetails["byBed"] })}
      />
      <TextField
        label="Holds for"
        unit="days"
        value={details.validDays}
        problem={isOfDays ? problem?.message : undefined}
        onType={(validDays) => type({ validDays })}
      />
      <TextArea
        label="Not included, one a line"
        rows={4}
        value={details.notIncluded}
        onType={(notIncluded) => type({ notIncluded })}
      />
      <TextArea label="Terms" value={details.terms} onType={(terms) => type({ terms })} />
      {unpriced.length > 0 && (
        <p class="notice trouble">
          {unpriced.map(({ block, where }) => block.name || where).join(", ")} has no price yet, so there is nothing to
          tell the customer. Look at its unit costs and rates.
        </p>
      )}
      {problem && !isOfDays && (
        <p role="alert" class="notice trouble">
          {problem.message}
        </p>
      )}
      {quote && !(quote instanceof Problem) && (
        <>
          <details>
            <summary>What it will say</summary>
            <dl class="cautions">
              {quote.beds.map(({ name, scope, price }) => (
                <>
                  <dt key={name}>
                    {name}
                    {quote.byBed && `: ${moneyText(price)}`}
                  </dt>
                  <dd>{scope}</dd>
                </>
              ))}
            </dl>
          </details>
          <p class="row">
            <span class="grow">
              {moneyText(total)}
              {quote.salesTax > 0 && `, with tax ${moneyText(total + quote.salesTax)}`}
            </span>
            <Button main off={disabled} onPress={() => void makeForCustomer()}>
              {opens ? "Open the customer's sheet" : "Download the customer's sheet"}
            </Button>
          </p>
        </>
      )}
    </section>
  );
}

function quoted(job: Job, details: JobDetails) {
  try {
    return quoteOf(job, details);
  } catch (error) {
    if (error instanceof Problem) return error;
    throw error;
  }
}
