import { dateLine } from "../../quantities/calendar/calendarDay";
import { toCents } from "../../quantities/cents";
import { edgingKindOf } from "../../quantities/edgingKinds";
import type { PricedJob } from "../../quantities/job/priceJob";
import { must } from "../../quantities/must";
import { readNumber } from "../../quantities/numberText";
import { Problem } from "../../quantities/problem";
import type { JobOnSheet } from "../../sheets/job/readJobBlock";
import {
  type Proposal,
  type ProposalOption,
  type ProposalPrice,
  proposalSheet,
  type ScopeItem,
} from "../../sheets/papers/proposal";
import { scopeOf } from "../../sheets/papers/scopeOf";
import type { Plan } from "../../sheets/plan";
import { validDays } from "./days";
import { type JobDetails, linesOf } from "./details";
import { differsForCustomer, jobHas, ownScope, priceTogether, shareOf } from "./jobTogether";
import type { Job } from "./makePapers";
import type { FoundBed } from "./readJob";
import { today } from "./today";

/** What a problem calls the deposit; the screen says it at the field. */
export const DEPOSIT = "Deposit";
const CORNER = { row: 0, column: 0 };

/**
 * The proposal for a job. Prices are those that the blocks show, and tax is theirs.
 *
 * @throws Problem where the days for which the price is good, or the deposit, can't be used.
 * @throws {Error} for a bed without a price: the screen offers no proposal then.
 */
export function proposalOf(job: Job, details: JobDetails): Proposal {
  const date = today();
  const days = validDays(details);
  return {
    letterhead: letterheadOf(details),
    number: details.proposalNumber.trim(),
    date: dateLine(date),
    goodThrough: days === undefined ? "" : dateLine(date + days),
    customer: details.customer.trim(),
    place: details.place.trim(),
    scope: scopeOfJob(job, details.byBed === "bed"),
    options: optionsOf(job),
    ...(isOpen(job) ? {} : { price: priceOfJob(job, depositShare(details)) }),
    notIncluded: linesOf(details.notIncluded),
    terms: details.terms.trim(),
  };
}

/**
 * The price of beds that have no job estimate in the workbook yet: priced as one job where all of them have blocks.
 * A row of a list has the price that it shows, and a bed by itself the price of its block.
 */
function pricedAsOne({ beds, onSheet }: Job): PricedJob | undefined {
  return !onSheet && beds.length > 1 && beds.every((bed) => bed.onSheet) ? priceTogether(beds).job : undefined;
}

function priceOfJob(job: Job, share: number): ProposalPrice {
  if (job.onSheet) return priceOnSheet(job.onSheet, share);
  const priced = pricedAsOne(job);
  if (priced) return priceOf(Number(priced.amounts.price), Number(priced.amounts.taxSum), share);
  const taxCents = job.beds.reduce((sum, { block }) => sum + toCents(block.salesTax), 0);
  return priceOf(totalOf(job), taxCents / 100, share);
}

/** Options side by side, where the job has more than one version. */
function optionsOf({ options }: Job): ProposalOption[] {
  if (options.length < 2) return [];
  const prices = options.map((option) => priceOnSheet(option, 0));
  const first = toCents(prices[0]?.total ?? 0);
  return options.map(({ option, differs, isChosen }, index) => {
    const { price, salesTax, total } = must(prices[index]);
    const difference = (toCents(total) - first) / 100;
    return {
      name: option || `Option ${index + 1}`,
      differs: differsForCustomer(differs) || "as described",
      price,
      salesTax,
      total,
      difference,
      isChosen,
    };
  });
}

/** Whether the customer still has to pick one of several options. */
const isOpen = ({ options }: Job) => options.length > 1 && options.filter(({ isChosen }) => isChosen).length !== 1;

/** The beds, and the lines of the job's own estimate in their place. */
function scopeOfJob(job: Job, isByBed: boolean): ScopeItem[] {
  const shares = pricedAsOne(job)?.byBed;
  const { onSheet } = job;
  const jobBuys = (what: Parameters<typeof jobHas>[0]) => !onSheet || jobHas(what, onSheet);
  const beds = job.beds.map((bed, index) =>
    scopeItem(
      bed,
      jobBuys,
      isByBed ? ((job.onSheet && shareOf(bed, job.onSheet)) ?? shares?.[index] ?? bed.block.price) : undefined,
    ),
  );
  if (!job.onSheet) return beds;
  const { first, after } = ownScope(job.onSheet);
  const item = ({ label }: { readonly label: string }): ScopeItem => ({ name: label, text: "" });
  return [...first.map(item), ...beds, ...after.map(item)];
}

