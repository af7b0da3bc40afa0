import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { foundBed } from "../../../test/foundBed";
import { blankForm } from "../../quantities/bed/form";
import { type JobDetails, startingDetails } from "./details";
import { noticeFacts, noticeOf } from "./noticeOf";

// Thursday, November 19, 2026. Thanksgiving is Thursday, November 26 (5 U.S.C. 6103).
beforeEach(() => void vi.useFakeTimers({ now: new Date(2026, 10, 19, 12) }));
afterEach(() => void vi.useRealTimers());

const details: JobDetails = { ...startingDetails, job: " Alder Court ", start: "2026-11-24" };
const { worked } = foundBed(
  { ...blankForm(), typed: { length: "18.5", width: "5", scrapeDepth: "3", trenchDepth: "1.5" } },
  1,
);
const factsOf = (change: Partial<JobDetails>, daysOfWork = 1) => {
  const all = { ...details, ...change };
  return noticeFacts(all, noticeOf(all, daysOfWork)!, [{ ...worked!, name: "Front" }]);
};
const holidaysOf = (change: Partial<JobDetails>, daysOfWork = 1) => factsOf(change, daysOfWork).holidays;

describe("the facts of a dig notice", () => {
  test("count two full working days before the start and after today", () => {
    // By hand: Friday and Monday are full days between Thursday, November 19, and Tuesday, November 24.
    expect(factsOf({})).toMatchObject({
      job: "Alder Court",
      start: expect.stringMatching(/November 24|11\/24\/2026/),
      lastNotice: expect.stringMatching(/November 19|11\/19\/2026/),
      earliestDig: expect.stringMatching(/November 24|11\/24\/2026/),
      marksGoodTo: "",
      noticeDays: 2,
    });
  });

  test("give a bed's extent in whole feet that hold all of it, and the scrape with the trench below it", () => {
    const { beds, deepest } = factsOf({});
    expect(beds).toEqual([
      { name: "Front", areaSqFt: worked!.estimate.amounts.stoneArea, extent: "within 19 by 5 ft" },
    ]);
    expect(deepest).toMatch(/^4[. ]1?[/5]?2?.*: the scrape, and the edging trench below it$/);
  });

  test("name a holiday that comes up while the work is done", () => {
    expect(holidaysOf({})).toEqual([]);
    expect(holidaysOf({}, 4).map(({ name }) => name)).toEqual(["Thanksgiving Day"]);
    expect(holidaysOf({ federal: "no" }, 4)).toEqual([]);
  });

  test("name the office's own days off, with a name or without one", () => {
    const own = (ownHolidays: string) => holidaysOf({ ownHolidays }).map(({ name }) => name);
    expect(own("2026-11-23 Opening day of deer season")).toEqual(["Opening day of deer season"]);
    expect(own("2026-11-23")).toEqual(["own holiday"]);
    expect(own("November 23, 2026")).toEqual(["own holiday"]);
  });

  test("say how long marks are good once the office has said so", () => {
    // Calendar days count from the first day to dig: November 24 and 10 days.
    const marks = factsOf({ marksDays: "10", marksCounted: "calendar" }).marksGoodTo;
    expect(marks).toMatch(/December 4|12\/4\/2026/);
  });
});

test("work that takes less than a day is counted as one day", () => {
  expect(noticeOf(details, 0)?.lastDayOfWork).toBe(noticeOf(details, 1)?.lastDayOfWork);
});

test("without a start there's no notice", () => {
  expect(noticeOf({ ...details, start: "  " }, 1)).toBeUndefined();
});
