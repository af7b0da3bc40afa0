import { expect, test } from "vitest";
import { framed, type Page } from "./page";

const page = (address: string): Page => ({ address, title: address.toUpperCase(), about: "About it.", content: "" });
const guide = [page("first.html"), page("second.html"), page("third.html")];
const turningOf = (one: Page) =>
  [...framed(one, guide).matchAll(/<a rel="(\w+)" href="([^"]+)"/g)].map(([, rel, to]) => `${rel} ${to}`);

test("a page of the guide leads to the one before and the one after it", () => {
  expect(turningOf(guide[0]!)).toEqual(["next second.html"]);
  expect(turningOf(guide[1]!)).toEqual(["prev first.html", "next third.html"]);
  expect(turningOf(guide[2]!)).toEqual(["prev second.html"]);
});

test("a page that isn't in the guide leads to neither", () => {
  expect(turningOf(page("STONE_TONS.html"))).toEqual([]);
});
