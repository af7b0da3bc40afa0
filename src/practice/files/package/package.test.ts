import { expect, test } from "vitest";
import { openPackage } from "./fileKind";
import { countOf, elements, escaped, firstElement, readXml, unescaped, without } from "./xml";

const bytes = (text: string) => new TextEncoder().encode(text);

test("elements are found by their whole name, with quotes and other elements inside", () => {
  const xml = `<cols/><c r="A>1"><v>1</v></c><c r='B1'/><cx><c r="C1"></c ></cx>`;
  expect([...elements(xml, "c")].map(({ attributes, inner }) => [attributes.r, inner])).toEqual([
    ["A>1", "<v>1</v>"],
    ["B1", ""],
    ["C1", ""],
  ]);
  expect([countOf(xml, "c"), countOf(xml, "d"), firstElement(xml, "v")?.inner]).toEqual([3, 0, "1"]);
  expect(without(xml, ["c", "cols"])).toBe("<cx></cx>");
});

test("what does not end is left alone", () => {
  expect(countOf("<c><c><c", "c")).toBe(0);
  expect(without("<c><d/>", ["c"])).toBe("<c><d/>");
});

test("text survives being written into a part", () => {
  const text = `6' 6" & <bed> 'x' – ½`;
  expect(unescaped(escaped(text))).toBe(text);
  expect(escaped("a\0b\tc")).toBe("ab\tc");
  expect(unescaped("&#65;&#x42;&nbsp;&#x110000;")).toBe("AB&nbsp;&#x110000;");
});

test("parts are read without comments and without a prefix before every name", () => {
  expect(readXml(bytes('<x:worksheet xmlns:x="m"><!-- <x:c/> --><x:c r="A1"/></x:worksheet>'))).toBe(
    '<worksheet xmlns:x="m"><c r="A1"/></worksheet>',
  );
  expect(readXml(Uint8Array.from([0xff, 0xfe, 0x3c, 0, 0x61, 0, 0x2f, 0, 0x3e, 0]))).toBe("<a/>");
});

test("a part that declares names of its own is refused", () => {
  expect(() => readXml(bytes('<!DOCTYPE a [<!ENTITY b "c">]><a>&b;</a>'))).toThrow("declares names of its own");
});

const wrapping = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const locked = [..."EncryptedPackage"].flatMap((letter) => [letter.charCodeAt(0), 0]);
test.each([
  ["nothing", [], "The file is empty"],
  ["an older workbook", [...wrapping, 1, 2, 3], "an older kind, such as .xls"],
  ["a locked workbook", [...wrapping, 1, ...locked], "locked with a password"],
  ["text", [...bytes("Bed,Length\n")], "no .xlsx workbook"],
  ["the beginning of a zip file", [0x50, 0x4b, 3, 4], "its list of parts is missing"],
])("%s is refused for what it is", (_, file, words) => {
  expect(() => openPackage(Uint8Array.from(file))).toThrow(words);
});
