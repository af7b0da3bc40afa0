import { inflateRawSync } from "node:zlib";

/** The offsets of a zip file's central directory: APPNOTE 4.3.12 and 4.3.16 (from memory). */
const ENTRY = 0x02014b50;
const END = 0x06054b50;

/** Everything that is in a zip file, such as an .xlsx: each part's text by its path. Bytes of pictures come as text, too. */
export function unzip(file: Uint8Array): Map<string, string> {
  const bytes = Buffer.from(file);
  const parts = new Map<string, string>();
  const end = bytes.lastIndexOf(Buffer.from([END & 255, (END >> 8) & 255, (END >> 16) & 255, END >>> 24]));
  let at = bytes.readUInt32LE(end + 16);
  while (bytes.readUInt32LE(at) === ENTRY) {
    const [packed, nameLength] = [bytes.readUInt32LE(at + 20), bytes.readUInt16LE(at + 28)];
    const local = bytes.readUInt32LE(at + 42);
    const start = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const data = bytes.subarray(start, start + packed);
    const text = bytes.readUInt16LE(at + 10) === 0 ? data : inflateRawSync(data);
    parts.set(bytes.toString("utf8", at + 46, at + 46 + nameLength), text.toString("utf8"));
    at += 46 + nameLength + bytes.readUInt16LE(at + 30) + bytes.readUInt16LE(at + 32);
  }
  return parts;
}
