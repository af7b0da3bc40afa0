import { expect, test } from "vitest";
import { keepTroubleOf, keepWords, refusals } from "./keepTrouble";

test("the browser's refusal of a database of a later version is told from all others", () => {
  expect(keepTroubleOf(new DOMException("", "VersionError"))).toBe("later");
  expect(keepTroubleOf(new DOMException("", "QuotaExceededError"))).toBe("off");
  expect(keepTroubleOf(undefined)).toBe("off");
});

test("each trouble says what becomes of the work", () => {
  for (const words of Object.values(keepWords)) expect(words).toMatch(/will be lost when (the|this) page closes/);
  for (const words of Object.values(refusals)) expect(words).toMatch(/^Nothing was (opened|changed): /);
});
