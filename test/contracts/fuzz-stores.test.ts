import { describe, expect, test } from "vitest";
import { fuzzStore } from "../fuzz/fuzzStores";
import { stores } from "../fuzz/stores";

/*
 * Thousands of texts in each place where something is kept; `npm run bench -- fuzz` makes a hundred thousand of each.
 * What was kept is read, or it is known that it cannot be; nothing fails, and nothing is lost when it is written back.
 */
const TEXTS = 3000;

describe("whatever stands where something is kept, it is read or refused", () => {
  test.each(stores)("$title", (store) => {
    expect(store.read(store.sound)).toBe("kept");
    const { kept, refused, faults } = fuzzStore(store, TEXTS, 7);
    expect(faults).toEqual([]);
    // Both happen often, so that neither goes untried.
    expect(kept).toBeGreaterThan(20);
    expect(refused).toBeGreaterThan(20);
  });
});
