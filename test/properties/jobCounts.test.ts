import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { jobOf, namedBeds } from "../../src/pane/papers/makePapers";
import { type BedForm, blankForm } from "../../src/quantities/bed/form";
import { readForm } from "../../src/quantities/bed/read";
import { cutsOfBed, stockTapes } from "../../src/quantities/job/cutsOfBed";
import { kindsOfBeds } from "../../src/quantities/job/priceJob";
import { readTape } from "../../src/quantities/tape";
import { cellAround, explain } from "../../src/review/explain/explain";
import type { WorkbookFacts } from "../../src/review/facts";
import { keyAddresses } from "../../src/sheets/compose";
import { estimateBlock } from "../../src/sheets/estimate/block";
import { jobBlock, jobRows } from "../../src/sheets/job/jobBlock";
import { findSheetBeds } from "../../src/sheets/job/sheetBed";
import { crewSheet } from "../../src/sheets/papers/crewSheet";
import { orderSheet } from "../../src/sheets/papers/orderSheet";
import { type Anchor, areaIn } from "../../src/spreadsheet/areas";
import { insertPlan } from "../../src/workbook/change/insert";
import { readWorkbook } from "../../src/workbook/read/workbook";
import { callFunction } from "../callFunction";
import { foundBed } from "../foundBed";
import type { HeadlessHost } from "../headlessHost";
import { RANDOM_BEDS } from "../layoutShapes";
import { createProductHost } from "../productHost";
import { knowledge } from "../reviewWorkbook";
import { anyForm, edging, laying, marksOf } from "./drawnForms";
import { bedOfJob } from "./jobToPrice";

/*
 * One job, one answer: what the pane says of its beds, what their drawings show, what is ordered, and what the crew's
 * sheet says are the same counts, for jobs of several beds with cut-outs, gaps, shared rolls, and even one name.
 */

const AT = { row: 0, column: 0 };
const SIXTEENTH_FT = 1 / 16 / 12;
/** Jobs that are written to a workbook. */
const JOBS = 4;
const NAMES = ["Walk", "Wall", "walk", "Walk (2)"];

/** The lengths in a list such as “2 x 18.5; 7”, each as often as it is cut. */
const lengthsIn = (text: string) =>
  text
    .replace(/[“”]/g, "")
    .split(/[;,]\s*/)
    .flatMap((part) => {
      const [length, count = "1"] = part.split(" x ").reverse();
      return Array<number>(Number(count)).fill(Number(length));
    });

/** Two to four beds with the same fabric and edging, of which some share a name. */
const anyJob = fc
  .tuple(
    fc.array(fc.tuple(anyForm, fc.constantFrom(...NAMES)), { minLength: 2, maxLength: 4 }),
    laying,
    edging.map(({ pieceLength, pieceLap, stakeSpacing }) => ({ pieceLength, pieceLap, stakeSpacing })),
  )
  .map(([beds, rolls, pieces]) =>
    beds.map(
      ([form, name]): BedForm => ({ ...blankForm(), ...form, name, typed: { ...form.typed, ...rolls, ...pieces } }),
    ),
  )
  .filter((forms) => forms.every((form) => readForm(form).bed !== undefined));

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0);

/** What is counted on paper: in the drawings, mark by mark, and in the lines of the crew's cut list. */
function onPaper(forms: readonly BedForm[]) {
  const found = forms.map((form, index) => foundBed(form, index));
  const job = jobOf(found);
  const head = { job: "", place: "", start: "", people: 2, drawings: [], measures: [] };
  const crew = crewSheet(job.crew, job.order, head, "letter", AT).formulas.flat().map(String);
  const buying = { office: "", job: "", place: "", date: "", wantedBy: "" };
  const order = orderSheet(job.order, buying, "letter", AT).formulas;
  const marks = namedBeds(job).map(({ name, plan }) => ({ name, ...marksOf(plan!, cutsOfBed(job.order, name)) }));
  return { estimates: found.map(({ worked }) => worked!.estimate.amounts), job, crew, order, marks };
}

