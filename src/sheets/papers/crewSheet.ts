import type { CrewPlan, PlannedStep } from "../../quantities/job/crewPlan";
import { stockTapes } from "../../quantities/job/cutsOfBed";
import type { JobOrder, OrderLine } from "../../quantities/job/order";
import { must } from "../../quantities/must";
import { cautionsOf } from "../../quantities/tableSources";
import type { Anchor } from "../../spreadsheet/areas";
import { cautions } from "../cautions";
import { compose, type DraftRow } from "../compose";
import type { PlacedPicture, Plan } from "../plan";
import { LINE_POINTS } from "../rowHeights";
import { figure, quantity } from "./orderSheet";
import { pageBreaks, roomOf } from "./pages";
import {
  blankLine,
  factLine,
  headingLine,
  over,
  type Paper,
  pageOf,
  startsOf,
  textCell,
  titleLine,
  underHeading,
} from "./paper";

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
  /** Where an estimate was typed over, so that its drawing and cuts say otherwise, by bed. */
  readonly typedOver?: readonly string[];
  /** What is to be counted at the end, with what was estimated. */
  readonly measures: readonly { readonly measure: string; readonly unit: string; readonly estimated: number }[];
}

const WIDTHS = [5, 24, 33, 33, 13, 13];
/** The title that each page repeats, the drawing's heading, and a row to spare. */
const ROWS_BESIDE_A_DRAWING = 3;

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
 * The crew's sheet: the steps in the order in which they are done with quantities, hours and boxes to tick, the cautions
 * where they belong, what to cut from what, tools and loads, a place to write what was really used, and each bed's drawing
 * on a page of its own, as large as the paper allows.
 *
 * @param plan from `crewPlan`; @param order from `orderJob`.
 */
export function crewSheet(plan: CrewPlan, order: JobOrder, head: CrewHead, paper: Paper, at: Anchor): Plan {
  const { job, place, start, people, drawings, typedOver = [], measures } = head;
  const days = `${counted(plan.personHours, "labor hours")}: ${counted(plan.crewDays, "days")} for ${people === 1 ? "1 person" : `${people} people`}`;
  const page = { ...pageOf(paper), paper };
  const coverings = order.lines.filter(({ key }) => key.startsWith("stone|")).map(({ item }) => item);
  const work: DraftRow[][] = [
    [
      titleLine(`Crew sheet${job ? `: ${job}` : ""}`),
      fact("Job site", place),
      fact("Start", start),
      fact("Time", days),
      ...typedOver.map((note, index) => fact(index === 0 ? "Typed over" : "", note)),
      ...(typedOver.length > 0 ? [fact("", "Drawings and cuts have the calculated number.")] : []),
      blankLine,
    ],
    ...underHeading(
      headingLine("Done", "Step", "How much", "How", "Labor hr", "Actual hr"),
      plan.steps.map((step) => stepRows(step, plan.steps, coverings)),
    ),
  ];
  const tools = plan.tools.map(({ tool, count, why }) =>
    ticked(count === undefined ? tool : `${count} × ${tool}`, why),
  );
  const loads = plan.loads.map(({ what, loads: count, weightTons }) =>
    ticked(`${count} × load`, `${what}${weightTons === undefined ? "" : `, ${counted(weightTons, "tons")} in all`}`),
  );
  const eachApart = (rows: readonly DraftRow[]) => rows.map((row) => [row]);
  const stock: DraftRow[][] = [
    ...underHeading(
      headingLine("Cut", "", "What", "From one piece or roll", "", ""),
      eachApart(order.lines.flatMap(cutRows)),
    ),
    [blankLine],
    ...underHeading(headingLine("Load", "Tools", "For", "", "", ""), eachApart([...tools, ...loads])),
    [blankLine],
    [
      headingLine("", "Actually used", "", "", "Planned", "Actual"),
      ...measures.map(
        ({ measure, unit, estimated }): DraftRow => ({
          cells: [
            undefined,
            textCell(measure, "wrapped"),
            textCell(unit, "wrapped"),
            undefined,
            quantity(estimated, unit, "topNumber"),
            { content: "", look: "blankToFill" },
          ],
        }),
      ),
      fact("Notes", ""),
      fact("", ""),
    ],
  ];
  const frameRows = Math.floor(roomOf(WIDTHS, page).heightPoints / LINE_POINTS) - ROWS_BESIDE_A_DRAWING;
  const drawn = drawings.map(({ bed }): DraftRow[] => [
    headingLine("", bed, "", "", "", ""),
    ...Array.from({ length: frameRows }, () => blankLine),
  ]);
  const groups = [...work, ...stock, ...drawn];
  const starts = startsOf(groups);
  const composed = compose("crew sheet", groups.flat(), WIDTHS, at);
  const ownPages = [work.length, ...drawn.map((_, index) => work.length + stock.length + index)];
  const breaksAbove = pageBreaks(
    composed,
    starts,
    page,
    ownPages.map((group) => must(starts[group])),
  );
  const pictures = drawings.map(({ png, altText }, index): PlacedPicture => {
    const row = must(starts[work.length + stock.length + index]) + 1;
    return { area: { row, column: 0, rows: frameRows, columns: WIDTHS.length }, png, altText };
  });
  return { ...composed, pictures, page: { ...page, breaksAbove } };
}

