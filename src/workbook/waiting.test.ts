import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { notingLongWait, onLongWait } from "./waiting";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const after = (milliseconds: number) => () => new Promise((resolve) => setTimeout(resolve, milliseconds, "done"));

test("a wait of three seconds is told once, and a short one is not", async () => {
  const tell = vi.fn();
  const end = onLongWait(tell);
  const short = notingLongWait(after(1000));
  await vi.advanceTimersByTimeAsync(10_000);
  expect(await short).toBe("done");
  expect(tell).not.toHaveBeenCalled();

  const long = notingLongWait(after(3000));
  await vi.advanceTimersByTimeAsync(10_000);
  expect(await long).toBe("done");
  expect(tell).toHaveBeenCalledTimes(1);

  end();
  const unheard = notingLongWait(after(3000));
  await vi.advanceTimersByTimeAsync(10_000);
  await unheard;
  expect(tell).toHaveBeenCalledTimes(1);
});
