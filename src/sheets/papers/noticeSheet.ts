import type { Anchor } from "../../spreadsheet/areas";
import { compose, type DraftRow } from "../compose";
import type { Plan } from "../plan";
import { blankLine, factLine, headingLine, type Paper, pageOf, textCell, titleLine } from "./paper";

/** What a dig notice says. Dates arrive in words; text that is "" leaves a blank to write in. */
export interface NoticeFacts {
  readonly job: string;
  readonly place: string;
  readonly start: string;
  readonly noticeDays: number;
  readonly lastNotice: string;
  readonly noticeOn: string;
  readonly earliestDig: string;
  /** "" where the office entered no life of marks. */
  readonly marksGoodTo: string;
  /** Days that the count passed over: date in words and name. */
  readonly holidays: readonly { readonly date: string; readonly name: string }[];
  readonly warnings: readonly string[];
  readonly beds: readonly { readonly name: string; readonly areaSqFt: number; readonly extent: string }[];
  /** The deepest dig of the job: scrape and trench, inches below grade, in words. */
  readonly deepest: string;
}

const WIDTHS = [26, 76];

const ASKED: readonly (readonly [label: string, hint: string])[] = [
  ["Nearest cross street", ""],
  ["Who calls, phone", ""],
  ["Work is done for", ""],
  ["Kind of work", "scraping and trenching by hand for a decorative stone bed and its edging"],
  ["White lining", "outline the dig in white paint or flags before the locators come, if your state asks for it"],
  ["Ticket number", ""],
  ["Utilities that answered", ""],
];

/**
 * The dig notice: by when to give it, from when to dig, how long marks are good, and what the locators will ask. It says
 * that the ticket and the law of the place rule over the count. 49 CFR 196.103: use the one-call system before digging,
 * wait for the marks, and dig with regard to them.
 */
export function noticeSheet(facts: NoticeFacts, paper: Paper, at: Anchor): Plan {
  const { job, place, start, noticeDays, lastNotice, noticeOn, earliestDig, marksGoodTo, deepest } = facts;
  const rows: DraftRow[] = [
    titleLine(`Dig notice${job ? `: ${job}` : ""}`),
    {
      cells: [
        textCell("First", "topLabel"),
        textCell("Call 811 before you dig. Your ticket and your state's rule come before this count.", "wrapped"),
      ],
    },
    ...facts.warnings.map(
      (warning): DraftRow => ({ cells: [textCell("Note", "warning"), textCell(warning, "wrapped")] }),
    ),
    blankLine,
    headingLine("Days", ""),
    factLine("Start date", start),
    factLine("Full business days", `${noticeDays}, not counting the day you call`),
    factLine("Give notice by", lastNotice),
    factLine("Notice on", noticeOn),
    factLine("Dig from", earliestDig),
    factLine("Marks are good through", marksGoodTo),
    ...facts.holidays.map(({ date, name }) => factLine("Not counted", `${date}: ${name}`)),
    blankLine,
    headingLine("What the locators will ask", ""),
    factLine("Dig site", place),
    ...facts.beds.map(({ name, areaSqFt, extent }) =>
      factLine(name || "Bed", `about ${Math.round(areaSqFt)} sq ft, ${extent}`),
    ),
    factLine("Depth below grade", deepest),
    ...ASKED.map(([label, hint]) => factLine(label, hint)),
    blankLine,
    headingLine("On the day", ""),
    ...ON_THE_DAY.map((text): DraftRow => ({ cells: [textCell("☐", "checkBox"), textCell(text, "wrapped")] })),
  ];
  return { ...compose("dig notice", rows, WIDTHS, at), page: pageOf(paper) };
}

/** Common practice and 49 CFR 196.103; widths of the zone beside marks differ by place. */
const ON_THE_DAY = [
  "Every utility on the ticket has answered: marked or clear.",
  "Photograph the marks before the first cut.",
  "Dig by hand beside marks, within the tolerance zone your state sets.",
  "Locators don't mark private lines (yard lights, sprinklers, gas to a grill): ask the owner.",
  "If you nick a line, smell gas, or see a bare cable: stop, keep people away, and call 911 and the utility.",
];
