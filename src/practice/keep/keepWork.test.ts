import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { keepWork } from "./keepWork";

let changed: () => void;
const leaving = new Map<string, () => void>();
const put = vi.fn(async () => undefined);
const onResult = vi.fn();
let stop: ReturnType<typeof keepWork>;

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("addEventListener", (event: string, listener: () => void) => {
    leaving.set(event, listener);
  });
  vi.stubGlobal("removeEventListener", () => undefined);
  let version = 0;
  stop = keepWork({
    watch: {
      anything: (listener) => {
        changed = listener;
        return { stop: () => undefined };
      },
    },
    work: () => (version += 1),
    put,
    onResult,
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.resetAllMocks();
});

describe("a person's work", () => {
  test("is kept once, a moment after the last of several changes", async () => {
    changed();
    changed();
    expect(put).not.toHaveBeenCalled();
    await vi.advanceTimersByTimeAsync(1000);
    expect(put).toHaveBeenCalledTimes(1);
    expect(onResult).toHaveBeenCalledWith(undefined);
  });

  test.each(["beforeunload", "pagehide"])(
    "is kept at once where the page is left with a change in hand, at %s, and only then",
    (event) => {
      const leave = leaving.get(event)!;
      leave();
      expect(put).not.toHaveBeenCalled();
      changed();
      leave();
      expect(put).toHaveBeenCalledTimes(1);
    },
  );

  test("that cannot be kept is told", async () => {
    put.mockRejectedValueOnce(new Error("full"));
    changed();
    await vi.advanceTimersByTimeAsync(1000);
    expect(onResult).toHaveBeenCalledWith(expect.objectContaining({ message: "full" }));
  });

  test("is kept a last time where another tab takes over, and not after that", async () => {
    changed();
    await stop(true);
    expect(put).toHaveBeenCalledTimes(1);
    await vi.advanceTimersByTimeAsync(1000);
    expect(put).toHaveBeenCalledTimes(1);
  });

  test("is not kept any more once keeping has stopped", async () => {
    changed();
    await stop();
    await vi.advanceTimersByTimeAsync(1000);
    leaving.get("pagehide")!();
    expect(put).not.toHaveBeenCalled();
  });
});
