import { describe, expect, test } from "vitest";
import { compareJobs } from "./compareJobs";
import { jobRatios } from "./jobRatios";
import { learn } from "./learn";
import { measureOf, measures } from "./measures";
import type { PastEntry } from "./pastEntry";
import { sensible, sensibleShare } from "./sensible";

/** Jobs a week apart, each estimated at 10. */
const jobs = (measure: string, actuals: readonly number[], changes: Partial<PastEntry> = {}): PastEntry[] =>
  actuals.map((actual, n) => ({
    job: `Job ${n + 1}`,
    date: 46_000 + 7 * n,
    measure,
    estimated: 10,
    actual,
    ...changes,
  }));
const lesson = (entries: readonly PastEntry[], rates = {}) => learn(entries, rates)[0]!;

describe("production rates", () => {
  test("by the hour go down where jobs took longer, and the words say on what that rests", () => {
    const found = lesson(jobs("border", [10.5, 11, 11.1, 11.2, 11.5, 12, 12.2]), { edgingRate: 14 });
    expect(found.verdict).toBe("change");
    // 14 ÷ 1.12 = 12.5
    expect(found.proposal).toMatchObject({ rate: "edgingRate", now: 14, proposed: 12.5 });
    expect(found.text).toBe(
      "7 jobs: took 12% longer than estimated, likely between 5% and 22% longer (98.4% confidence). " +
        "Change “Set edging” from 14 lin ft/hr to 12.5 lin ft/hr. " +
        "7 jobs don't say what rate they were estimated at; today's is used.",
    );
  });

  test("as hours for an amount go up with the hours", () => {
    const found = lesson(jobs("scrape", [10.5, 10.8, 11, 11, 11.3, 12], { setThen: 1.2 }), { scrapeHours: 1.2 });
    expect(found.proposal).toMatchObject({ rate: "scrapeHours", proposed: 1.3, isClear: true }); // 1.2 × 1.1 = 1.32
    expect(found.proposal!.low).toBeCloseTo(1.26, 9);
    expect(found.proposal!.high).toBeCloseTo(1.44, 9);
  });

  test("are kept where the interval lies on both sides of the estimate", () => {
    const found = lesson(jobs("fabric", [8, 9.7, 11, 11, 12, 13], { setThen: 120 }), { fabricRate: 120 });
    expect(found.verdict).toBe("keep");
    expect(found.text).toBe(
      "6 jobs: took 10% longer than estimated, likely between 20% shorter and 30% longer (96.9% confidence). " +
        "That could be chance. Keep 120 sq ft/hr.",
    );
  });

  test("fit where the rounded proposal is the rate of today", () => {
    const found = lesson(jobs("border", [10.05, 10.1, 10.1, 10.1, 10.2, 10.2], { setThen: 14 }), { edgingRate: 14 });
    expect(found).toMatchObject({ verdict: "keep", proposal: { proposed: 14, isNear: true, isClear: false } });
    expect(found.text).toMatch(/14 lin ft\/hr fits\.$/);
  });

  test("of jobs from before a change are restated, so that the same jobs do not speak twice", () => {
    const slow = [11, 11.2, 11.2, 11.2, 11.3, 12];
    const before = lesson(jobs("border", slow, { setThen: 14 }), { edgingRate: 14 });
    expect(before.proposal!.proposed).toBe(12.5);
    const after = lesson(jobs("border", slow, { setThen: 14 }), { edgingRate: 12.5 });
    expect(after).toMatchObject({ verdict: "keep", proposal: { now: 12.5, proposed: 12.5 } });
    expect(after.ratio!.median).toBeCloseTo(1, 9);
  });

  test("count a job once, however many beds it had", () => {
    const beds = jobs("border", [11, 12, 13, 14], {}).flatMap((entry) => [entry, { ...entry, job: ` ${entry.job} ` }]);
    const found = lesson(beds, { edgingRate: 14 });
    expect(found.jobs).toHaveLength(4);
    expect(found.jobs[0]).toMatchObject({ estimated: 20, actual: 22 });
    expect(found.verdict).toBe("too few");
  });
});

