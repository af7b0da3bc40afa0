import { describe, expect, test } from "vitest";
import { found } from "./contents";

const groups = [
  { title: "Guide", pages: [{ address: "first.html", title: "A first estimate", about: "From the tape to a price." }] },
  {
    title: "Order stone",
    pages: [
      { address: "STONE_TONS.html", title: "BED.STONE_TONS", about: "Stone for a bed, in tons." },
      { address: "STONE_BAGS.html", title: "BED.STONE_BAGS", about: "Bags of stone for a bed." },
    ],
  },
];
const titles = (looked: string) => found(groups, looked).flatMap(({ pages }) => pages.map(({ title }) => title));

describe("looking for help", () => {
  test("nothing looked for is everything, in its groups", () => {
    expect(found(groups, "  ")).toEqual(groups);
  });

  test("every word has to be there, in any order and in any capitals", () => {
    expect(titles("WEIGHT stone")).toEqual(["BED.STONE_TONS"]);
    expect(titles("price tape")).toEqual(["A first estimate"]);
    expect(titles("weight bags")).toEqual([]);
  });

  test("a function is found by its name, with its underscore or a blank", () => {
    expect(titles("stone_bags")).toEqual(["BED.STONE_BAGS"]);
    expect(titles("stone bags")).toEqual(["BED.STONE_BAGS"]);
  });

  test("what a group is for finds all of it", () => {
    expect(titles("order")).toEqual(["BED.STONE_TONS", "BED.STONE_BAGS"]);
  });
});
