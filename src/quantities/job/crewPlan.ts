import { EDGING_KINDS, type EdgingKind, edgingKindOf, METAL } from "../edgingKinds";
import { EDGING_WORK, edgingCautions } from "../edgingWork";
import { messages } from "../messages";
import { must } from "../must";
import { Problem } from "../problem";
import { TON } from "../soldBy";
import type { Caution } from "../tables";
import { wholeUp } from "../whole";
import { addedUp } from "./addedUp";
import { grouped } from "./asks";
import type { BedNeeds, HoursStep } from "./bedNeeds";
import { type CrewAmounts, crewAmounts } from "./crewAmounts";
import { crewSteps, type Step, type StepKey } from "./crewSteps";
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
  /** Cautions of the edging that the beds have, at the step they belong to. */
  readonly cautions: readonly Caution[];
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
  const kinds = kindsOf(beds);
  const edging = edgingSteps(beds, kinds, order, typedHours);
  const standard = crewSteps.flatMap((step): PlannedStep[] => {
    if (step.key === "border") return edging;
    const [first] = edging;
    const one = planned(step, beds, amounts, typedHours);
    // A bed without edging has its caution where the stone is spread.
    if (step.key === "stone") {
      const quantities = [...one.quantities, ...orderedAsSold(order)];
      return [{ ...one, quantities, cautions: edgingCautions(namesOf(kinds.filter(isNotSet))) }];
    }
    if (step.hoursIn !== "border") return [one];
    // Where nothing is set there is no gap to close.
    return first ? [{ ...one, hint: closingHint(step, kinds), hoursIn: first.label }] : [];
  });
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

/** Stone that comes in something else than tons, such as bags to look for on the pallets. */
function orderedAsSold({ lines }: JobOrder): PlannedStep["quantities"] {
  return lines
    .filter(({ key, orderUnit }) => key.startsWith("stone|") && orderUnit !== TON.unit)
    .map(({ order, orderUnit }) => ({ amount: order, unit: orderUnit, what: "ordered" }));
}

/** What a bed is edged with; what was added for the whole job has no edging of its own, and goes with the first bed's. */
function kindIn(beds: readonly BedNeeds[], { border = beds.find((bed) => bed.border)?.border }: BedNeeds): EdgingKind {
  return edgingKindOf(border?.kind);
}

/** What the beds are edged with. */
const kindsOf = (beds: readonly BedNeeds[]) =>
  EDGING_KINDS.filter((kind) => beds.some((bed) => kindIn(beds, bed) === kind));

const isNotSet = ({ lines }: EdgingKind) => lines.setEdging === undefined;
const namesOf = (kinds: readonly EdgingKind[]) => kinds.map(({ name }) => name);

/** How the gaps are closed, each way once. */
const closingHint = (step: Step, kinds: readonly EdgingKind[]) =>
  [...new Set(kinds.filter((kind) => !isNotSet(kind)).map(({ name }) => EDGING_WORK[name]?.close ?? step.hint))].join(
    " ",
  );

/** Setting the edging: a step for each kind that the beds have, with its own hours. */
function edgingSteps(
  beds: readonly BedNeeds[],
  all: readonly EdgingKind[],
  order: JobOrder,
  typedHours: NonNullable<Crew["typedHours"]>,
): PlannedStep[] {
  const step = must(crewSteps.find(({ key }) => key === "border"));
  const kinds = all.filter((kind) => !isNotSet(kind));
  const hoursOf = (some: readonly BedNeeds[]) => addedUp(some.map(({ work }) => work?.hours.border ?? 0));
  const whole = hoursOf(beds);
  return kinds.map((kind): PlannedStep => {
    const own = beds.filter((bed) => kindIn(beds, bed) === kind);
    const amounts = crewAmounts(own, { ...order, lines: order.lines.filter(({ key }) => isOfKind(key, kind)) });
    const hours = hoursOf(own);
    // Hours typed for the whole job are split as they were worked out.
    const share = whole > 0 ? hours / whole : 1 / kinds.length;
    const typed = typedHours.border === undefined ? {} : { border: typedHours.border * share };
    return { ...planned(stepOf(step, kind), own, amounts, typed), cautions: edgingCautions([kind.name]) };
  });
}

/** Whether a line of the order is for this kind of edging; the keys of metal begin with its height. */
function isOfKind(key: string, kind: EdgingKind): boolean {
  const [what, first = ""] = key.split("|");
  if (what === "sand") return kind.inSand === true;
  return kind === METAL ? /^\d/.test(first) : first === kind.name;
}

/** The step of setting edging in the words of its kind. */
function stepOf(step: Step, { name, lines }: EdgingKind): Step {
  const unitOf = { pieces: lines.edging?.unit, stakes: lines.stakeLine?.unit } as const;
  return {
    ...step,
    ...EDGING_WORK[name]?.step,
    quantities: step.quantities.map((one) => ({
      ...one,
      unit: (one.amount === "pieces" || one.amount === "stakes" ? unitOf[one.amount] : undefined) ?? one.unit,
    })),
  };
}

function planned(
  step: Step,
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
    cautions: [],
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
    cautions: [],
    byBed: others.map(({ bed, hours }) => ({ bed, hours })).filter(({ hours }) => hours > 0),
  }));
}