describe("a proposal is clear only where today's rate is outside the interval", () => {
  test.each([
    // Six jobs: the interval runs from the least to the greatest. 14 ÷ 1.0 = 14 is its end.
    ["border", [10, 11, 11.2, 11.2, 11.5, 12], 14, { edgingRate: 14 }, 12.5, false],
    ["border", [8, 8.5, 8.5, 8.5, 9, 10], 14, { edgingRate: 14 }, 16.5, false],
    ["border", [10.1, 11, 11.2, 11.2, 11.5, 12], 14, { edgingRate: 14 }, 12.5, true],
    ["border", [8, 8.5, 8.5, 8.5, 9, 9.9], 14, { edgingRate: 14 }, 16.5, true],
    ["scrape", [10, 11, 11, 11, 11, 12], 1.2, { scrapeHours: 1.2 }, 1.3, false],
  ])("%s, actual hours %o for 10", (measure, actuals, setThen, rates, proposed, isClear) => {
    const found = lesson(jobs(measure, actuals, { setThen }), rates);
    // Hours are never a matter of a net amount.
    expect(found.proposal).toMatchObject({ proposed, isClear, isUnderNet: false });
  });

  test("and a rate that no one changed is the starting one", () => {
    expect(lesson(jobs("border", [10, 10, 10, 10, 10])).proposal).toMatchObject({ now: 14 });
    expect(lesson(jobs("stoneTons", [10, 10, 10, 10, 10])).proposal).toMatchObject({ now: 0.08 });
  });
});

describe("the jobs of a measure", () => {
  const border = measureOf("border");
  const ratiosOf = (entries: readonly PastEntry[], rateNow?: number) => jobRatios(entries, border, rateNow);

  test("come by date", () => {
    const [early, late] = jobs("border", [10, 11]);
    const dates = [
      { ...late!, date: 100_000 },
      { ...early!, date: 99_999 },
    ];
    expect(ratiosOf(dates).jobs.map(({ date }) => date)).toEqual([99_999, 100_000]);
  });

  test("are restated by today's rate from the rate of then, where both are known", () => {
    // 10 h at 12 ft/h are 120 ft; at 15 ft/h they take 8 h.
    expect(ratiosOf(jobs("border", [10], { setThen: 12 }), 15).jobs[0]).toMatchObject({ estimated: 8, ratio: 1.25 });
    expect(ratiosOf(jobs("border", [10], { setThen: 12 })).jobs[0]).toMatchObject({ estimated: 10 });
  });

  test.each([undefined, 0, -14, Number.NaN, Number.POSITIVE_INFINITY])("do not say their rate with %s", (setThen) => {
    const entries = jobs("border", [10, 10], setThen === undefined ? {} : { setThen });
    expect(ratiosOf(entries, 15)).toMatchObject({ rateUnknown: 2, jobs: [{ estimated: 10 }, { estimated: 10 }] });
  });

  test("do not say their rate where one of their beds does not", () => {
    const [bed] = jobs("border", [10]);
    expect(ratiosOf([{ ...bed!, setThen: 14 }, bed!], 14).rateUnknown).toBe(1);
    expect(ratiosOf([{ ...bed!, setThen: 14 }], 14).rateUnknown).toBe(0);
  });

  test("may say a waste share of 0, but none below", () => {
    const unknown = (setThen: number) =>
      jobRatios(jobs("stoneTons", [10], { setThen }), measureOf("stoneTons"), 0.08).rateUnknown;
    expect([0, -0.01].map(unknown)).toEqual([0, 1]);
  });
});

describe("the waste share of stone", () => {
  test("is what was used beyond the net amount", () => {
    // Estimated with 8 %: 10.8 tons for 10 net. Used 11.2 in the middle: 12 %.
    const used = [11, 11.1, 11.2, 11.2, 11.3, 11.4];
    const found = lesson(jobs("stoneTons", used, { estimated: 10.8, setThen: 0.08 }), { waste: 0.08 });
    expect(found.proposal).toMatchObject({ rate: "waste", now: 0.08, proposed: 0.12, isClear: true });
    expect(found.text).toBe(
      "6 jobs: used 12% more than the net volume, likely between 10% and 14% more (96.9% confidence). " +
        "Change “Waste and low spots” from 8% to 12%.",
    );
  });

  test("points nowhere else where as much was used as the net volume", () => {
    const found = lesson(jobs("stoneTons", [9, 9.1, 9.3, 9.3, 9.4, 10], { setThen: 0 }), { waste: 0.08 });
    expect(found.proposal).toMatchObject({ proposed: 0, isUnderNet: false });
    expect(found.text).toMatch(/^6 jobs: used 7% less than the net volume, likely between 10% less and 0% more/);
  });

  test("is never under nothing, and less than the net volume points elsewhere", () => {
    const found = lesson(jobs("stoneTons", [9, 9.1, 9.2, 9.3, 9.4, 9.5], { setThen: 0 }), { waste: 0.08 });
    expect(found.proposal).toMatchObject({ proposed: 0, low: 0, high: 0, isUnderNet: true });
    expect(found.text).toMatch(/Check stone depth and weight before you change the waste/);
  });
});

