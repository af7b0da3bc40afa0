import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { helpFiles } from "../../src/help/pages";
import { type HelpPart, helpSearch } from "../../src/pane/help/search";

const files = helpFiles(resolve(import.meta.dirname, "../.."));
const parts = JSON.parse(files.get("search.json")!) as HelpPart[];
const search = helpSearch(parts);
const addresses = (question: string) => search(question).answers.map(({ address }) => address);

describe("a question typed into Help", () => {
  test.each([
    ["how deep for 1-1/2 in rock", "questions.html#depth", /2\.25 in/],
    ["why 73 pins", "pin-count.html", /row by row/],
    ["round to half tons", "questions.html#rounding", /Order increment/],
    ["discount", "questions.html#discount", /Discount, %/],
    ["profit", "questions.html#profit", /price less the cost/],
    ["delivery", "questions.html#delivery", /load/],
    ["minimum charge", "questions.html#minimum", /Minimum charge in Rates/],
    ["aluminum", "questions.html#aluminum", /Aluminum, 4 in/],
  ])("“%s” is answered first by %s", (question, address, words) => {
    const { isWhole, answers } = search(question);
    expect(isWhole).toBe(true);
    expect(answers[0]?.address).toBe(address);
    expect(answers[0]?.about).toMatch(words);
  });

  test.each([
    ["how do I add sales tax", "questions.html#tax"],
    ["change the waste percent", "questions.html#waste"],
    ["how much does a yard of river rock weigh", "questions.html#weight"],
    ["how many bags of stone", "questions.html#bags"],
    ["my own prices", "questions.html#prices"],
    ["can I use it offline", "questions.html#offline"],
    ["how do I print the crew sheet", "questions.html#print"],
    ["call 811", "questions.html#locate"],
    ["labor hours too low", "questions.html#crew"],
    ["change crew size", "questions.html#crew"],
    ["add a line to the estimate", "questions.html#lines"],
    ["tree ring", "questions.html#curves"],
    ["kidney shaped bed", "questions.html#curves"],
    ["how to measure a curved bed", "questions.html#curves"],
    ["deduct a patio", "questions.html#deduct"],
    ["no fabric", "questions.html#fabric"],
    ["weed barrier", "questions.html#fabric"],
    ["how do I undo", "questions.html#undo"],
    ["markup vs margin", "questions.html#margin"],
    ["stone not in list", "questions.html#unlisted"],
    ["what does #VALUE! mean", "questions.html#errors"],
    ["copy formulas down", "questions.html#copy-down"],
    ["add a bed to the job", "questions.html#several"],
    ["dump fee", "questions.html#hauling"],
    ["send a proposal to the customer", "questions.html#send"],
    ["steel edging", "questions.html#aluminum"],
    ["plastic edging", "questions.html#aluminum"],
    ["freight", "questions.html#delivery"],
    ["staples", "pin-count.html"],
    ["mulch", "questions.html#materials"],
    ["metric", "questions.html#metric"],
    ["price per square foot", "questions.html#square-foot"],
    ["does it send my data anywhere", "questions.html#data"],
    ["deposit", "papers.html#the-proposal"],
    ["slope", "limits.html#ground-on-a-slope"],
    ["excel version", "in-the-office.html#which-versions-run-it"],
    ["save a template", "templates.html#save-one"],
    ["update an estimate", "first-estimate.html#open"],
  ])("“%s” is answered first by %s", (question, address) => {
    const { isWhole, answers } = search(question);
    expect([isWhole, answers[0]?.address]).toEqual([true, address]);
  });

  test("isn't answered with a word that only looks like it", () => {
    expect(search("warranty").isWhole).toBe(false);
    expect(search("retaining wall").isWhole).toBe(false);
  });

  test("finds the page that goes into it as well", () => {
    expect(addresses("why 73 pins")).toContain("questions.html#pins");
    expect(addresses("round to half tons").some((address) => address.startsWith("limits.html"))).toBe(true);
  });

  test("finds a function by its name, with its underscore or a blank", () => {
    expect(addresses("STONE_TONS")[0]).toMatch(/^STONE_TONS\.html/);
    expect(addresses("stone bags")[0]).toMatch(/^STONE_BAGS\.html/);
  });

  test("that no page answers gets the nearest three", () => {
    const { isWhole, answers } = search("retaining wall discount financing");
    expect(isWhole).toBe(false);
    expect(answers).toHaveLength(3);
    expect(addresses("xqzv")).toHaveLength(3);
  });

  test("may be misspelled", () => {
    expect(addresses("alluminum")[0]).toBe("questions.html#aluminum");
  });
});

test("every answer leads to a place that its page has", () => {
  for (const { address } of parts) {
    const [page = "", place] = address.split("#");
    const html = files.get(page);
    expect(html, address).toBeDefined();
    if (place !== undefined) expect(html, address).toContain(` id="${place}"`);
  }
});

test("no two files of the help differ in capitals alone, which some disks cannot keep apart", () => {
  const names = [...files.keys()].map((name) => name.toLowerCase());
  expect(names.filter((name, place) => names.indexOf(name) !== place)).toEqual([]);
});
