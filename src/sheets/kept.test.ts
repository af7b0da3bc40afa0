import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Keeping, readKeptText, textToKeep } from "./kept";

const names: Keeping<readonly string[]> = {
  version: 2,
  read: (content) => (Array.isArray(content) && content.every((one) => typeof one === "string") ? content : undefined),
};

describe("what is kept as text", () => {
  test("comes back as it was", () => {
    expect(readKeptText(textToKeep(["a"], names), names)).toEqual({ state: "kept", value: ["a"] });
    expect(readKeptText("", names)).toEqual({ state: "none" });
  });

  test("is read without a version, too: it was written before there were any", () => {
    expect(readKeptText('["a"]', names)).toEqual({ state: "kept", value: ["a"] });
  });

  test("is known as a later version's, whatever else that one changed", () => {
    expect(readKeptText('{"version":3,"kept":["a"]}', names)).toEqual({ state: "later" });
    expect(readKeptText('{"version":2.5,"elsewhere":[]}', names)).toEqual({ state: "later" });
  });

  test.each([
    "{half",
    "null",
    "7",
    '"a"',
    "{}",
    '{"version":2}',
    '{"version":"3","kept":["a"]}',
    '{"kept":["a"]}',
    "[1]",
  ])("is known as damaged: %s", (text) => {
    expect(readKeptText(text, names)).toEqual({ state: "damaged" });
  });

  test("never throws, also where the one who reads it does", () => {
    const careless: Keeping<string> = { version: 1, read: (content) => (content as { a: { b: string } }).a.b };
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(["none", "kept", "later", "damaged"]).toContain(readKeptText(text, careless).state);
      }),
    );
  });
});
