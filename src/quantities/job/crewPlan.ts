import { messages } from "../messages";
import { Problem } from "../problem";
import { wholeUp } from "../whole";
import { addedUp } from "./addedUp";
import { grouped } from "./asks";
import type { BedNeeds, HoursStep } from "./bedNeeds";
import { type CrewAmounts, crewAmounts } from "./crewAmounts";
import { crewSteps, type StepKey } from "./crewSteps";
import { crewTools, type Tool } from "./crewTools";
import type { JobOrder } from "./order";
import { sameName, spellingOf } from "./plain";

export interface Crew {
  /** A whole number, 1 or more. */
  readonly people: number;
  /** Hours of a working day, more than 0. */
  readonly dayHours: number;
  /** Labor hours of a step in place of what its beds take together, such as those typed over in the job's estimate. */
  readonly typedHours?: Readonly<Partial<Record<HoursStep, number>>>;
}

/** A step with its quantities and hours in all beds. */
export interface PlannedStep {
  readonly key: StepKey | "other";
  readonly label: string;
  readonly hint: string;
  readonly quantities: readonly { readonly what: string; readonly amount: number; readonly unit: string }[];
  /** Person-hours; undefined where they are in those of another step. */
  readonly hours: number | undefined;
  /** The label of the step whose hours contain this one's. */
  readonly hoursIn: string | undefined;
  /** Beds that take hours of this step, each with its own. */
  readonly byBed: readonly { readonly bed: string; readonly hours: number }[];
}

export interface CrewPlan {
  readonly amounts: CrewAmounts;
  readonly steps: readonly PlannedStep[];
  readonly personHours: number;
  /** Days of the whole crew, as a fraction. */
  readonly crewDays: number;
  /** Working days that the job occupies. */
  readonly wholeDays: number;
  readonly tools: readonly Tool[];
  readonly loads: readonly { readonly what: string; readonly loads: number; readonly weightTons: number | undefined }[];
}

/**
 * The crew's plan for a job: the steps in the order in which they are done, with quantities and hours of all beds
 * together, tools, loads and days.
 *
 * @param beds as given to `orderJob`; @param order what it gave.
 * @throws Problem for a crew without people or a day without hours.
 * @example crewPlan(beds, orderJob(beds), { people: 2, dayHours: 8 }).crewDays // 18 labor hours: 1.125
 */
export function crewPlan(
  beds: readonly BedNeeds[],
  order: JobOrder,
  { people, dayHours, typedHours = {} }: Crew,
): CrewPlan {
  if (!(people > 0)) throw new Problem("value", messages.zero("Crew size", "2"), "crewSize");
  if (!(dayHours > 0)) throw new Problem("value", messages.zero("Working day", "8"), "crewDay");
  const amounts = crewAmounts(beds, order);
  const standard = crewSteps.map((step) => planned(step, beds, amounts, typedHours));
  // What was added by hand is done before the site is left, and some of it before the digging.
  const [marks, ...work] = standard.filter(({ key }) => key !== "cleanUp");
  const inOrder = [
    ...(marks ? [marks] : []),
    ...otherSteps(beds, true),
    ...work,
    ...otherSteps(beds, false),
    ...standard.filter(({ key }) => key === "cleanUp"),
  ];
  const personHours = addedUp(inOrder.map(({ hours = 0 }) => hours));
  const crewDays = personHours / (people * dayHours);
  return {
    amounts,
    steps: inOrder,
    personHours,
    crewDays,
    wholeDays: wholeUp(crewDays),
    tools: crewTools(amounts, people),
    loads: order.lines
      .filter(({ key }) => key === "haul" || key.startsWith("delivery|"))
      .map(({ item, specification, order: loads, weightTons }) => ({
        what: `${item}: ${specification}`,
        loads,
        weightTons,
      })),
  };
}

function planned(
  step: (typeof crewSteps)[number],
  beds: readonly BedNeeds[],
  amounts: CrewAmounts,
  typedHours: NonNullable<Crew["typedHours"]>,
): PlannedStep {
  const { hours: from } = step;
  const byBed = from ? beds.map(({ name, work }) => ({ bed: name, hours: work?.hours[from] ?? 0 })) : [];
  return {
    key: step.key,
    label: step.label,
    hint: step.hint,
    quantities: step.quantities
      .map(({ amount, what, unit }) => ({ what, unit, amount: amounts[amount] }))
      .filter(({ amount }) => amount > 0),
    hours: from && (typedHours[from] ?? addedUp(byBed.map(({ hours }) => hours))),
    hoursIn: crewSteps.find(({ key }) => key === step.hoursIn)?.label,
    byBed: byBed.filter(({ hours }) => hours > 0),
  };
}

/** Hours added by hand, by what they are for: those that come first, or the others. */
function otherSteps(beds: readonly BedNeeds[], first: boolean): PlannedStep[] {
  const all = beds.flatMap(({ name, work }) =>
    (work?.otherHours ?? [])
      .filter(({ comesFirst = false }) => comesFirst === first)
      .map((other) => ({ ...other, bed: name })),
  );
  return grouped(all, ({ label }) => sameName(label)).map((others) => ({
    key: "other" as const,
    label: spellingOf(others.map(({ label }) => label)),
    hint: "",
    quantities: [],
    hours: addedUp(others.map(({ hours }) => hours)),
    hoursIn: undefined,
    byBed: others.map(({ bed, hours }) => ({ bed, hours })).filter(({ hours }) => hours > 0),
  }));
}
