import { expect, test } from "vitest";
import { allAtOnce, inSlices, partOf, type Steps } from "./steps";

/** Takes a while at each of three steps. */
function* work(): Steps<string> {
  for (const share of [0, 0.5, 1]) {
    const start = performance.now();
    while (performance.now() - start < 45);
    yield share;
  }
  return "done";
}

test("work in slices comes to the same as work at once, and tells how far it is", async () => {
  const shares: number[] = [];
  const result = await inSlices(partOf(work(), 0.5, 1), (share) => shares.push(share), new AbortController().signal);
  expect(result).toBe(allAtOnce(work()));
  expect(shares).toEqual([0.5, 0.75, 1]);
});

test("work in slices ends between two of them where it is canceled", async () => {
  const cancel = new AbortController();
  const shares: number[] = [];
  const working = inSlices(
    work(),
    (share) => {
      shares.push(share);
      cancel.abort();
    },
    cancel.signal,
  );
  await expect(working).rejects.toMatchObject({ name: "Canceled" });
  expect(shares).toEqual([0]);
});
