import { expect, test, vi } from "vitest";
import { onEscape } from "./onEscape";

function pressed(key: string, off: boolean) {
  const close = vi.fn();
  const event = { key, stopPropagation: vi.fn() };
  onEscape(close, off)(event as unknown as KeyboardEvent);
  return { closed: close.mock.calls.length, kept: event.stopPropagation.mock.calls.length };
}

test("Escape closes what has the keyboard and nothing round it, and any other key closes nothing", () => {
  expect(pressed("Escape", false)).toEqual({ closed: 1, kept: 1 });
  expect(pressed("Enter", false)).toEqual({ closed: 0, kept: 0 });
});

test("Escape closes nothing, and nothing round it, where nothing can be closed now", () => {
  expect(pressed("Escape", true)).toEqual({ closed: 0, kept: 1 });
});
