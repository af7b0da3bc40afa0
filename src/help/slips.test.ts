import { expect, test } from "vitest";
import { declarations } from "../functions/declarations";
import { kindOfMessage, slipsOf } from "./slips";

const knownOf = (id: string) => declarations.find(({ name }) => name === id)!.arguments;

test("arguments that the example leaves out meet each other, too", () => {
  // The example of FABRIC_AREA has no roll length, so that an end lap can't be longer than it.
  const slips = slipsOf("FABRIC_AREA", knownOf("FABRIC_AREA"), [30, 11, 6, 12]);
  expect(slips.filter(({ argument }) => argument === "end_lap_in").map(({ message }) => message)).toEqual([
    expect.stringMatching(/^end_lap_in is .* in, but roll_length is 600 in\./),
  ]);
});

test("what is said alike of several arguments is told once, with the others beside it", () => {
  const slips = slipsOf("AREA_TRIANGLE", knownOf("AREA_TRIANGLE"), [10, 15, 7]);
  const kinds = slips.map(({ message }) => kindOfMessage(message));
  expect(new Set(kinds).size).toBe(kinds.length);
  expect(slips.find(({ words }) => words === "is blank")).toMatchObject({
    argument: "side_a",
    alsoFor: ["side_b", "side_c"],
  });
});
