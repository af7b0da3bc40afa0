import type { JobOrder, OrderLine, Supplier } from "../../quantities/job/order";
import { must } from "../../quantities/must";
import type { Anchor } from "../../spreadsheet/areas";
import { compose, type DraftRow } from "../compose";
import type { Plan } from "../plan";
import { blankLine, factLine, headingLine, type Paper, pageOf, textCell, titleLine } from "./paper";

/** What stands on top of an order. Text that is "" leaves a blank to write in. */
export interface OrderHead {
  readonly office: string;
  readonly job: string;
  readonly place: string;
  /** Dates in words. */
  readonly date: string;
  readonly wantedBy: string;
}

const WIDTHS = [22, 34, 10, 10, 11, 10, 10, 48];
const COLUMNS = ["Specification", "To order", "Unit", "Needed", "Unit", "Allowance", "Where used"];

const HEADINGS: Readonly<Record<Supplier, string>> = {
  "stone yard": "Stone yard",
  border: "Border",
  "fabric and pins": "Fabric and pins",
  hauling: "Hauling",
  other: "Other",
};

/**
 * The order of a job, by kind of supplier: what to order and what of it is needed, how much of that is allowance, for
 * which beds, and what the loads weigh against their limits. No cost stands in it, since it goes to the yard.
 *
 * @param order all beds together, from `orderJob`.
 */
export function orderSheet(order: JobOrder, head: OrderHead, paper: Paper, at: Anchor): Plan {
  const suppliers = Object.keys(HEADINGS) as Supplier[];
  const parts = suppliers.flatMap((supplier): DraftRow[] => {
    const lines = order.lines.filter((line) => line.supplier === supplier);
    if (lines.length === 0) return [];
    return [headingLine(HEADINGS[supplier], ...COLUMNS), ...lines.flatMap(lineRows), blankLine];
  });
  const rows: DraftRow[] = [
    titleLine(`Order${head.job ? `: ${head.job}` : ""}`),
    factLine("From", head.office),
    factLine("Deliver to", head.place),
    factLine("Date", head.date),
    factLine("Wanted by", head.wantedBy),
    blankLine,
    ...parts,
    headingLine("Weights", "", "", "", "", "", "", ""),
    ...weightRows(order),
  ];
  return { ...compose("order sheet", rows, WIDTHS, at), page: pageOf(paper, { landscape: true }) };
}

function lineRows({ item, specification, order, orderUnit, needed, neededUnit, allowance, ...line }: OrderLine) {
  const used = line.whereUsed.map(({ bed, needed: part, ownQuantity, typed }) => {
    if (part === undefined || typed) return `${bed}: ${figure(ownQuantity)} ${orderUnit}${typed ? ", typed" : ""}`;
    return `${bed}: ${figure(part)} ${neededUnit}`;
  });
  const rows: DraftRow[] = [
    {
      cells: [
        textCell(item, "wrapped"),
        textCell(specification, "wrapped"),
        { content: order, format: "two", look: "topTotal" },
        textCell(orderUnit, "topUnit"),
        { content: needed, format: "two", look: "topNumber" },
        textCell(neededUnit, "topUnit"),
        allowance > 0 ? { content: allowance, format: "two", look: "topNumber" } : undefined,
        textCell(used.join("; "), "wrapped"),
      ],
    },
  ];
  return [...rows, ...line.notes.map((note): DraftRow => ({ cells: [undefined, textCell(note, "note")] }))];
}

/** Tons of each delivery or haul, and what is said about trucks and trailers. */
function weightRows({ lines, warnings }: JobOrder): DraftRow[] {
  const weighed = lines.filter(({ weightTons }) => weightTons !== undefined);
  return [
    ...weighed.map(
      ({ item, specification, weightTons }): DraftRow => ({
        cells: [
          textCell(item, "wrapped"),
          textCell(specification, "wrapped"),
          { content: must(weightTons), format: "two", look: "topNumber" },
          textCell("tons", "topUnit"),
        ],
      }),
    ),
    ...warnings.map(({ text }): DraftRow => ({ cells: [textCell("Mind", "warning"), textCell(text)] })),
    {
      cells: [
        textCell("Limits", "label"),
        textCell(
          "Payload is the GVWR on the maker's plate less the empty weight, people and fuel; axles have limits, too.",
        ),
      ],
    },
  ];
}

/** A quantity in words, without digits that nobody measures. */
export function figure(value: number): string {
  return String(Number(value.toFixed(2)));
}
