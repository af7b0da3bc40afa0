import { expect, test } from "vitest";
import { cut, withoutUnprintable } from "./printable";

test("signs that no name may hold are left out", () => {
  expect(withoutUnprintable("Front\u0000 walk\u001b")).toBe("Front walk");
  expect(withoutUnprintable("half \ud800 letter 🌿")).toBe("half  letter 🌿");
  expect(withoutUnprintable("two\nlines\tand a tab")).toBe("two\nlines\tand a tab");
});

test("a text is cut between letters", () => {
  expect(cut("Front walk", 5)).toBe("Front");
  expect(cut("Front walk", 6)).toBe("Front");
  // The leaf is two characters long.
  expect(cut("Bed 🌿", 5)).toBe("Bed");
  expect(cut("Bed 🌿", 6)).toBe("Bed 🌿");
});
