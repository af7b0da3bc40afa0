import { expect, test } from "vitest";
import { wouldBeEnough } from "./enough";
import type { PastEntry } from "./pastEntry";

/** Jobs of a week apart, estimated at 10 tons with 8% waste, which took so many tons. */
const past = (...tons: readonly number[]): PastEntry[] =>
  tons.map((actual, n) => ({
    job: `Job ${n + 1}`,
    date: 46_000 + 7 * n,
    measure: "stoneTons",
    estimated: 10.8,
    actual,
    setThen: 0.08,
  }));
const order = { netTons: 3, orderTons: 3.5, stepTons: 0.5 };

// By hand: 3.5 tons for 3 is 11.67 tons for 10; 12 and 13 tons are more, and 13 for 10 is 3.9 for 3, 0.4 more than 3.5.
test("an order is held against what each past job took", () => {
  const jobs = past(10, 10.5, 11, 12, 11.6, 13);
  expect(wouldBeEnough(jobs, 0.08, order)).toBe(
    "An order like this would have been short on 2 of your last 6 jobs; 0.5 tons more would have covered all 6.",
  );
  expect(wouldBeEnough(jobs, 0.08, { ...order, stepTons: 0.25 })).toContain("; 0.5 tons more");
  expect(wouldBeEnough(jobs, 0.08, { ...order, stepTons: 0.1 })).toContain("; 0.4 tons more");
  expect(wouldBeEnough(jobs, 0.08, { ...order, orderTons: 4 })).toBe(
    "An order like this would have covered all 6 of your past jobs.",
  );
});

test("exactly as much as a job took covers it", () => {
  expect(wouldBeEnough(past(11, 11, 11, 11, 11), 0.08, { ...order, orderTons: 3.3 })).toBe(
    "An order like this would have covered all 5 of your past jobs.",
  );
  // Three steps of 0.1 are no 0.30000000000000004.
  expect(wouldBeEnough(past(11, 11, 11, 11, 12), 0.08, { ...order, orderTons: 3.3, stepTons: 0.1 })).toContain(
    "; 0.3 tons more",
  );
});

test("fewer jobs than a rate is learned from say nothing, nor do entries of anything else", () => {
  const four = past(12, 12, 12, 12);
  const hours = past(12).map((entry) => ({ ...entry, measure: "scrape", job: "Other" }));
  expect(wouldBeEnough([...four, ...hours], 0.08, order)).toBeUndefined();
  expect(wouldBeEnough(past(12, 12, 12, 12, 12), 0.08, { ...order, netTons: 0 })).toBeUndefined();
});
