import { dateWords } from "../../quantities/calendar/calendarDay";
import type { DigNotice } from "../../quantities/calendar/digNotice";
import { toCents } from "../../quantities/cents";
import { type CrewPlan, crewPlan } from "../../quantities/job/crewPlan";
import type { JobOrder } from "../../quantities/job/order";
import { orderJob } from "../../quantities/job/orderJob";
import { crewSheet } from "../../sheets/papers/crewSheet";
import { customerSheet, type Quote } from "../../sheets/papers/customerSheet";
import { noticeSheet } from "../../sheets/papers/noticeSheet";
import { orderSheet } from "../../sheets/papers/orderSheet";
import { scopeOf } from "../../sheets/papers/scopeOf";
import type { Plan } from "../../sheets/plan";
import { validDays } from "./days";
import { type JobDetails, linesOf } from "./details";
import { measuresOf } from "./measures";
import { needsOf } from "./needsOf";
import { type NamedBed, noticeFacts } from "./noticeOf";
import type { FoundBed } from "./readJob";
import { today } from "./today";

/** The beds of a job together. */
export interface Job {
  readonly beds: readonly FoundBed[];
  readonly order: JobOrder;
  readonly crew: CrewPlan;
  /** People in the crew: the most that any of the beds was estimated with. */
  readonly people: number;
}

/** A paper as a plan for a sheet of its own. */
export interface PaperSheet {
  readonly name: string;
  readonly plan: Plan;
}

const CORNER = { row: 0, column: 0 };

/**
 * Adds the chosen beds up.
 *
 * @param beds at least one, all worked out.
 * @throws Problem where a bed's number cannot be used; it names the bed.
 */
export function jobOf(beds: readonly FoundBed[]): Job {
  const needs = beds.flatMap(({ block, worked }) => (worked ? [needsOf(block, worked)] : []));
  const order = orderJob(needs);
  const numbers = beds.flatMap(({ worked }) => (worked ? [worked.bed.numbers] : []));
  const people = Math.max(...numbers.map(({ crewSize }) => crewSize));
  const dayHours = Math.max(...numbers.map(({ crewDay }) => crewDay));
  return { beds, order, crew: crewPlan(needs, order, { people, dayHours }), people };
}

export function orderPaper({ order }: Job, details: JobDetails, notice: DigNotice | undefined): PaperSheet {
  const head = {
    office: details.office.trim(),
    job: details.job.trim(),
    place: details.place.trim(),
    date: dateWords(today()),
    wantedBy: notice ? dateWords(notice.startDate) : "",
  };
  return { name: named("Order", details), plan: orderSheet(order, head, details.paper, CORNER) };
}

/** The crew's sheet; the drawings are fetched when they are first wanted. */
export async function crewPaper(job: Job, details: JobDetails, notice: DigNotice | undefined): Promise<PaperSheet> {
  const { crewDrawings } = await import(/* webpackChunkName: "drawings" */ "../drawings");
  const head = {
    job: details.job.trim(),
    place: details.place.trim(),
    start: notice ? dateWords(notice.startDate) : "",
    people: job.people,
    drawings: await crewDrawings(namedBeds(job)),
    measures: measuresOf(job).map(({ measure, planned }) => ({
      measure: measure.label,
      unit: measure.unit,
      estimated: planned,
    })),
  };
  return { name: named("Crew", details), plan: crewSheet(job.crew, job.order, head, details.paper, CORNER) };
}

export function noticePaper(job: Job, details: JobDetails, notice: DigNotice): PaperSheet {
  const facts = noticeFacts(details, notice, namedBeds(job));
  return { name: named("Dig notice", details), plan: noticeSheet(facts, details.paper, CORNER) };
}

/**
 * What the customer is told. Prices are those that the blocks show.
 *
 * @throws Problem where the days for which the price holds cannot be used.
 * @throws {Error} for a bed without a price: the screen offers no customer's sheet then.
 */
export function quoteOf(job: Job, details: JobDetails): Quote {
  const date = today();
  const days = validDays(details);
  const cents = job.beds.reduce((sum, { block }) => sum + toCents(block.salesTax), 0);
  return {
    office: details.office.trim(),
    customer: details.customer.trim(),
    place: details.place.trim(),
    date: dateWords(date),
    validUntil: days === undefined ? "" : dateWords(date + days),
    beds: job.beds.map(({ block, worked }) => {
      if (!worked || block.price === undefined) throw new Error(`${block.name} has no price.`);
      const { numbers, names } = worked.bed;
      const { amounts } = worked.estimate;
      return {
        name: block.name || "Bed",
        price: block.price,
        scope: scopeOf({
          areaSqFt: amounts.stoneArea,
          depthIn: amounts.stoneDepth,
          stone: names.stone,
          stoneSizeIn: numbers.stoneSize,
          borderFt: amounts.borderRun + amounts.innerRun,
          borderHeightIn: numbers.borderHeight,
          scrapeIn: numbers.scrapeDepth,
          hauledOff: block.lines.some(({ key, quantity }) => key === "haul" && quantity > 0),
        }),
      };
    }),
    byBed: details.byBed === "bed",
    salesTax: cents / 100,
    notIncluded: linesOf(details.notIncluded),
    terms: details.terms.trim(),
  };
}

export function customerPlan(quote: Quote, details: JobDetails): Plan {
  return customerSheet(quote, details.paper, CORNER);
}

function namedBeds({ beds }: Job): NamedBed[] {
  return beds.flatMap(({ block, worked }) => (worked ? [{ ...worked, name: block.name || block.sheet }] : []));
}

/** `Order Alder Court`: the sheet's name, cut to what a host takes by the writer. */
function named(paper: string, details: JobDetails): string {
  return [paper, details.job.trim()].filter(Boolean).join(" ");
}
