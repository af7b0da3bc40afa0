import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startingDetails } from "../../src/pane/papers/details";
import { insertJob, toPrice } from "../../src/pane/papers/jobTogether";
import { jobOf, noticePaper, orderPaper } from "../../src/pane/papers/makePapers";
import { measuresOf } from "../../src/pane/papers/measures";
import { noticeOf } from "../../src/pane/papers/noticeOf";
import { proposalOf, proposalPlan } from "../../src/pane/papers/proposalOf";
import { readJob } from "../../src/pane/papers/readJob";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { kindsOfBeds } from "../../src/quantities/job/priceJob";
import { must } from "../../src/quantities/must";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { type FileSheet, workbookFile } from "../../src/sheets/file/workbookFile";
import { jobHeadings } from "../../src/sheets/job/jobHeadings";
import { jobSheet } from "../../src/sheets/job/jobSheet";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import type { Paper } from "../../src/sheets/papers/paper";
import { type ProposalOption, proposalSheet } from "../../src/sheets/papers/proposal";
import type { Plan } from "../../src/sheets/plan";
import { insertPlan } from "../../src/workbook/change/insert";
import { foundBed } from "../foundBed";
import type { HeadlessHost } from "../headlessHost";
import { canPrint, overlapping, type PrintedPage, pagesOf } from "../printedWords";
import { createProductHost } from "../productHost";
import { printed } from "../recalculate";

/*
 * Every document as a second spreadsheet program, LibreOffice, prints it: how many pages, all of its text, nothing over
 * anything else, and nothing past the margins. Where the program is missing, this is skipped.
 */
const prints = canPrint();
if (!prints) console.warn("LibreOffice or pdftotext is not on this machine: no document is printed and looked at.");

const CORNER = { row: 0, column: 0 };
const DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=";

/** Invented names, some of them long. */
const NAMES = [
  ...["Front strip", "Side strip along the garage", "Ring around the red maple", "Kidney by the patio"],
  ...["Back strip", "Mailbox bed", "Driveway island", "North side", "East foundation bed", "Pool house bed"],
];

function bed(index: number): BedForm {
  const stone = index % 2 ? "pea gravel" : "river rock";
  const form = { ...blankForm(), name: must(NAMES[index]) };
  if (index % 5 === 2) return { ...form, way: "round", typed: { diameter: "8", innerDiameter: "2", stone } };
  return { ...form, typed: { length: `${12 + 3 * index}' 6 1/2"`, width: String(3 + (index % 3)), stone } };
}

const OWN_LINE = { label: "Remove old shrubs", quantity: 3, unit: "h", unitCost: 40, kind: "labor", typed: true };

function jobOfBeds(count: number) {
  const [first, ...others] = Array.from({ length: count }, (_, index) => foundBed(bed(index), index + 1));
  const { block } = must(first);
  const lines = [...block.lines, { key: undefined, ...OWN_LINE }];
  return jobOf([{ ...must(first), block: { ...block, lines } }, ...others]);
}

const detailsFor = (paper: Paper) => ({
  ...startingDetails,
  ...{
    paper,
    job: "Alder Court",
    place: "12 Alder Court, an invented place",
    customer: "A. Reed",
    start: "2031-03-06",
  },
  ...{ office: "Elm Stone Co.", officeAddress: "14 Quarry Road, an invented place", officePhone: "(614) 555-0100" },
  ...{ officeLicense: "OH 12345", proposalNumber: "26-014", depositPercent: "30" },
  terms:
    "Deposit on signing, balance within 10 days of completion.\nChanges are priced in writing before they are made.",
});

function options(count: number): ProposalOption[] {
  const differs = [
    "River rock, 2 in deep",
    "Pea gravel, 2 in deep, steel edging",
    "Crushed granite, 3 in deep",
    "None",
  ];
  return differs.slice(0, count).map((text, index) => ({
    ...{ name: `Option ${index + 1}`, differs: text, price: 9443.7 - 100 * index, salesTax: 684.67 },
    ...{ total: 10128.37 - 100 * index, difference: -100 * index, isChosen: index === 1 },
  }));
}

