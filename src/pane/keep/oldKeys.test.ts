import { afterEach, expect, test, vi } from "vitest";
import { blankForm } from "../../quantities/bed/form";
import { draft } from "../draft";
import { startingDetails, storedDetails } from "../papers/details";
import { readStored } from "./stored";

afterEach(() => void vi.unstubAllGlobals());

/** A browser that keeps this, as the pane kept it before it wrote versions. */
const keeps = (key: string, content: unknown) =>
  vi.stubGlobal("localStorage", { getItem: (name: string) => (name === key ? JSON.stringify(content) : null) });

test("a half-typed bed that an earlier pane kept is there", () => {
  const form = { ...blankForm(), name: "Front walk", typed: { length: "18' 6\"" } };
  keeps("Bedrow.form.3", form);
  expect(readStored(draft).value).toMatchObject({ name: "Front walk", typed: { length: "18' 6\"" } });
});

test("the office and the terms that an earlier pane kept are there", () => {
  keeps("Bedrow.papers.1", { ...startingDetails, office: "Fernlea Stone", terms: "Half on order" });
  expect(readStored(storedDetails).value).toEqual({
    ...startingDetails,
    office: "Fernlea Stone",
    terms: "Half on order",
  });
});
