import { zipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { FileRefusal, mostUnpackedBytes } from "./limits";
import { crc32, writeZip, ZipFile } from "./zip";

const bytes = (text: string) => new TextEncoder().encode(text);
const text = (part: Uint8Array | undefined) => new TextDecoder().decode(part);
const parts = new Map([
  ["a.xml", bytes("<a/>")],
  ["Ünter/b.xml", bytes("stone ".repeat(500))],
]);
const stored = () => zipSync(Object.fromEntries(parts), { level: 0 });

test("the checksum is that of the published check value", () => {
  // The check value of CRC-32/ISO-HDLC for "123456789", from memory of the catalogue of such sums.
  expect(crc32(bytes("123456789"))).toBe(0xcbf43926);
});

test.each([
  ["packed", () => writeZip(parts)],
  ["stored as it is", stored],
])("what is written is read again (%s)", (_, make) => {
  const zip = new ZipFile(make());
  expect(zip.names).toEqual(["a.xml", "Ünter/b.xml"]);
  expect(text(zip.part("a.xml"))).toBe("<a/>");
  expect(text(zip.part("Ünter/B.XML"))).toBe("stone ".repeat(500));
  expect(zip.part("c.xml")).toBeUndefined();
});

describe("a zip file is refused in words", () => {
  test("where a part is not what was packed", () => {
    const file = stored();
    file[30 + "a.xml".length] = "x".charCodeAt(0);
    expect(() => new ZipFile(file).part("a.xml")).toThrow("a.xml isn't what was packed");
  });

  test("where its end is missing", () => {
    expect(() => new ZipFile(writeZip(parts).slice(0, -30))).toThrow("its list of parts is missing");
  });

  test("where it holds a part twice", () => {
    const twice = new Map([
      ["a.xml", bytes("1")],
      ["A.xml", bytes("2")],
    ]);
    expect(() => new ZipFile(writeZip(twice))).toThrow("it holds A.xml twice");
  });

  test("where a part unpacks to more than a workbook needs", () => {
    const bomb = zipSync({ "bomb.xml": new Uint8Array(mostUnpackedBytes + 1) }, { level: 1 });
    expect(bomb.length).toBeLessThan(1_000_000);
    const open = () => new ZipFile(bomb).part("bomb.xml");
    expect(open).toThrow(FileRefusal);
    expect(open).toThrow("too large");
  });

  test("where a part unpacks to more than the list says", () => {
    const file = writeZip(new Map([["a.xml", new Uint8Array(5_000_000)]]));
    // The unpacked size, 24 bytes into the only entry of the list, which ends 22 bytes before the file does.
    const entry = file.length - 22 - 46 - "a.xml".length;
    new DataView(file.buffer).setUint32(entry + 24, 100, true);
    expect(() => new ZipFile(file).part("a.xml")).toThrow("a.xml isn't what was packed");
  });
});
