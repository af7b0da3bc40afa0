import type { CrewPlan, PlannedStep } from "../../quantities/job/crewPlan";
import type { JobOrder, OrderLine } from "../../quantities/job/order";
import { must } from "../../quantities/must";
import { printTape } from "../../quantities/tape";
import type { Anchor } from "../../spreadsheet/areas";
import { cautions } from "../cautions";
import { compose, type DraftRow } from "../compose";
import { inLines } from "../file/lines";
import type { PlacedPicture, Plan } from "../plan";
import { figure } from "./orderSheet";
import { blankLine, factLine, headingLine, type Paper, pageOf, textCell, titleLine } from "./paper";

/** A bed's drawing. */
export interface BedDrawing {
  readonly bed: string;
  /** PNG, base64. */
  readonly png: string;
  readonly altText: string;
}

/** What the crew's sheet says beside the plan of the day. Text that is "" leaves a blank to write in. */
export interface CrewHead {
  readonly job: string;
  readonly place: string;
  /** Dates in words. */
  readonly start: string;
  readonly people: number;
  readonly drawings: readonly BedDrawing[];
  /** What is to be counted at the end, with what was estimated. */
  readonly measures: readonly { readonly measure: string; readonly unit: string; readonly estimated: number }[];
}

const WIDTHS = [5, 24, 34, 34, 9, 16];
/** Characters that fit from the second column to the last. */
const ACROSS = 104;
/** Two drawings stand side by side, each over three columns. */
const HALVES = [0, 3];
const DRAWING_ROWS = 15;

type StepName = PlannedStep["key"];

/** At which step a caution stands whole, by what it is about. */
const CAUTION_AT: Readonly<Partial<Record<StepName, readonly string[]>>> = {
  marks: ["Buried lines"],
  scrape: ["Trailers and trucks"],
  level: ["Water"],
  stone: ["Dust", "Lifting", "Meters and vents"],
};

/** At which other steps it holds as well; there one line leads back to it. */
const AGAIN_AT: Readonly<Partial<Record<StepName, readonly { readonly about: string; readonly where?: string }[]>>> = {
  scrape: [{ about: "Buried lines" }],
  border: [{ about: "Buried lines" }, { about: "Dust", where: "where stone is cut" }],
};

/**
 * The crew's sheet: drawings, the steps in the order in which they are done with quantities, hours and boxes to tick,
 * the cautions where they belong, what to cut from what, tools and loads, and a place to write what was really used.
 *
 * @param plan from `crewPlan`; @param order from `orderJob`.
 */
export function crewSheet(plan: CrewPlan, order: JobOrder, head: CrewHead, paper: Paper, at: Anchor): Plan {
  const { job, place, start, people, drawings, measures } = head;
  const days = `${figure(plan.personHours)} person-hours: ${figure(plan.crewDays)} days for ${people} people`;
  const top: DraftRow[] = [
    titleLine(`Crew sheet${job ? `: ${job}` : ""}`),
    fact("Place", place),
    fact("Start", start),
    fact("Time", days),
    blankLine,
    ...(drawings.length > 0 ? [headingLine("Drawings", "", "", "", "", "")] : []),
  ];
  const drawingRows = Math.ceil(drawings.length / 2) * (DRAWING_ROWS + 1);
  const pictures = drawings.map((drawing, index) => placed(drawing, index, top.length));
  const names = drawings.map(({ bed }) => bed);
  const room: DraftRow[] = Array.from({ length: drawingRows }, (_, row) =>
    row % (DRAWING_ROWS + 1) === 0 ? captions(names, (row / (DRAWING_ROWS + 1)) * 2) : blankLine,
  );
  const steps: DraftRow[] = [
    headingLine("Done", "Step", "How much", "How", "Person-h", "Really, h"),
    ...plan.steps.flatMap((step) => stepRows(step, plan.steps)),
    blankLine,
  ];
  const rest: DraftRow[] = [
    headingLine("Cut", "", "What", "From one piece or roll", "", ""),
    ...order.lines.flatMap(cutRows),
    blankLine,
    headingLine("Load", "Tools", "For", "", "", ""),
    ...plan.tools.map(({ tool, count, why }) => ticked(count === undefined ? tool : `${count} × ${tool}`, why)),
    ...plan.loads.map(({ what, loads, weightTons }) =>
      ticked(`${loads} × load`, `${what}${weightTons === undefined ? "" : `, ${figure(weightTons)} tons in all`}`),
    ),
    blankLine,
    headingLine("", "Really used", "Unit", "", "Planned", "Really"),
    ...measures.map(
      ({ measure, unit, estimated }): DraftRow => ({
        cells: [
          undefined,
          textCell(measure),
          textCell(unit),
          undefined,
          { content: estimated, format: "two" },
          { content: "", look: "blankToFill" },
        ],
      }),
    ),
    fact("Notes", ""),
    fact("", ""),
  ];
  const rows = [...top, ...room, ...steps, ...rest];
  return {
    ...compose("crew sheet", rows, WIDTHS, at),
    pictures,
    page: pageOf(paper, { breaksAbove: [top.length + room.length + steps.length] }),
  };
}

