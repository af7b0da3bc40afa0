import { dateLine } from "../../quantities/calendar/calendarDay";
import { toCents } from "../../quantities/cents";
import { readNumber } from "../../quantities/numberText";
import { Problem } from "../../quantities/problem";
import { type Proposal, type ProposalPrice, proposalSheet, type ScopeItem } from "../../sheets/papers/proposal";
import { scopeOf } from "../../sheets/papers/scopeOf";
import type { Plan } from "../../sheets/plan";
import { validDays } from "./days";
import { type JobDetails, linesOf } from "./details";
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
  const taxCents = job.beds.reduce((sum, { block }) => sum + toCents(block.salesTax), 0);
  return {
    letterhead: letterheadOf(details),
    number: details.proposalNumber.trim(),
    date: dateLine(date),
    goodThrough: days === undefined ? "" : dateLine(date + days),
    customer: details.customer.trim(),
    place: details.place.trim(),
    scope: job.beds.map((bed) => scopeItem(bed, details.byBed === "bed")),
    options: [],
    price: priceOf(totalOf(job), taxCents / 100, depositShare(details)),
    notIncluded: linesOf(details.notIncluded),
    terms: details.terms.trim(),
  };
}

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

function scopeItem({ block, worked }: FoundBed, isPriced: boolean): ScopeItem {
  if (!worked || block.price === undefined) throw new Error(`${block.name} has no price.`);
  const { numbers, names } = worked.bed;
  const { amounts } = worked.estimate;
  const has = (key: string) => block.lines.some((line) => line.key === key && line.quantity > 0);
  return {
    name: block.name || "Bed",
    ...(isPriced && { price: block.price }),
    text: scopeOf({
      areaSqFt: amounts.stoneArea,
      depthIn: amounts.stoneDepth,
      stone: names.stone,
      stoneSizeIn: numbers.stoneSize,
      borderFt: amounts.borderRun + amounts.innerRun,
      borderHeightIn: numbers.borderHeight,
      scrapeIn: numbers.scrapeDepth,
      hauledOff: has("haul"),
      hasFabric: has("fabric"),
      ownWork: block.lines.filter(({ key, label }) => key === undefined && label.trim()).map(({ label }) => label),
    }),
  };
}
