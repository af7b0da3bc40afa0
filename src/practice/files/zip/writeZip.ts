import { crc32 } from "./crc";
import { deflated, joined } from "./inflate";
import * as layout from "./layout";

/** The first of January 1980, where a zip file's calendar begins: what is in it says nothing about when it was made. */
const DATE = 0x0021;

/**
 * Makes a zip file.
 *
 * @param parts their bytes by name, in order.
 * @param packed whether they are packed; a file that is only read on at once need not be.
 */
export async function writeZip(
  parts: ReadonlyMap<string, Uint8Array<ArrayBuffer>>,
  packed: boolean,
): Promise<Uint8Array<ArrayBuffer>> {
  const pieces: Uint8Array[] = [];
  const list: Uint8Array[] = [];
  let at = 0;
  for (const [text, whole] of parts) {
    const name = new TextEncoder().encode(text);
    const bytes = packed ? await deflated(whole) : whole;
    const facts = {
      name,
      bytes,
      whole: whole.length,
      crc: crc32(whole),
      method: packed ? layout.DEFLATED : layout.STORED,
    };
    const head = record(layout.LOCAL, layout.LOCAL_LENGTH, 4, facts);
    list.push(listed(facts, at), name);
    pieces.push(head, name, bytes);
    at += head.length + name.length + bytes.length;
  }
  const directory = joined(list);
  const end = new DataView(new ArrayBuffer(layout.END_LENGTH));
  end.setUint32(0, layout.END, true);
  end.setUint16(8, parts.size, true);
  end.setUint16(10, parts.size, true);
  end.setUint32(12, directory.length, true);
  end.setUint32(16, at, true);
  return joined([...pieces, directory, new Uint8Array(end.buffer)]);
}

interface Facts {
  readonly name: Uint8Array;
  readonly bytes: Uint8Array;
  readonly whole: number;
  readonly crc: number;
  readonly method: number;
}

/** What stands alike before a part and in the list: from the version that is needed to the length of the name. */
function record(mark: number, length: number, from: number, { name, bytes, whole, crc, method }: Facts): Uint8Array {
  const view = new DataView(new ArrayBuffer(length));
  view.setUint32(0, mark, true);
  view.setUint16(from, layout.VERSION, true);
  view.setUint16(from + 2, layout.NAME_IS_UTF8, true);
  view.setUint16(from + 4, method, true);
  view.setUint16(from + 8, DATE, true);
  view.setUint32(from + 10, crc, true);
  view.setUint32(from + 14, bytes.length, true);
  view.setUint32(from + 18, whole, true);
  view.setUint16(from + 22, name.length, true);
  return new Uint8Array(view.buffer);
}

function listed(facts: Facts, at: number): Uint8Array {
  const entry = record(layout.ENTRY, layout.ENTRY_LENGTH, 6, facts);
  const view = new DataView(entry.buffer);
  view.setUint16(4, layout.VERSION, true);
  view.setUint32(42, at, true);
  return entry;
}