function papersOf(count: number, paper: Paper): Record<string, Plan> {
  const job = jobOfBeds(count);
  const details = detailsFor(paper);
  const notice = must(noticeOf(details, job.crew.wholeDays));
  const measures = measuresOf(job).map(({ measure: { label, unit }, planned }) => ({
    ...{ measure: label, unit, estimated: planned },
  }));
  const drawings = job.beds.map(({ block: { name } }) => ({ bed: name, png: DOT, altText: name }));
  const { place } = details;
  const head = { job: details.job, place, start: "Thursday, March 6, 2031", people: job.people, drawings, measures };
  const proposal = proposalOf(job, details);
  const withOptions = (many: number) => proposalSheet({ ...proposal, options: options(many) }, paper, CORNER);
  return {
    order: orderPaper(job, details, notice).plan,
    "crew sheet": crewSheet(job.crew, job.order, head, paper, CORNER),
    "dig notice": noticePaper(job, details, notice).plan,
    proposal: proposalPlan(proposal, details),
    "proposal of two options": withOptions(2),
    "proposal of four options": withOptions(4),
  };
}

/** Pages that each takes at most, of one bed and of ten. A crew sheet has a page for each bed beside its own. */
const MOST_PAGES: Readonly<Record<string, readonly [one: number, ten: number]>> = {
  order: [1, 3],
  "crew sheet": [3, 13],
  "dig notice": [1, 2],
  proposal: [1, 2],
  "proposal of two options": [2, 3],
  "proposal of four options": [2, 3],
  estimate: [2, 2],
};

interface Printed {
  readonly what: string;
  /** Rows from here on are workings, whose narrow columns cut names. */
  readonly workingsFrom?: number;
  readonly paper: Paper;
  readonly most: number;
  readonly sheet: FileSheet;
}

let host: HeadlessHost;
const documents: Printed[] = [];
let pages: readonly PrintedPage[][] = [];

/** An estimate with what its formulas show, on the paper that the person's program prints on. */
async function estimate(index: number, paper: Paper): Promise<Printed> {
  const made = await insertPlan((at) => estimateBlock(bed(index), at), { kind: "new sheet", name: `Bed ${index}` });
  if (!made.done) throw new Error("a new sheet is free");
  const plan = estimateBlock(bed(index), CORNER);
  const { id: sheetId } = must(host.grid.sheets.list().find(({ name }) => name === made.sheetName));
  const cells = host.grid.cells.read({ sheetId, ...CORNER, rowCount: plan.rows, columnCount: plan.columns });
  const sheet = {
    sheetName: "Estimate",
    plan: { ...plan, page: { ...must(plan.page), paper } },
    results: cells.map((row) => row.map(({ value }) => value)),
  };
  return { what: `estimate of ${index === 2 ? "a ring" : "a strip"}`, paper, most: 2, sheet };
}

/** The estimate of a job with what its formulas show. */
async function jobEstimate(count: number): Promise<Plan> {
  const names = Array.from({ length: count }, (_, index) => must(NAMES[index]));
  for (const [index, name] of names.entries()) {
    if (host.grid.sheets.list().some((sheet) => sheet.name === name)) continue;
    await insertPlan((at) => estimateBlock(bed(index), at), { kind: "new sheet", name });
  }
  const beds = (await readJob()).beds.filter(({ block }) => names.includes(block.sheet));
  const made = await insertJob("Alder Court", beds);
  if (!made.done) throw new Error("a new sheet is free");
  const kinds = kindsOfBeds(beds.flatMap(toPrice));
  const head = { name: "Alder Court", option: "Option 1", differs: "", isChosen: true };
  const plan = jobSheet({ ...head, beds: beds.flatMap(({ onSheet }) => onSheet ?? []), kinds }, CORNER);
  const { id: sheetId } = must(host.grid.sheets.list().find(({ name }) => name === made.sheetName));
  const cells = host.grid.cells.read({ sheetId, ...CORNER, rowCount: plan.rows, columnCount: plan.columns });
  // As values: its formulas read sheets that the file doesn't have.
  const shown = cells.map((row) =>
    row.map(({ value }) => (typeof value === "boolean" ? String(value) : (value ?? ""))),
  );
  return { ...plan, formulas: shown, warnings: [] };
}