describe("a job of several beds", { timeout: 60_000 + RANDOM_BEDS * 60 }, () => {
  it("has the same counts in the pane, in its drawings, on the order, and on the crew's sheet", () => {
    let named = 0;
    let [cutCount, finer] = [0, 0];
    fc.assert(
      fc.property(anyJob, (forms) => {
        const { estimates, job, crew, order, marks } = onPaper(forms);
        const { amounts } = job.crew;
        const ordered = (supplier: string, key: string) =>
          job.order.lines.filter((line) => line.supplier === supplier && line.key.startsWith(key));

        expect(new Set(marks.map(({ name }) => name)).size).toBe(forms.length);
        if (new Set(forms.map(({ name }) => name)).size < forms.length) named++;

        expect(amounts.pins).toBe(sum(estimates.map(({ pins }) => pins)));
        expect(amounts.pins).toBe(sum(marks.map(({ pins, pinsElsewhere }) => pins + pinsElsewhere)));
        expect(amounts.stakes).toBe(sum(estimates.map(({ stakes }) => stakes)));
        expect(amounts.stakes).toBe(sum(marks.map(({ stakes }) => stakes)));
        expect(amounts.strips).toBe(sum(marks.map(({ cutsInWords }) => cutsInWords)));
        const step = (text: string) => crew.some((cell) => new RegExp(`(^'?|; )${text}(;|$)`).test(cell));
        expect(step(`${amounts.pins.toLocaleString("en-US")} pins set`)).toBe(true);

        const fabric = ordered("fabric and pins", "fabric|");
        const edgingLines = ordered("border", "border|");
        expect(amounts.rolls).toBe(sum(fabric.map((line) => line.order)));
        expect(amounts.pieces).toBe(sum(edgingLines.map((line) => line.order)));
        for (const line of [...fabric, ...edgingLines]) {
          const { whole, stocks } = line.cutting!;
          expect(line.order).toBe(stocks.length + sum(whole.map(({ count }) => count)));
          const onOrder = order.map((row) => row.map((cell) => String(cell).replace(/^'/, "")));
          const bought = onOrder.find((row) => row.includes(line.item) && row.includes(line.specification));
          expect(bought).toContain(String(line.order));
        }
        // Every piece and roll of the cut list is in a drawing, and in no other bed's than its own.
        const cuts = edgingLines.flatMap(({ cutting }) => cutting!.stocks).flatMap((stock) => stock.cuts);
        for (const { name, svg } of marks) {
          const words = svg.replace(/<[^>]+>/g, " ").replace(/\s+/g, " ");
          const own = cuts.filter(({ bed }) => bed === name);
          expect(words.match(/ from (?:the off-?cut of )?piece \d/g)?.length ?? 0).toBe(own.length);
          for (const { part } of own) expect(words).toMatch(new RegExp(` P${part} cut to `));
        }
        // What the crew cuts is no shorter than what is needed, laps included, but for half a sixteenth where a roll is full.
        for (const line of fabric) {
          const tapes = stockTapes(line);
          const { stocks, whole } = line.cutting!;
          const inStrip = new Map<string, { needed: number; cut: number }>();
          const add = (strip: string, needed: number, cut: number) => {
            const before = inStrip.get(strip) ?? { needed: 0, cut: 0 };
            inStrip.set(strip, { needed: before.needed + needed, cut: before.cut + cut });
          };
          stocks.forEach(({ cuts: own, leftOverFt }, at) => {
            const lengths = tapes[at]!.lengths.map((text) => readTape(text, "ft"));
            for (const [n, { bed, part, lengthFt }] of own.entries()) add(`${bed}|${part}`, lengthFt, lengths[n]!);
            expect(sum(lengths)).toBeLessThanOrEqual(
              sum(own.map(({ lengthFt }) => lengthFt)) + leftOverFt + SIXTEENTH_FT,
            );
            for (const length of lengths) {
              cutCount++;
              if (Math.abs(length * 24 - Math.round(length * 24)) > 1e-6) finer++;
            }
          });
          for (const { bed, part, count, lengthFt } of whole) add(`${bed}|${part}`, count * lengthFt, count * lengthFt);
          for (const [strip, { needed, cut }] of inStrip)
            expect(cut, strip).toBeGreaterThanOrEqual(needed - SIXTEENTH_FT / 2);
        }
        expect(sum(estimates.map(({ pieces }) => pieces))).toBe(
          cuts.length + sum(edgingLines.flatMap(({ cutting }) => cutting!.whole).map(({ count }) => count)),
        );
      }),
      { numRuns: Math.max(60, RANDOM_BEDS / 10), seed: 18 },
    );
    expect(named).toBeGreaterThan(20);
    // Nearly all of it is cut to half inches: the rest comes off rolls that are used up to the end.
    expect(finer).toBeLessThan(cutCount / 25);
  });
});

describe("the workbook", () => {
  let host: HeadlessHost;
  beforeAll(async () => {
    host = await createProductHost();
  });
  afterAll(() => host.dispose());

  const bedsOnSheets = async () => {
    const { facts } = await readWorkbook();
    return facts.sheets.flatMap(({ name, used }) => (used ? findSheetBeds(name, used) : []));
  };

  /** What Explain says that a cell comes to, and the call of ours inside it that the number comes from, if any. */
  const explained = (facts: WorkbookFacts, sheet: string, cell: Anchor) => {
    const { used } = facts.sheets.find(({ name }) => name === sheet)!;
    const formula = String(used!.formulas[cell.row - used!.row]![cell.column - used!.column]);
    const { result, working, inside } = explain(
      formula,
      cellAround(facts, { sheet, ...cell }, knowledge, callFunction),
    )!;
    return { result: Number.parseFloat(result.replaceAll(",", "")), text: result, working, inside };
  };

  it.each(fc.sample(anyJob, { numRuns: JOBS, seed: 181 }).map((forms, index) => [index + 1, forms] as const))(
    "has the counts of the pane in random job %i: each bed's block, what Explain says of it, and the order of the job's",
    async (_, forms) => {
      const { estimates, job, marks } = onPaper(forms);
      const before = new Set((await bedsOnSheets()).map(({ sheet }) => sheet));
      for (const form of forms) await insertPlan((at) => estimateBlock(form, at), { kind: "new sheet", name: "Bed" });
      const beds = (await bedsOnSheets()).filter(({ sheet }) => !before.has(sheet));
      expect(beds).toHaveLength(forms.length);
      const counts = ["pins", "stakes", "pieces", "rolls", "fabricStrips", "cornerStakes"] as const;
      beds.forEach(({ sheet, cells }, index) => {
        const shown = counts.map((key) => {
          const { row, column } = cells.get(key)!;
          return host.values(`'${sheet}'!A1:J${row + 1}`)[row]![column];
        });
        expect(shown).toEqual(counts.map((key) => expect.closeTo(estimates[index]![key], 9)));
      });
      const { facts } = await readWorkbook();
      beds.forEach(({ sheet, cells }, index) => {
        const said = (key: string) => explained(facts, sheet, cells.get(key)!);
        for (const key of [...counts, "fabricArea", "borderRun"] as const) {
          const { result, working } = said(key);
          expect([key, result]).toEqual([key, expect.closeTo(estimates[index]![key], 3)]);
          // Its working ends with the same number, where it has one.
          const last = working
            .at(-1)
            ?.replaceAll(",", "")
            .match(/(?:^|= )([\d.]+)[^=]*$/)?.[1];
          if (last !== undefined) expect([key, Number(last)]).toEqual([key, expect.closeTo(result, 3)]);
        }
        const { pinsInWords, stakes } = marks[index]!;
        expect([said("pins").result, said("stakes").result]).toEqual([pinsInWords, stakes]);
      });
      const kinds = kindsOfBeds(forms.map((form) => bedOfJob(form).toPrice));
      const written = { name: "Job", option: "Option 1", differs: "", isChosen: true, beds, kinds };
      const inserted = await insertPlan((at) => jobBlock(written, at), { kind: "new sheet", name: "Job" });
      if (!inserted.done) throw new Error("a new sheet is free");
      const keys = keyAddresses(jobRows(written), AT);
      // The lengths of fabric that the job's sheet cuts, as Explain tells them, are those of the drawings.
      const { facts: after } = await readWorkbook();
      forms.forEach((_form, index) => {
        const { text } = explained(after, inserted.sheetName, areaIn(keys.get(`beds.strips.${index + 1}`)!)!);
        const plan = namedBeds(job)[index]!.plan!;
        expect(lengthsIn(text)).toEqual(plan.cuts.map(({ lengthFt }) => expect.closeTo(lengthFt, 6)));
        expect(lengthsIn(text)).toHaveLength(marks[index]!.cutsInWords);
      });
      const line = (key: string) => Number(host.value(`'${inserted.sheetName}'!${keys.get(key)}`));
      const ordered = (key: string) =>
        sum(job.order.lines.filter((one) => one.key.startsWith(key)).map((one) => one.order));
      expect(line("edgingLine1.quantity")).toBe(ordered("border|"));
      expect(line("stakeLine1.quantity")).toBe(ordered("stakes|"));
      expect(line("fabricLine1.quantity")).toBe(ordered("fabric|"));
      expect(line("pinLine.quantity")).toBe(ordered("pins"));
    },
  );
});
