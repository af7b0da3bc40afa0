import type { Anchor } from "../../spreadsheet/areas";
import { compose, type DraftCell, type DraftRow } from "../compose";
import type { Plan } from "../plan";
import { pageBreaks } from "./pages";
import { blankLine, over, type Paper, pageOf, startsOf, textCell, underHeading } from "./paper";

/*
 * A proposal as data. Everything in it is text or money that was worked out elsewhere: the sheet adds up nothing, so it
 * equals what it was made from to the cent. Money is in dollars, rounded to the cent. Text that is "" leaves a line to
 * write on, or leaves its part out where the comment says so.
 */

/** The office on top of the sheet. */
export interface Letterhead {
  readonly office: string;
  readonly address: string;
  readonly phone: string;
  /** Its contractor's license or registration number. */
  readonly license: string;
}

/** A bed, or a line of the estimator's own, in the order in which the customer reads them. */
export interface ScopeItem {
  /** "Front strip", or "Remove old shrubs". */
  readonly name: string;
  /** What is done, in plain words (`scopeOf` makes them for a bed); "" where the name says all of it. */
  readonly text: string;
  /** Its price before tax. Left out where it isn't priced by itself; the column goes where nothing is. */
  readonly price?: number;
}

/** One version of the job, fully priced. */
export interface ProposalOption {
  readonly name: string;
  /** What sets it apart from the others: "Pea gravel, 3 in deep". */
  readonly differs: string;
  /** Before tax, with its discount taken off. */
  readonly price: number;
  readonly salesTax: number;
  readonly total: number;
  /** Its total less the first option's: over 0 where it is more. The first has 0. */
  readonly difference: number;
  readonly isChosen: boolean;
}

/** What is paid for the whole job, or for the option that is chosen. */
export interface ProposalPrice {
  /** Left out for no discount. `listPrice` less `amount` is `price`. */
  readonly discount?: { readonly listPrice: number; readonly label: string; readonly amount: number };
  /** Before tax. */
  readonly price: number;
  /** 0 for none. */
  readonly salesTax: number;
  /** With tax: what is due in all. */
  readonly total: number;
  /** 0 for none. */
  readonly deposit: number;
  /** The total less the deposit. */
  readonly balance: number;
}

export interface Proposal {
  readonly letterhead: Letterhead;
  readonly number: string;
  /** Dates in words. */
  readonly date: string;
  readonly goodThrough: string;
  readonly customer: string;
  readonly place: string;
  readonly scope: readonly ScopeItem[];
  /** None, or up to four side by side. */
  readonly options: readonly ProposalOption[];
  /** Left out where there are options and none is chosen yet: the customer marks one. */
  readonly price?: ProposalPrice;
  /** None leaves its part out. */
  readonly notIncluded: readonly string[];
  /** "" leaves its part out. */
  readonly terms: string;
}

/** Options that fit side by side. */
export const MOST_OPTIONS = 4;

const WIDTHS = [16, 19, 19, 19, 19];
const COLUMNS = WIDTHS.length;

const UTILITIES = [
  "We call 811 before digging and wait until the utilities have marked their lines. The ticket and local law decide when and how we dig.",
  "811 doesn't mark private lines, such as sprinklers, yard lights, or gas to a grill. Please show us where they run before we start.",
];

/**
 * The proposal that a customer signs: letterhead, scope in plain words, options side by side, price, what is not included,
 * terms, and signatures. Text and numbers alone: nothing in it tells what a bed costs the office, and no cell has a
 * formula. Parts with nothing to say are left out.
 *
 * @param at where the plan goes; its text doesn't depend on it.
 * @throws {RangeError} for more options than fit side by side: a fault of this program.
 */
export function proposalSheet(proposal: Proposal, paper: Paper, at: Anchor): Plan {
  if (proposal.options.length > MOST_OPTIONS) throw new RangeError(`No more than ${MOST_OPTIONS} options fit.`);
  const { notIncluded, terms } = proposal;
  const parts: readonly DraftRow[][] = [
    headRows(proposal),
    ...scopeParts(proposal.scope),
    optionRows(proposal.options),
    priceRows(proposal),
    textPart(
      "Not included",
      notIncluded.map((text) => `• ${text}`),
    ),
    textPart("Buried lines", UTILITIES),
    textPart("Terms", linesIn(terms)),
    signatureRows(proposal),
  ];
  const rows = parts.filter((part) => part.length > 0);
  const plan = compose("proposal", rows.flat(), WIDTHS, at);
  const page = pageOf(paper);
  return { ...plan, page: { ...page, breaksAbove: pageBreaks(plan, startsOf(rows), { ...page, paper }) } };
}

function heading(text: string, last?: string): DraftRow {
  return { look: "section", cells: [...over(COLUMNS - 1, textCell(text)), textCell(last ?? "", "numberHeading")] };
}

function textPart(label: string, lines: readonly string[]): DraftRow[] {
  return lines.length > 0 ? [heading(label), ...lines.map(wideRow), blankLine] : [];
}

const linesIn = (text: string) => text.split("\n").filter((line) => line.trim() !== "");

function wideRow(text: string): DraftRow {
  return { cells: over(COLUMNS, textCell(text, "wrapped")) };
}

/** A fact, or a line to write it on. */
function factCell(fact: string): DraftCell {
  return fact ? textCell(fact, "wrapped") : { content: "", look: "blankToFill" };
}

