import { describe, expect, test } from "vitest";
import { mostUnpackedBytes } from "../limits";
import { FileTrouble } from "../trouble";
import { crc32 } from "./crc";
import { ZipFile } from "./readZip";
import { writeZip } from "./writeZip";

const bytes = (text: string) => new TextEncoder().encode(text);
const text = (part: Uint8Array | undefined) => new TextDecoder().decode(part);
const parts = new Map([
  ["a.xml", bytes("<a/>")],
  ["Ünter/b.xml", bytes("stone ".repeat(500))],
]);

test("the checksum is that of the published check value", () => {
  // The check value of CRC-32/ISO-HDLC for "123456789", from memory of the catalogue of such sums.
  expect(crc32(bytes("123456789"))).toBe(0xcbf43926);
});

test.each([true, false])("what is written is read again (packed: %s)", async (packed) => {
  const zip = new ZipFile(await writeZip(parts, packed));
  expect(zip.names).toEqual(["a.xml", "Ünter/b.xml"]);
  expect(text(await zip.part("a.xml"))).toBe("<a/>");
  expect(text(await zip.part("Ünter/B.XML"))).toBe("stone ".repeat(500));
  expect(await zip.part("c.xml")).toBeUndefined();
});

describe("a zip file is refused in words", () => {
  test("where a part is not what was packed", async () => {
    const file = await writeZip(parts, false);
    file[30 + "a.xml".length] = "x".charCodeAt(0);
    await expect(new ZipFile(file).part("a.xml")).rejects.toThrow("a.xml is not what was packed");
  });

  test("where its end is missing", async () => {
    const file = await writeZip(parts, true);
    expect(() => new ZipFile(file.slice(0, -30))).toThrow("its list of parts is missing");
  });

  test("where it holds a part twice", async () => {
    const twice = new Map([
      ["a.xml", bytes("1")],
      ["A.xml", bytes("2")],
    ]);
    const file = await writeZip(twice, true);
    expect(() => new ZipFile(file)).toThrow("it holds A.xml twice");
  });

  test("where a part unpacks to more than a workbook needs", async () => {
    const bomb = await writeZip(new Map([["bomb.xml", new Uint8Array(mostUnpackedBytes + 1)]]), true);
    expect(bomb.length).toBeLessThan(1_000_000);
    const refusal = new ZipFile(bomb).part("bomb.xml");
    await expect(refusal).rejects.toBeInstanceOf(FileTrouble);
    await expect(refusal).rejects.toThrow("too large");
  });
});