describe("too few jobs", () => {
  test("propose nothing, and say so", () => {
    const found = lesson(jobs("border", [15, 15, 15, 15]), { edgingRate: 14 });
    expect(found).toMatchObject({ verdict: "too few", ratio: undefined, proposal: undefined });
    expect(found.text).toMatch(/^4 jobs so far. It takes 5 to suggest a rate\./);
  });

  test("five are enough for a proposal, but not for an interval of 95 %", () => {
    const found = lesson(jobs("border", [15, 15.1, 15.2, 15.3, 15.4]), { edgingRate: 14 });
    expect(found.verdict).toBe("change");
    expect(found.text).toMatch(/\(93\.8% confidence\)\. With 6 jobs or more it can be 95%\./);
  });

  test("entries without an estimate or an actual amount do not count", () => {
    const entries = [...jobs("border", [12, 12, 12, 12]), ...jobs("border", [0, Number.NaN], { job: "Blank" })];
    expect(lesson(entries).text).toMatch(/^4 jobs so far.*2 entries have no estimate or no actual amount/);
    expect(lesson(jobs("border", [0, 0])).text).toMatch(/^No jobs so far/);
    expect(lesson(jobs("border", [10])).text).toMatch(/^1 job so far/);
  });
});

describe("measures without a rate", () => {
  test("are compared alone", () => {
    const found = lesson(jobs("pins", [10, 10, 10, 10, 11, 12]));
    expect(found).toMatchObject({ verdict: "compare", proposal: undefined });
    expect(found.text).toBe(
      "6 jobs: used as much as estimated, likely between 0% and 20% more (96.9% confidence). " +
        "It's counted from each bed's shape, so there's no rate to adjust.",
    );
  });

  test("may be the office's own, and come after ours in the order of the work", () => {
    const entries = ["Plants", "pins", "Mulch", "scrape"].flatMap((measure) => jobs(measure, [1]));
    expect(learn(entries, {}).map(({ measure }) => measure.label)).toEqual([
      "Scrape and load",
      "Pins",
      "Mulch",
      "Plants",
    ]);
  });

  test("say why there is none", () => {
    for (const { rate, noRate } of [...measures, measureOf("Plants")]) expect(rate === undefined).toBe(!!noRate);
  });
});

test("rates are rounded as an office writes them", () => {
  const rates = [12.46, 1.317, 107.9, 0.0321, 0.0513, 33, 88.8, 14, 120, 100];
  expect(rates.map(sensible)).toEqual([12.5, 1.3, 110, 0.032, 0.052, 33, 88, 14, 120, 100]);
  expect([0.084, -0.2, 3].map(sensibleShare)).toEqual([0.08, 0, 0.99]);
});

test("jobs are compared line by line, the latest first, beds added up", () => {
  const entries = [
    ...jobs("pins", [12, 9]),
    ...jobs("border", [11, 8]),
    ...jobs("border", [10]),
    ...jobs("scrape", [9]),
    ...jobs("Plants", [3], { estimated: 0 }),
  ];
  const compared = compareJobs(entries);
  expect(compared.map(({ job }) => job)).toEqual(["Job 2", "Job 1"]);
  const told = compared[1]!.lines.map(({ measure, estimated, actual, difference, ratio }) => [
    measure.label,
    estimated,
    actual,
    difference,
    ratio,
  ]);
  expect(told).toEqual([
    ["Scrape and load", 10, 9, -1, 0.9],
    ["Set edging", 20, 21, 1, 1.05],
    ["Pins", 10, 12, 2, 1.2],
    ["Plants", 0, 3, 3, undefined],
  ]);
});

test("a crew writes down these amounts, and the rates behind some of them can be corrected", () => {
  expect(measures.map(({ key, rate }) => [key, rate?.key])).toEqual([
    ["scrape", "scrapeHours"],
    ["border", "edgingRate"],
    ["fabric", "fabricRate"],
    ["stone", undefined],
    ["cleanUp", undefined],
    ["stoneTons", "waste"],
    ["spoilLoads", undefined],
    ["pieces", undefined],
    ["rolls", undefined],
    ["pins", undefined],
  ]);
});