function fact(label: string, text: string): DraftRow {
  const [first, second] = factLine(label, text).cells;
  return { cells: [undefined, first, ...over(WIDTHS.length - 2, must(second))] };
}

function ticked(what: string, text: string): DraftRow {
  const [box, ...words] = [textCell("☐", "checkBox"), textCell(what, "wrapped"), ...over(4, textCell(text, "wrapped"))];
  return { cells: [box, ...words] };
}

/**
 * The cautions of a step, each line a row: those that are elsewhere first, by a word of where, and last those of what is
 * set or spread.
 */
function cautionRows(step: PlannedStep, steps: readonly PlannedStep[], coverings: readonly string[]): DraftRow[] {
  const { key, cautions: ofEdging } = step;
  const again = (AGAIN_AT[key] ?? []).flatMap(({ about, where }) => {
    // What another step says of some edging alone, the edging's own cautions say here.
    if (where !== undefined && ofEdging.length > 0) return [];
    const whole = steps.find((other) => CAUTION_AT[other.key]?.includes(about));
    return `${about}${where ? `, ${where}` : ""}: see “${whole?.label}”.`;
  });
  const own = [...(key === "stone" ? cautionsOf(coverings) : []), ...ofEdging];
  const whole = [...cautions.filter(({ about }) => CAUTION_AT[key]?.includes(about)), ...own].map(
    ({ about, text }) => `${about}: ${text}`,
  );
  return [again.join(" "), ...whole]
    .filter(Boolean)
    .map((text) => ({ cells: [undefined, ...over(WIDTHS.length - 1, textCell(text, "wrapped"))] }));
}

function stepRows(step: PlannedStep, steps: readonly PlannedStep[], coverings: readonly string[]): DraftRow[] {
  const { label, hint, quantities, hours, hoursIn } = step;
  const amounts = quantities.map(({ amount, unit, what }) => {
    return unit ? `${counted(amount, unit)} ${what}` : counted(amount, what);
  });
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
    ...cautionRows(step, steps, coverings),
  ];
}

/** An amount with what it counts: `1 ton`, `2 tons`. */
function counted(amount: number, what: string): string {
  const shown = figure(amount);
  return `${shown} ${shown === "1" ? what.replace(/s$/, "") : what}`;
}

/** One row for each piece or roll that is cut: what comes from it, and what is left over. */
function cutRows(line: OrderLine): DraftRow[] {
  const { item, specification, cutting, supplier } = line;
  if (!cutting) return [];
  const isEdging = supplier === "border";
  const beds = [...new Set(cutting.whole.map(({ bed }) => bed))];
  const countFor = (of: string) => cutting.whole.reduce((sum, { bed, count }) => sum + (bed === of ? count : 0), 0);
  const whole = beds.map((bed) => `${countFor(bed)} whole for ${bed}`);
  const tapes = stockTapes(line);
  const stocks = cutting.stocks.map((stock, index) => {
    const { lengths, leftOver } = must(tapes[index]);
    // As the drawing names them: P4 is a piece of edging, a plain number a cut of fabric.
    const parts = stock.cuts.map(({ bed, part }, n) => `${bed} ${isEdging ? "P" : ""}${part}: ${lengths[n]}`);
    return `${index + 1}. ${parts.join(" + ")}; ${leftOver} left over`;
  });
  const { warnings = [] } = line;
  const cuts = [...(whole.length > 0 ? [whole.join(", ")] : []), ...stocks];
  return [...cuts, ...warnings].map(
    (text, index): DraftRow => ({
      cells: [
        index < cuts.length ? textCell("☐", "checkBox") : undefined,
        index === 0 ? textCell(item, "wrapped") : undefined,
        index === 0 ? textCell(specification, "wrapped") : undefined,
        ...over(3, textCell(text, "wrapped")),
      ],
    }),
  );
}