beforeAll(async () => {
  if (!prints) return;
  host = await createProductHost();
  const jobs = await Promise.all([jobEstimate(1)]);
  for (const count of [4, 10]) jobs.push(await jobEstimate(count));
  for (const paper of ["letter", "a4"] as const) {
    for (const [place, count] of [1, 10].entries()) {
      for (const [what, plan] of Object.entries(papersOf(count, paper))) {
        const most = must(must(MOST_PAGES[what])[place]);
        documents.push({ what: `${what}, ${count} bed`, paper, most, sheet: { sheetName: "Paper", plan } });
      }
    }
    documents.push(await estimate(0, paper), await estimate(2, paper));
    for (const plan of jobs) {
      const workingsFrom = plan.formulas.findIndex(([label]) => label === jobHeadings.settings);
      const sheet = { sheetName: "Job", plan: { ...plan, page: { ...must(plan.page), paper } } };
      documents.push({ what: `job estimate of ${plan.rows} rows`, paper, most: 3, workingsFrom, sheet });
    }
  }
  const files = await Promise.all(documents.map(({ sheet }) => workbookFile([sheet])));
  pages = printed(files).map(pagesOf);
}, 240_000);
afterAll(() => host?.dispose());

const SIZES: Readonly<Record<Paper, readonly number[]>> = { letter: [612, 792], a4: [595, 842] };
/** Half an inch less what letters reach over: nothing is printed beyond it but the page's number. */
const MARGIN = 26;

/** How high the box of a word is beside its font's size, in the font that stands for the usual one (measured). */
const HEIGHT_OF_SIZE = 1.22;
/** Smaller print is hard to read on paper: common practice. */
const SMALLEST_POINTS = 6.5;

describe.skipIf(!prints)("every document", () => {
  const each = (check: (document: Printed, pages: readonly PrintedPage[]) => unknown) =>
    documents.flatMap((document, index) => {
      const found = check(document, must(pages[index]));
      const isFine = found === undefined || (Array.isArray(found) && found.length === 0);
      return isFine ? [] : [[document.what, document.paper, found]];
    });

  test("takes no more pages than it has to, on its paper", () => {
    expect(documents.length).toBeGreaterThan(20);
    expect(each(({ most }, found) => (found.length > most ? found.length : undefined))).toEqual([]);
    expect(
      each(({ paper }, found) =>
        found.filter(({ width, height }) =>
          [width, height].sort((a, b) => a - b).some((side, at) => Math.abs(side - must(SIZES[paper][at])) > 1),
        ),
      ),
    ).toEqual([]);
  });

  test("prints all of its text", () => {
    const bare = (text: string) => text.replace(/\s+/g, "");
    expect(
      each(({ sheet: { plan, results }, workingsFrom }, found) => {
        const all = bare(found.flatMap(({ words }) => words.map(({ text }) => text)).join(""));
        const texts = plan.formulas
          .slice(0, workingsFrom)
          .flatMap((row, down) => row.map((content, across) => (results ? results[down]?.[across] : content)));
        const words = texts.flatMap((text) => (typeof text === "string" ? text.replace(/^'/, "").split(/\s+/) : []));
        return words.filter((word) => !all.includes(bare(word)));
      }),
    ).toEqual([]);
  });

  test("has all of a job but its workings on its first page, in letters that can be read", () => {
    expect(documents.filter(({ workingsFrom }) => workingsFrom !== undefined)).toHaveLength(6);
    expect(
      each(({ workingsFrom }, [first]) => {
        if (workingsFrom === undefined) return undefined;
        const { words } = must(first);
        const has = (start: string) => words.some(({ text }) => text.startsWith(start));
        const points = Math.min(...words.map(({ top, bottom }) => (bottom - top) / HEIGHT_OF_SIZE));
        return has("Cautions") && !has("Markups,") && points > SMALLEST_POINTS ? undefined : points;
      }),
    ).toEqual([]);
  });

  test("prints no text over other text", () => {
    expect(each((_, found) => found.flatMap(overlapping))).toEqual([]);
  });

  test("prints nothing past its margins", () => {
    expect(
      each(({ workingsFrom }, found) =>
        (workingsFrom === undefined ? found : found.slice(0, 1)).flatMap(({ width, height, words }) =>
          words
            .filter(({ left, right, top, bottom }) => {
              const isOutside =
                left < MARGIN || right > width - MARGIN || top < MARGIN / 2 || bottom > height - MARGIN / 2;
              return isOutside;
            })
            .map(({ text }) => text),
        ),
      ),
    ).toEqual([]);
  });
});
