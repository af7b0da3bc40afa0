import { expect, test } from "vitest";
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

test("a promise that was not kept is marked, and one that was just kept is not", () => {
  const { content } = speedPage(measured);
  expect(content).toContain("<strong>10.01 s: over it</strong>");
  expect(content.match(/over it/g)).toHaveLength(1);
});
