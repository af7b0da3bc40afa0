import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";

type Hold = (lock: object | null) => Promise<void> | null;

/** The browser's locks, for several panes: held until a pane lets go. */
const held = new Set<string>();
const request = vi.fn(async (name: string, _options: object, hold: Hold) => {
  const isFree = !held.has(name);
  held.add(name);
  await hold(isFree ? { name } : null);
});

/** A pane of its own: modules are not shared between pages. */
async function openPane() {
  vi.resetModules();
  const { draftKey, takeDraftPlace } = await import("./draftPlace");
  const taking = takeDraftPlace();
  await vi.advanceTimersByTimeAsync(1000);
  await taking;
  return draftKey();
}

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("navigator", { locks: { request } });
});
afterEach(() => {
  held.clear();
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe("the place of a half-typed bed", () => {
  test("is another for each pane that is open at a time", async () => {
    expect(await openPane()).toBe("Bedrow.form");
    expect(await openPane()).toBe("Bedrow.form 2");
    expect(await openPane()).toBe("Bedrow.form 3");
  });

  test("is free again once its pane is closed, and the next pane finds the bed there", async () => {
    expect(await openPane()).toBe("Bedrow.form");
    held.delete("Bedrow.form");
    expect(await openPane()).toBe("Bedrow.form");
  });

  test("is waited for a moment, since a page that is loaded again has just let go of it", async () => {
    held.add("Bedrow.form");
    setTimeout(() => held.delete("Bedrow.form"), 150);
    expect(await openPane()).toBe("Bedrow.form");
  });

  test.each([
    ["no locks", {}],
    ["locks that it keeps from the pane", { locks: { request: () => Promise.reject(new Error("SecurityError")) } }],
  ])("is the first where the browser has %s", async (_what, navigator) => {
    vi.stubGlobal("navigator", navigator);
    expect(await openPane()).toBe("Bedrow.form");
  });
});
