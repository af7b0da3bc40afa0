import type { JobOrder, OrderLine, Supplier } from "../../quantities/job/order";
import { must } from "../../quantities/must";
import type { Anchor } from "../../spreadsheet/areas";
import { compose, type DraftCell, type DraftRow } from "../compose";
import type { LookName, Plan } from "../plan";
import { pageBreaks } from "./pages";
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

/** What is on top of an order. Text that is "" leaves a blank to write in. */
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
  border: "Edging",
  "fabric and pins": "Fabric and pins",
  hauling: "Hauling",
  other: "Other",
};

/**
 * The order of a job, by kind of supplier: what to order and what of it is needed, how much of that is allowance, for
 * which beds, and what the loads weigh against their limits. No cost is in it, since it goes to the yard.
 *
 * @param order all beds together, from `orderJob`.
 */
export function orderSheet(order: JobOrder, head: OrderHead, paper: Paper, at: Anchor): Plan {
  const suppliers = Object.keys(HEADINGS) as Supplier[];
  const parts = suppliers.flatMap((supplier): DraftRow[][] => {
    const lines = order.lines.filter((line) => line.supplier === supplier && isBought(line));
    if (lines.length === 0) return [];
    return [...underHeading(headingLine(HEADINGS[supplier], ...COLUMNS), lines.map(lineRows)), [blankLine]];
  });
  const groups: DraftRow[][] = [
    [
      titleLine(`Order${head.job ? `: ${head.job}` : ""}`),
      wideFact("From", head.office),
      wideFact("Deliver to", head.place),
      wideFact("Date", head.date),
      wideFact("Needed by", head.wantedBy),
      blankLine,
    ],
    ...parts,
    [headingLine("Weights", "", "", "", "", "", "", ""), ...weightRows(order)],
  ];
  const plan = compose("order sheet", groups.flat(), WIDTHS, at);
  const page = pageOf(paper, { landscape: true });
  return { ...plan, page: { ...page, breaksAbove: pageBreaks(plan, startsOf(groups), { ...page, paper }) } };
}

/** A fact over the columns of the specification and the quantity to order. */
function wideFact(label: string, fact: string): DraftRow {
  const [first, second] = factLine(label, fact).cells;
  return { cells: [first, ...over(3, must(second))] };
}

/** No one orders the dump: its fee is in the estimate alone. */
const isBought = ({ key }: OrderLine) => key !== "dump";

/** What is sold and needed by the piece. */
const COUNTED = [
  "bags",
  "bulk bags",
  "pieces",
  "pavers",
  "timbers",
  "stakes",
  "spikes",
  "rolls",
  "boxes",
  "pins",
  "loads",
];

/** A count as a whole number, unless someone typed a part of one; anything else with two decimals. */
export function quantity(amount: number, unit: string, look: LookName): DraftCell {
  const isCount = COUNTED.includes(unit) && Number.isInteger(amount);
  return { content: amount, format: isCount ? "whole" : "two", look };
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
        quantity(order, orderUnit, "topTotal"),
        textCell(orderUnit, "topUnit"),
        quantity(needed, neededUnit, "topNumber"),
        textCell(neededUnit, "topUnit"),
        allowance > 0 ? quantity(allowance, neededUnit, "topNumber") : undefined,
        textCell(used.join("; "), "wrappedNext"),
      ],
    },
  ];
  return [...rows, ...line.notes.map((note): DraftRow => ({ cells: [undefined, ...besides(note, "wrappedNote")] }))];
}

/** Text over all columns behind the first. */
const besides = (text: string, look: LookName) => over(WIDTHS.length - 1, textCell(text, look));

/** Tons of each delivery or haul and cubic yards of the stone, and what is said about trucks and trailers. */
function weightRows({ lines, warnings }: JobOrder): DraftRow[] {
  const weighed = lines.filter(({ weightTons }) => weightTons !== undefined);
  return [
    ...weighed.map(
      ({ item, specification, weightTons, volume }): DraftRow => ({
        cells: [
          textCell(item, "wrapped"),
          textCell(specification, "wrapped"),
          { content: must(weightTons), format: "two", look: "topNumber" },
          textCell("tons", "topUnit"),
          ...(volume
            ? [
                { content: volume.yards, format: "two", look: "topNumber" } as const,
                textCell("cu yd", "topUnit"),
                undefined,
                textCell(`at ${volume.tonsPerYard.map(figure).join(" and ")} tons/cu yd`, "wrappedNext"),
              ]
            : []),
        ],
      }),
    ),
    ...warnings.map(({ text }): DraftRow => ({ cells: [textCell("Check", "warning"), ...besides(text, "wrapped")] })),
    {
      cells: [
        textCell("Limits", "topLabel"),
        ...besides(
          "Payload is the GVWR on the maker's plate less the empty weight, people, and fuel; axles have limits, too.",
          "wrapped",
        ),
      ],
    },
  ];
}

/** A quantity in words, without digits that no one measures. */
export function figure(value: number): string {
  return String(Number(value.toFixed(2)));
}
