import { expect, test } from "vitest";
import { openPackage } from "./read/package";
import { countOf, elements, firstElement, readXml, withoutPrefixes } from "./read/xml";
import { escaped, tag } from "./write/xml";

const bytes = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readXml(bytes(text));

test("elements are found by their whole name, at any depth, with quotes and CDATA in them", () => {
  const sheet = read(
    `<sheet><cols/><c r="A>1"><v>1</v></c><c r='B1'/><cx><c r="C1"><![CDATA[<c/>]]></c ></cx></sheet>`,
  );
  expect([...elements(sheet, "c")].map(({ attributes, text }) => [attributes.r, text])).toEqual([
    ["A>1", ""],
    ["B1", ""],
    ["C1", "<c/>"],
  ]);
  expect([countOf(sheet, "c"), countOf(sheet, "d"), firstElement(sheet, "v")?.text]).toEqual([3, 0, "1"]);
});

test("what is taken while a part is read is not kept", () => {
  const seen: string[] = [];
  const sheet = readXml(bytes("<sheet><row><c>1</c><c>2</c></row><d/></sheet>"), {
    opened: (name) => seen.push(name),
    closed: ({ name }) => name === "c",
  });
  expect(seen).toEqual(["sheet", "row", "c", "c", "d"]);
  expect([countOf(sheet, "c"), countOf(sheet, "row"), countOf(sheet, "d")]).toEqual([0, 1, 1]);
});

test.each(["<c><c><c", "<a></b>", "", "<a>&nbsp;</a>", "<a b=1/>", `${"<a>".repeat(500)}${"</a>".repeat(500)}`])(
  "what is no XML of a workbook is refused: %.20s",
  (text) => expect(() => read(text)).toThrow("don't fit together"),
);

test("text survives being written into a part", () => {
  const text = `6' 6" & <bed> 'x' – ½\n\t`;
  expect(read(`<a>${escaped(text)}</a>`).text).toBe(text);
  expect(read(tag("a", { b: text, no: false, none: undefined, yes: true })).attributes).toEqual({ b: text, yes: "1" });
  expect(escaped("a\0b\tc")).toBe("ab\tc");
  expect(read("<a>&#65;&#x42;</a>").text).toBe("AB");
});

test("parts are read without comments and without a prefix before every name", () => {
  const prefixed = read('<x:worksheet xmlns:x="m"><!-- <x:c/> --><x:c r="A1"/><y:c/></x:worksheet>');
  expect([prefixed.name, countOf(prefixed, "c"), countOf(prefixed, "y:c")]).toEqual(["worksheet", 1, 1]);
  expect(countOf(withoutPrefixes(prefixed), "c")).toBe(2);
  expect(readXml(Uint8Array.from([0xff, 0xfe, 0x3c, 0, 0x61, 0, 0x2f, 0, 0x3e, 0])).name).toBe("a");
});

test("a part that defines entities is refused", () => {
  expect(() => read('<!DOCTYPE a [<!ENTITY b "c">]><a>&b;</a>')).toThrow("defines XML entities");
});

const wrapping = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const locked = [..."EncryptedPackage"].flatMap((letter) => [letter.charCodeAt(0), 0]);
test.each([
  ["nothing", [], "The file is empty"],
  ["an older workbook", [...wrapping, 1, 2, 3], "an older kind, such as .xls"],
  ["a locked workbook", [...wrapping, 1, ...locked], "locked with a password"],
  ["text", [...bytes("Bed,Length\n")], "isn't an .xlsx workbook"],
  ["the beginning of a zip file", [0x50, 0x4b, 3, 4], "its list of parts is missing"],
])("%s is refused for what it is", (_, file, words) => {
  expect(() => openPackage(Uint8Array.from(file))).toThrow(words);
});
