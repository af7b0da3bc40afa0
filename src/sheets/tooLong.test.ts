import { describe, expect, test } from "vitest";
import { tooLong } from "./tooLong";

const of = (...contents: (string | number)[]) => tooLong({ formulas: [contents] });

describe("what is written fits into the cells of every spreadsheet program", () => {
  test("up to the limits", () => {
    expect(of(7, "a".repeat(32_767), `'${"a".repeat(32_767)}`)).toBeUndefined();
    expect(of(`="${"a".repeat(255)}"&"${"b".repeat(255)}"`)).toBeUndefined();
    expect(of(`=${"1+".repeat(4095)}1`)).toBeUndefined();
  });

  test.each([
    ["a".repeat(32_768), /^“a{40}…” has 32,768 characters, and a cell takes 32,767\. Make it shorter\.$/],
    [`="${"a".repeat(256)}"`, /has 256 characters, and a text inside a formula takes 255/],
    [`=${"1+".repeat(4096)}1`, /has 8,194 characters, and a formula takes 8,192/],
  ])("and is refused in words beyond", (content, words) => {
    expect(of("", content)).toMatch(words);
  });

  test("a mark of quotation inside a text counts once", () => {
    expect(of(`="${'""'.repeat(255)}"`)).toBeUndefined();
  });
});
