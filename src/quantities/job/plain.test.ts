import { describe, expect, test } from "vitest";
import { distinctNames } from "./plain";

describe("the names of a job's beds", () => {
  test("stay as they are where no two are the same", () => {
    expect(distinctNames(["Walk", "Wall"])).toEqual(["Walk", "Wall"]);
  });

  test("get a number where a bed before has the name, whatever its capitals and spaces", () => {
    expect(distinctNames(["Walk", "walk ", "Walk"])).toEqual(["Walk", "walk (2)", "Walk (3)"]);
  });

  test("never get one that another bed has as its own", () => {
    expect(distinctNames(["Walk", "Walk", "Walk (2)"])).toEqual(["Walk", "Walk (3)", "Walk (2)"]);
  });
});
