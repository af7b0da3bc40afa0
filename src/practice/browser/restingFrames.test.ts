import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { restFrames } from "./restingFrames";

const SCREEN_MS = 16;
type Request = (frame: (time: number) => void) => number;
let page: {
  requestPostAnimationFrame?: Request;
  cancelPostAnimationFrame?: (id: number) => void;
  readonly listeners: Map<string, () => void>;
};
let wake: () => void;
let drawn: number;

beforeEach(() => {
  vi.useFakeTimers();
  const listeners = new Map<string, () => void>();
  const own = {
    requestAnimationFrame: (frame: (time: number) => void) => Number(setTimeout(() => frame(0), SCREEN_MS)),
    cancelAnimationFrame: (id: number) => clearTimeout(id),
    addEventListener: (event: string, listener: () => void) => void listeners.set(event, listener),
    listeners,
  };
  page = own;
  wake = restFrames(own);
  drawn = 0;
  // As the grid does: another frame after each.
  const loop = () => {
    drawn += 1;
    page.requestPostAnimationFrame?.(loop);
  };
  page.requestPostAnimationFrame?.(loop);
});
afterEach(() => vi.useRealTimers());

/** Frames that are drawn in a second. */
async function inASecond(): Promise<number> {
  const before = drawn;
  await vi.advanceTimersByTimeAsync(1000);
  return drawn - before;
}

describe("the grid's frames", () => {
  test("come at the screen's rate at first, and twice a second or so once nothing happens", async () => {
    expect(await inASecond()).toBeGreaterThan(55);
    await inASecond();
    expect(await inASecond()).toBeLessThan(4);
    expect(await inASecond()).toBeGreaterThan(1);
  });

  test.each([
    ["a key", () => page.listeners.get("keydown")?.()],
    ["the pointer", () => page.listeners.get("pointermove")?.()],
    ["a command", () => wake()],
  ])("come at the screen's rate again, at once, after %s", async (_, happen) => {
    await vi.advanceTimersByTimeAsync(5000);
    const before = drawn;
    happen();
    await vi.advanceTimersByTimeAsync(SCREEN_MS);
    expect(drawn).toBe(before + 1);
    expect(await inASecond()).toBeGreaterThan(55);
  });

  test.each([
    ["at rest", 5000],
    ["at the screen's rate", 100],
  ])("can be canceled %s", async (_, ms) => {
    await vi.advanceTimersByTimeAsync(ms);
    const frame = vi.fn();
    page.cancelPostAnimationFrame?.(page.requestPostAnimationFrame?.(frame) ?? 0);
    await vi.advanceTimersByTimeAsync(1000);
    expect(frame).not.toHaveBeenCalled();
  });
});
