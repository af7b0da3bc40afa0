import { describe, expect, test } from "vitest";
import { helpSearch } from "./search";

const search = helpSearch([
  { address: "first.html", page: "A first estimate", heading: "", text: "From the tape to a price." },
  { address: "first.html#insert", page: "A first estimate", heading: "Insert it", text: "Press Insert. It goes in." },
  { address: "STONE_TONS.html", page: "BED.STONE_TONS", heading: "", text: "Stone for a bed, in tons. Order stone." },
  { address: "STONE_BAGS.html", page: "BED.STONE_BAGS", heading: "", text: "Bags of stone for a bed. Order stone." },
]);
const titles = (looked: string) => search(looked).answers.map(({ title }) => title);

describe("searching help", () => {
  test("for nothing finds nothing", () => {
    expect(search("  ")).toEqual({ isWhole: false, answers: [] });
    expect(search("how do I").answers).toEqual([]);
  });

  test("every word has to be there, in any order and in any capitals", () => {
    expect(titles("TONS stone")).toEqual(["BED.STONE_TONS"]);
    expect(titles("price tape")).toEqual(["A first estimate"]);
    expect(search("price tape").isWhole).toBe(true);
  });

  test("gives the nearest three where no part has every word", () => {
    expect(search("tape bags").isWhole).toBe(false);
    expect(titles("tape bags stone")[0]).toBe("BED.STONE_BAGS");
    expect(titles("tape bags stone order")).toHaveLength(3);
  });

  test("finds a function by its name, with its underscore or a blank", () => {
    expect(titles("stone_bags")).toEqual(["BED.STONE_BAGS"]);
    expect(titles("stone bags")).toEqual(["BED.STONE_BAGS"]);
  });

  test("finds all that serves a purpose", () => {
    expect(titles("order").sort()).toEqual(["BED.STONE_BAGS", "BED.STONE_TONS"]);
  });

  test("passes over numbers, small words, endings, and what else a thing is called", () => {
    expect(titles("how many bag for 3 yards")).toEqual(titles("bag yards"));
    expect(titles("orders for rock").sort()).toEqual(["BED.STONE_BAGS", "BED.STONE_TONS"]);
  });

  test("leads to the place on the page, with the sentence that answers", () => {
    expect(search("press").answers).toEqual([
      { address: "first.html#insert", title: "A first estimate: Insert it", about: "Press Insert. It goes in." },
    ]);
  });
});
