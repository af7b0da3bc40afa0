import { describe, expect, it } from "vitest";
import { wrapped } from "./flow";
import { LabelBoard } from "./labels";
import { textWidth } from "./pen";
import { element, escaped } from "./svg";

const box = (x: number, y: number, turn = 0) => ({ center: { x, y }, width: 40, height: 10, turn });

describe("labels", () => {
  const board = () => new LabelBoard({ width: 200, height: 100 });

  it("take the first free place", () => {
    const labels = board();
    expect(labels.place([box(50, 50)])?.center.y).toBe(50);
    expect(labels.place([box(60, 50), box(60, 62)])?.center.y).toBe(62);
    expect(labels.place([box(60, 55)])).toBeUndefined();
  });

  it("stay within the sheet", () => {
    expect(board().place([box(10, 50), box(190, 50), box(50, 3)])).toBeUndefined();
  });

  it("may cross bounds of a turned one without touching it", () => {
    const labels = board();
    labels.take(box(50, 50, 45));
    expect(labels.isFree({ center: { x: 62, y: 40 }, width: 6, height: 6 })).toBe(true);
    expect(labels.isFree({ center: { x: 62, y: 62 }, width: 6, height: 6 })).toBe(false);
  });

  it("keep clear of what is to be avoided where they can", () => {
    const labels = board();
    labels.avoid(box(50, 50));
    expect(labels.place([box(50, 50), box(50, 70)])?.center.y).toBe(70);
    expect(labels.place([box(50, 50)])).toBeUndefined();
    expect(labels.place([box(50, 50)], false)?.center.y).toBe(50);
  });
});

describe("text on a sheet", () => {
  it("wraps between items, and within one only where it must", () => {
    const lines = wrapped(["1: 6' 8\"", "2: 6' 1\"", "3: 7' 5\""], 110, 11);
    expect(lines).toEqual(["1: 6' 8\" · 2: 6' 1\"", "3: 7' 5\""]);
    for (const line of wrapped(["a sentence that is much longer than the line it stands in"], 90, 11))
      expect(textWidth(line, 11)).toBeLessThanOrEqual(90);
  });

  it("is escaped, and free of what XML forbids", () => {
    expect(escaped('<b> & "c"\u0007')).toBe("&lt;b&gt; &amp; &quot;c&quot;");
    expect(element("text", { x: 1.005, y: undefined, "data-name": '"' }, "a")).toBe(
      '<text x="1" data-name="&quot;">a</text>',
    );
  });
});
