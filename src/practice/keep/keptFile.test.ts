import { expect, test } from "vitest";
import { isKeptFile, keptFile } from "./keptFile";

test("a file is found again as it was kept, and under an id of its own", () => {
  const [one, other] = [keptFile(new Uint8Array([80, 75])), keptFile(new Uint8Array([80, 75]))];
  expect(isKeptFile(structuredClone(one))).toBe(true);
  expect(one.id).not.toBe(other.id);
});

test.each([
  ["nothing", undefined],
  ["a text", "PK"],
  ["a later version", { version: 2, id: "a", bytes: new Uint8Array() }],
  ["no id", { version: 1, bytes: new Uint8Array() }],
  ["bytes that are none", { version: 1, id: "a", bytes: "PK" }],
])("%s isn't taken for a file that was kept", (_what, kept) => expect(isKeptFile(kept)).toBe(false));