function headRows({ letterhead, number, date, goodThrough, customer, place }: Proposal): DraftRow[] {
  const { office, address, phone, license } = letterhead;
  const left = [
    ...(office ? [] : [["Company", ""] as const]),
    ...([
      ["Address", address],
      ["Phone", phone],
      ["License no.", license],
    ] as const),
    ["", ""] as const,
    ...([
      ["Prepared for", customer],
      ["Job site", place],
    ] as const),
  ];
  const right = [
    ["Proposal no.", number],
    ["Date", date],
    ["Good through", goodThrough],
  ] as const;
  const title = [...over(3, textCell(office)), ...over(2, textCell("Proposal", "rightTitle"))];
  return [
    { look: "title", cells: title },
    ...left.map(([label, fact], index): DraftRow => {
      const beside = right[index];
      return {
        cells: [
          textCell(label, "topLabel"),
          ...over(2, label ? factCell(fact) : textCell("")),
          ...(beside ? [textCell(beside[0], "rightLabel"), factCell(beside[1])] : []),
        ],
      };
    }),
    blankLine,
  ];
}

/** A long scope may go on to the next page between two of its items. */
function scopeParts(scope: readonly ScopeItem[]): DraftRow[][] {
  const isPriced = scope.some(({ price }) => price !== undefined);
  const rows = scope.map(({ name, text, price }): DraftRow => {
    // A name that says all of it takes the room of the text, too.
    const columns = isPriced ? COLUMNS - 1 : COLUMNS;
    const words = text
      ? [textCell(name, "heading"), ...over(columns - 1, textCell(text, "wrapped"))]
      : over(columns, textCell(name, "heading"));
    return { cells: [...words, price === undefined ? undefined : dollars(price)] };
  });
  if (rows.length === 0) return [];
  const parts = rows.map((row) => [row]);
  return [...underHeading(heading("Scope of work", isPriced ? "Price" : ""), parts), [blankLine]];
}

function dollars(amount: number, look: DraftCell["look"] = "topNumber"): DraftCell {
  return { content: amount, format: "dollars", look };
}

/** By the number of options: columns that their labels take, and each of them. */
const OPTION_COLUMNS = [0, 2, 2, 1, 1] as const;

function optionRows(options: readonly ProposalOption[]): DraftRow[] {
  const [first] = options;
  const each = OPTION_COLUMNS[options.length] ?? 1;
  if (!first) return [];
  const row = (label: string, cellOf: (option: ProposalOption) => DraftCell): DraftRow => ({
    cells: [
      ...over(COLUMNS - each * options.length, textCell(label, "wrapped")),
      ...options.flatMap((option) => over(each, cellOf(option))),
    ],
  });
  const money = (content: number): DraftCell => ({ content, format: "dollars", look: "rightNumber" });
  const taxed = options.some(({ salesTax }) => salesTax !== 0);
  const isChosen = options.some((option) => option.isChosen);
  return [
    heading(options.length > 1 ? "Options" : "Option"),
    row("", ({ name }) => textCell(name, "rightHeading")),
    row("What you get", ({ differs }) => textCell(differs, "rightWords")),
    ...(taxed
      ? [row("Price before tax", ({ price }) => money(price)), row("Sales tax", ({ salesTax }) => money(salesTax))]
      : []),
    row(taxed ? "Total with tax" : "Price", ({ total }) => ({ ...money(total), look: "rightTotal" })),
    ...(options.length > 1
      ? [
          row(`Difference from ${first.name}`, (option) =>
            option === first ? textCell("") : { ...money(option.difference), format: "dollarsMore" },
          ),
        ]
      : []),
    isChosen
      ? row("Your choice", (option) => textCell(option.isChosen ? "Chosen" : "", "rightHeading"))
      : row("Your choice", () => textCell("☐", "rightHeading")),
    blankLine,
  ];
}

function priceRows({ price: priced, options }: Proposal): DraftRow[] {
  if (!priced) return [];
  const { discount, price, salesTax, total, deposit, balance } = priced;
  const line = (label: string, amount: number): DraftRow => ({
    cells: [...over(COLUMNS - 1, textCell(label, "topLabel")), dollars(amount)],
  });
  const sum = (label: string, amount: number): DraftRow => ({
    look: "total",
    cells: [...over(COLUMNS - 1, textCell(label)), dollars(amount, "total")],
  });
  const chosen = options.find(({ isChosen }) => isChosen);
  return [
    heading(chosen && options.length > 1 ? `Price of ${chosen.name}` : "Price"),
    ...(discount ? [line("Price before discount", discount.listPrice), line(discount.label, -discount.amount)] : []),
    ...(salesTax !== 0 ? [line("Price before tax", price), line("Sales tax", salesTax)] : []),
    sum("Total due", total),
    ...(deposit > 0 ? [line("Deposit, due when you sign", deposit), line("Balance, due when we finish", balance)] : []),
    blankLine,
  ];
}

/** Signatures of both, each on a line high enough for a pen. */
function signatureRows({ letterhead, customer }: Proposal): DraftRow[] {
  const line: DraftRow = { look: "blankToFill", cells: [] };
  const under = (who: string): DraftRow => ({
    cells: [
      ...over(3, textCell(`${who}: signature`, "underLine")),
      textCell("Name", "underLine"),
      textCell("Date", "underLine"),
    ],
  });
  return [
    heading("Accepted: we agree to the work, the price, and the terms above"),
    blankLine,
    line,
    under(letterhead.office || "Contractor"),
    blankLine,
    line,
    under(customer || "Customer"),
  ];
}
