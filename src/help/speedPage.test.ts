import { expect, test } from "vitest";
import { hardestExponent } from "./speedAtWork";
import { type Measured, speedPage } from "./speedPage";

const claim = (what: string, measured: number) => ({ what, measured, most: 10, unit: "s", how: "on a desk" });
const measured: Measured = {
  benches: {
    layout: {
      on: "2026-11-29",
      machine: "2 cores",
      tables: [{ title: "Beds", rows: [{ corners: 4 }], claims: [claim("Kept", 10), claim("Broken", 10.01)] }],
    },
  },
};

test("the hardest lists of pieces are those that grow fastest", () => {
  const rows = [{ "growth exponent": 1.2 }, { "growth exponent": 2.4 }, { "growth exponent": 0.9 }];
  const cutting = { on: "2026-11-29", machine: "2 cores", tables: [{ title: "Cutting", rows }] };
  expect(hardestExponent({ benches: { cutting } })).toBe(2.4);
  expect(hardestExponent(measured)).toBe(0);
});

test("a promise that was not kept is marked, and one that was just kept is not", () => {
  const { content } = speedPage(measured);
  expect(content).toContain("<strong>10.01 s: over it</strong>");
  expect(content.match(/over it/g)).toHaveLength(1);
});