/**
 * What is due as the job's own estimate says, to the cent. Its deposit counts where it has one.
 *
 * @param share of the total that is the deposit where the estimate has none.
 * @throws Problem where the estimate shows no price.
 */
export function priceOnSheet({ amounts, sheet }: JobOnSheet, share: number): ProposalPrice {
  const { listPrice, discountSum, price, taxSum = 0, priceWithTax, depositSum = 0 } = amounts;
  if (price === undefined || priceWithTax === undefined || listPrice === undefined)
    throw new Problem("value", `The job estimate on the sheet ${sheet} has no price. It says why.`, "job");
  const [total, own] = [toCents(priceWithTax), toCents(depositSum)];
  const deposit = own > 0 ? own : toCents((total / 100) * share);
  return {
    ...(discountSum && {
      discount: { listPrice: inCents(listPrice), label: "Discount", amount: inCents(discountSum) },
    }),
    price: inCents(price),
    salesTax: inCents(taxSum),
    total: total / 100,
    deposit: deposit / 100,
    balance: (total - deposit) / 100,
  };
}

const inCents = (amount: number) => toCents(amount) / 100;

/** The office on top of a proposal, as typed in the pane. */
export function letterheadOf(details: JobDetails): Proposal["letterhead"] {
  return {
    office: details.office.trim(),
    address: details.officeAddress.trim(),
    phone: details.officePhone.trim(),
    license: details.officeLicense.trim(),
  };
}

/** The prices of a job's beds before tax, added in whole cents. */
export function totalOf({ beds }: Job): number {
  return beds.reduce((cents, { block }) => cents + toCents(block.price ?? 0), 0) / 100;
}

/**
 * What is due, of a price without a discount.
 *
 * @param price before tax; @param salesTax on it in money, both in dollars, rounded to the cent.
 * @param share of the total that is the deposit, 0 for none. It is rounded to the cent.
 */
export function priceOf(price: number, salesTax: number, share: number): ProposalPrice {
  const totalCents = toCents(price) + toCents(salesTax);
  const depositCents = toCents((totalCents / 100) * share);
  return {
    price,
    salesTax,
    total: totalCents / 100,
    deposit: depositCents / 100,
    balance: (totalCents - depositCents) / 100,
  };
}

/**
 * The share of the total that is due on signing; 0 where none was typed.
 *
 * @throws Problem for what is no percentage from 0 to 100.
 */
export function depositShare({ depositPercent }: JobDetails): number {
  const text = depositPercent.trim().replace(/\s*%$/, "");
  if (text === "") return 0;
  const percent = readNumber(text, DEPOSIT);
  if (percent < 0 || percent > 100)
    throw new Problem("value", `${DEPOSIT} is ${percent}%, which isn't between 0% and 100%. Type 30 for 30%.`, DEPOSIT);
  return percent / 100;
}

export function proposalPlan(proposal: Proposal, details: JobDetails): Plan {
  return proposalSheet(proposal, details.paper, CORNER);
}

/** @param jobBuys whether the job's own estimate still has a line, too. */
function scopeItem(
  { block, worked }: FoundBed,
  jobBuys: (what: Parameters<typeof jobHas>[0]) => boolean,
  price: number | undefined,
): ScopeItem {
  if (!worked || block.price === undefined) throw new Error(`${block.name} has no price.`);
  const { numbers, names } = worked.bed;
  const { amounts } = worked.estimate;
  const has = (key: string) => block.lines.some((line) => line.key === key && line.quantity > 0);
  const edging = edgingKindOf(names.edgingKind);
  // A cut edge is labor alone.
  const isEdged = edging.lines.edging ? jobBuys("edging") : has("setEdging");
  return {
    name: block.name || "Bed",
    ...(price !== undefined && { price }),
    text: scopeOf({
      areaSqFt: amounts.stoneArea,
      depthIn: amounts.stoneDepth,
      stone: names.stone,
      stoneSizeIn: numbers.stoneSize,
      borderFt: isEdged ? amounts.borderRun + amounts.innerRun : 0,
      edging,
      borderHeightIn: numbers.borderHeight,
      ...(has("setSecondEdging") && {
        second: {
          borderFt: amounts.secondRun,
          edging: edgingKindOf(names.secondKind),
          borderHeightIn: numbers.secondHeight,
        },
      }),
      scrapeIn: numbers.scrapeDepth,
      hauledOff: has("haul") && jobBuys("haul"),
      hasFabric: has("fabric") && jobBuys("fabric"),
      ownWork: block.lines.filter(({ key, label }) => key === undefined && label.trim()).map(({ label }) => label),
    }),
  };
}
