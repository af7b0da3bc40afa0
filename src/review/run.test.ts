import { expect, test } from "vitest";
import { factsOf, knowledge, type SheetInput } from "../../test/reviewWorkbook";
import { type Progress, review, runInSlices } from "./review";

const rows: SheetInput["rows"] = [
  ["Bed", "Length (ft)", "Width (ft)", "Area (sq ft)"],
  ...Array.from({ length: 3000 }, (_, index) => [
    `Bed ${index}`,
    10 + (index % 7),
    4,
    index === 1500 ? 99 : `=B${index + 2}*C${index + 2}`,
  ]),
];
const facts = factsOf({ sheets: [{ name: "Jobs", rows }] });

test("a check in slices tells how far it is, never backwards, and comes to its end", async () => {
  const told: Progress[] = [];
  const result = await runInSlices(review(facts, knowledge), {
    sliceMs: 0,
    onProgress: (progress) => told.push(progress),
  });
  expect(result?.findings.map(({ where }) => where)).toEqual(["Jobs!D1502"]);
  expect(told.length).toBeGreaterThan(30);
  for (const [index, { done }] of told.entries()) {
    expect(done).toBeGreaterThanOrEqual(told[index - 1]?.done ?? 0);
    expect(done).toBeLessThanOrEqual(1);
  }
});

test("a check that is stopped gives nothing, rather than a part that looks like all", async () => {
  const stop = new AbortController();
  let pauses = 0;
  const result = await runInSlices(review(facts, knowledge), {
    sliceMs: 0,
    signal: stop.signal,
    pause: async () => {
      if (++pauses === 5) stop.abort();
    },
  });
  expect(result).toBeUndefined();
  expect(pauses).toBe(5);
});