function fact(label: string, text: string): DraftRow {
  return { cells: [undefined, ...factLine(label, text).cells] };
}

function ticked(what: string, text: string): DraftRow {
  return { cells: [textCell("☐", "checkBox"), textCell(what, "wrapped"), textCell(text)] };
}

function captions(names: readonly string[], first: number): DraftRow {
  const cells: DraftRow["cells"][number][] = WIDTHS.map(() => undefined);
  for (const [side, column] of HALVES.entries()) {
    const name = names[first + side];
    if (name !== undefined) cells[column] = textCell(name, "label");
  }
  return { cells };
}

function placed({ png, altText }: BedDrawing, index: number, firstRow: number): PlacedPicture {
  const row = firstRow + Math.floor(index / 2) * (DRAWING_ROWS + 1) + 1;
  return { area: { row, column: must(HALVES[index % 2]), rows: DRAWING_ROWS - 1, columns: 3 }, png, altText };
}

/** The cautions of a step, each line a row: those that stand elsewhere first, by a word of where. */
function cautionRows(key: StepName, steps: readonly PlannedStep[]): DraftRow[] {
  const again = (AGAIN_AT[key] ?? []).map(({ about, where }) => {
    const whole = steps.find((step) => CAUTION_AT[step.key]?.includes(about));
    return `${about}${where ? `, ${where}` : ""}: see at “${whole?.label}”.`;
  });
  const whole = cautions
    .filter(({ about }) => CAUTION_AT[key]?.includes(about))
    .map(({ about, text }) => `${about}: ${text}`);
  return [again.join(" "), ...whole]
    .filter(Boolean)
    .flatMap((text) => inLines(text, ACROSS))
    .map((line) => ({ cells: [undefined, textCell(line, "caution")] }));
}

function stepRows(
  { key, label, hint, quantities, hours, hoursIn }: PlannedStep,
  steps: readonly PlannedStep[],
): DraftRow[] {
  const amounts = quantities.map(({ amount, unit, what }) => [figure(amount), unit, what].filter(Boolean).join(" "));
  return [
    {
      cells: [
        textCell("☐", "checkBox"),
        textCell(label, "wrapped"),
        textCell(amounts.join("; "), "wrapped"),
        textCell(hint, "wrapped"),
        hours === undefined
          ? textCell(hoursIn ? `with ${hoursIn.toLowerCase()}` : "", "wrapped")
          : { content: hours, format: "two", look: "topNumber" },
        { content: "", look: "blankToFill" },
      ],
    },
    ...cautionRows(key, steps),
  ];
}

/** One row for each piece or roll that is cut: what comes from it, and what is left over. */
function cutRows({ item, specification, cutting }: OrderLine): DraftRow[] {
  if (!cutting) return [];
  const whole = cutting.whole.map(({ bed, count }) => `${count} whole for ${bed}`);
  const stocks = cutting.stocks.map(({ cuts, leftOverFt }, index) => {
    const parts = cuts.map(({ bed, part, lengthFt }) => `${bed} ${part}: ${printTape(lengthFt)}`);
    return `${index + 1}. ${parts.join(" + ")}; ${printTape(leftOverFt)} left over`;
  });
  return [...(whole.length > 0 ? [whole.join(", ")] : []), ...stocks].map(
    (text, index): DraftRow => ({
      cells: [
        textCell("☐", "checkBox"),
        index === 0 ? textCell(item, "label") : undefined,
        index === 0 ? textCell(specification) : undefined,
        textCell(text),
      ],
    }),
  );
}
