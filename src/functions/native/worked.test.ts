import { expect, test } from "vitest";
import { closed, merged } from "./worked";

test("conditions of one layer are asked together, those of the next only once they hold", () => {
  const layers = [["A1>0", "B1>0"], ["A1<B1"]];
  expect(closed({ text: "B1-A1", layers, least: "over 0" })).toBe("IF(AND(A1>0,B1>0),IF(A1<B1,B1-A1,#VALUE!),#VALUE!)");
  expect(closed({ text: "1+2", layers: [], least: "over 0" })).toBe("1+2");
});

test("the same condition of two arguments is asked once", () => {
  expect(merged([[["A1>0"]], [["A1>0", "B1>0"], ["B1<9"]]])).toEqual([["A1>0", "B1>0"], ["B1<9"]]);
});
