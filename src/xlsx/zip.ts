import { inflateSync, zipSync } from "fflate";
import { damaged, FileRefusal, mostParts, mostUnpackedBytes } from "./limits";

/*
 * fflate packs and unpacks. The list of parts is read here, because the library doesn't compare checksums, and can't
 * tell a locked part from a damaged one. APPNOTE.TXT 4.3.7 (a part), 4.3.12 (its entry in the list), 4.3.16 (the list's end),
 * 4.4.4 (locked), 4.4.5 (how it is packed).
 */
const LOCAL = { mark: 0x04034b50, length: 30 } as const;
const ENTRY = { mark: 0x02014b50, length: 46 } as const;
const END = { mark: 0x06054b50, length: 22 } as const;
const STORED = 0;
const DEFLATED = 8;
const LOCKED = 1;
const IN_64_BITS = 0xffffffff;
const LONGEST_COMMENT = 0xffff;

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packedBytes: number;
  readonly unpackedBytes: number;
  readonly localAt: number;
}

/** Counts what comes out of one file, all parts together. */
class UnzipBudget {
  private left = mostUnpackedBytes;

  /** @throws FileRefusal where more would come out than a workbook needs. */
  take(bytes: number): void {
    this.left -= bytes;
    if (this.left >= 0) return;
    throw new FileRefusal(
      `The file is too large: unpacked, it is more than ${mostUnpackedBytes / 1e6} MB. Save part of it as a file of its own, and open that.`,
    );
  }
}

/** A zip file whose list of parts was read. Each part is unpacked when it is asked for, and counted. */
export class ZipFile {
  /** The parts' names as the file spells them, in its order. */
  readonly names: readonly string[];
  private readonly entries = new Map<string, Entry>();
  private readonly budget = new UnzipBudget();

  /** @throws FileRefusal where the bytes are no zip file, or one with parts that are locked, too many or listed twice. */
  constructor(private readonly bytes: Uint8Array) {
    const entries = readDirectory(bytes);
    for (const entry of entries) {
      if (this.entries.has(key(entry.name))) throw damaged(`it holds ${entry.name} twice`);
      this.entries.set(key(entry.name), entry);
    }
    this.names = entries.map(({ name }) => name);
  }

  has(name: string): boolean {
    return this.entries.has(key(name));
  }

  /**
   * The bytes of a part; undefined where the file has none of that name, however it is capitalized.
   *
   * @throws FileRefusal where the part is damaged, or the file unpacks to too much.
   */
  part(name: string): Uint8Array | undefined {
    const entry = this.entries.get(key(name));
    if (!entry) return undefined;
    // The buffer has the size that the directory states, so a false size can't make a part larger.
    this.budget.take(entry.unpackedBytes);
    const whole = unpacked(entry, this.packed(entry));
    if (crc32(whole) !== entry.crc) throw damaged(`${entry.name} isn't what was packed`);
    return whole;
  }

  private packed({ name, localAt, packedBytes }: Entry): Uint8Array {
    const view = viewOf(this.bytes);
    if (localAt + LOCAL.length > view.byteLength || view.getUint32(localAt, true) !== LOCAL.mark)
      throw damaged(`${name} isn't where it should be`);
    const start = localAt + LOCAL.length + view.getUint16(localAt + 26, true) + view.getUint16(localAt + 28, true);
    if (start + packedBytes > view.byteLength) throw damaged(`the end of ${name} is missing`);
    return this.bytes.subarray(start, start + packedBytes);
  }
}

/** Makes a zip file. What is in it says nothing about when it was made. @param parts their bytes by name, in order. */
export function writeZip(parts: ReadonlyMap<string, Uint8Array>): Uint8Array<ArrayBuffer> {
  return new Uint8Array(zipSync(Object.fromEntries(parts), { mtime: new Date(1980, 0, 1) }));
}

function unpacked({ name, method, unpackedBytes }: Entry, packed: Uint8Array): Uint8Array {
  if (method === STORED) return packed;
  if (method !== DEFLATED) throw damaged(`${name} is packed in a way that can't be read here`);
  try {
    return inflateSync(packed, { out: new Uint8Array(unpackedBytes) });
  } catch (cause) {
    throw damaged(`${name} can't be unpacked`, cause);
  }
}

/** Names of parts in a package are the same whatever their capitals: ECMA-376 part 2, from memory. */
function key(name: string): string {
  return name.replace(/^\//, "").toLowerCase();
}

function viewOf(bytes: Uint8Array): DataView {
  return new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
}

function readDirectory(bytes: Uint8Array): Entry[] {
  const view = viewOf(bytes);
  const end = endOfDirectory(view);
  if (end === undefined) throw damaged("its list of parts is missing; the download may have stopped partway");
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (count > mostParts || at === IN_64_BITS)
    throw new FileRefusal(`The file is too large: it has more than ${mostParts} parts, or needs a larger kind of zip.`);
  const entries: Entry[] = [];
  for (let number = 0; number < count; number += 1) {
    if (at + ENTRY.length > end || view.getUint32(at, true) !== ENTRY.mark)
      throw damaged("its list of parts is cut short");
    const nameEnd = at + ENTRY.length + view.getUint16(at + 28, true);
    if (nameEnd > end) throw damaged("its list of parts is cut short");
    if (view.getUint16(at + 8, true) & LOCKED)
      throw new FileRefusal("The file's parts are locked with a password. Remove the password, then open it.");
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + ENTRY.length, nameEnd)),
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packedBytes: view.getUint32(at + 20, true),
      unpackedBytes: view.getUint32(at + 24, true),
      localAt: view.getUint32(at + 42, true),
    });
    at = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries.filter(({ name }) => !name.endsWith("/"));
}

function endOfDirectory(view: DataView): number | undefined {
  const first = Math.max(0, view.byteLength - END.length - LONGEST_COMMENT);
  for (let at = view.byteLength - END.length; at >= first; at -= 1) {
    if (view.getUint32(at, true) === END.mark) return at;
  }
  return undefined;
}

/** The polynomial of the checksum in zip files: APPNOTE.TXT 4.4.7. */
const POLYNOMIAL = 0xedb88320;
const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit += 1) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  return rest;
});

/**
 * The checksum that a zip file keeps beside each of its parts.
 *
 * @example crc32(new TextEncoder().encode("123456789")) // 0xcbf43926
 */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (crc >>> 8) ^ (table[(crc ^ byte) & 255] ?? 0);
  return (crc ^ 0xffffffff) >>> 0;
}
