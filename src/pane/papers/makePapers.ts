import { dateWords } from "../../quantities/calendar/calendarDay";
import type { DigNotice } from "../../quantities/calendar/digNotice";
import { type CrewPlan, crewPlan } from "../../quantities/job/crewPlan";
import { inOneJob } from "../../quantities/job/inOneJob";
import type { JobOrder } from "../../quantities/job/order";
import { orderJob } from "../../quantities/job/orderJob";
import { distinctNames } from "../../quantities/job/plain";
import { must } from "../../quantities/must";
import type { JobOnSheet } from "../../sheets/job/readJobBlock";
import { crewSheet } from "../../sheets/papers/crewSheet";
import { noticeSheet } from "../../sheets/papers/noticeSheet";
import { orderSheet } from "../../sheets/papers/orderSheet";
import type { Plan } from "../../sheets/plan";
import type { JobDetails } from "./details";
import { asTyped, ownNeeds, typedHours } from "./jobTogether";
import { measuresOf } from "./measures";
import { needsOf, secondNeedsIn } from "./needsOf";
import { type NamedBed, noticeFacts } from "./noticeOf";
import type { FoundBed } from "./readJob";
import { today } from "./today";

/** The beds of a job together. */
export interface Job {
  /** The job's own estimate in the workbook, where it has one for just these beds. */
  readonly onSheet: JobOnSheet | undefined;
  /** All versions of the job in the workbook, that one among them. */
  readonly options: readonly JobOnSheet[];
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
 * Adds the chosen beds up, on the terms of one job. Where the workbook has an estimate of the job, what was typed over or
 * added there counts.
 *
 * @param beds at least one, all worked out; @param onSheet the job's own estimate.
 * @param jobs all job estimates of the workbook: those of the same name are options of one job.
 * @throws Problem where a bed's number cannot be used; it names the bed.
 */
export function jobOf(beds: readonly FoundBed[], onSheet?: JobOnSheet, jobs: readonly JobOnSheet[] = []): Job {
  const needs = inOneJob(
    workedOut(beds).flatMap(({ block, worked, name }) => [
      { ...needsOf(block, worked), name },
      ...secondNeedsIn(block, worked, name),
    ]),
  );
  const withOwn = onSheet ? [...needs, ownNeeds(onSheet)] : needs;
  const order = onSheet ? asTyped(orderJob(withOwn), onSheet) : orderJob(needs);
  const numbers = beds.flatMap(({ worked }) => (worked ? [worked.bed.numbers] : []));
  const people = Math.max(...numbers.map(({ crewSize }) => crewSize));
  const dayHours = Math.max(...numbers.map(({ crewDay }) => crewDay));
  const options = onSheet ? jobs.filter(({ name }) => name === onSheet.name) : [];
  const terms = { people, dayHours, ...(onSheet && { typedHours: typedHours(onSheet) }) };
  return { beds, onSheet, options, order, crew: crewPlan(withOwn, order, terms), people };
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
    drawings: await crewDrawings(namedBeds(job), job.order),
    typedOver: typedOverIn(job),
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

/** Where the beds of a job say otherwise than they are drawn, with the names that the order has for them. */
export const typedOverIn = ({ beds }: Job): string[] =>
  workedOut(beds).flatMap(({ name, notes }) => notes.map((note) => `${name}. ${note}`));

/** The beds that were worked out, each by a name of its own: the cut list tells by it which bed a length is for. */
function workedOut(beds: readonly FoundBed[]) {
  const found = beds.flatMap(({ block, worked, notes = [] }) => (worked ? [{ block, worked, notes }] : []));
  const names = distinctNames(found.map(({ block }) => block.name || block.sheet));
  return found.map((bed, index) => ({ ...bed, name: must(names[index]) }));
}

/** The beds of a job by the names that its order has for them. */
export const namedBeds = ({ beds }: Job): NamedBed[] =>
  workedOut(beds).map(({ worked, name }) => ({ ...worked, name }));

/** `Order Alder Court`: the sheet's name, cut to what a host takes by the writer. */
function named(paper: string, details: JobDetails): string {
  return [paper, details.job.trim()].filter(Boolean).join(" ");
}
