import { mostParts } from "../limits";
import { damaged, FileTrouble } from "../trouble";
import { crc32 } from "./crc";
import { Allowance, inflated } from "./inflate";
import * as layout from "./layout";

interface Entry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packedBytes: number;
  readonly localAt: number;
}

/** A zip file whose list of parts was read; each part is unpacked when it is asked for, and counted. */
export class ZipFile {
  /** The parts' names as the file spells them, in its order. */
  readonly names: readonly string[];
  private readonly entries = new Map<string, Entry>();
  private readonly allowance = new Allowance();

  /**
   * @throws FileTrouble where the bytes are no zip file, or one whose parts are locked, too many or told twice.
   */
  constructor(private readonly bytes: Uint8Array<ArrayBuffer>) {
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
   * @throws FileTrouble where the part is damaged, or the file unpacks to too much.
   */
  async part(name: string): Promise<Uint8Array<ArrayBuffer> | undefined> {
    const entry = this.entries.get(key(name));
    if (!entry) return undefined;
    const packed = this.packed(entry);
    const whole = await this.unpacked(entry, packed).catch((cause: unknown) => {
      throw cause instanceof FileTrouble ? cause : damaged(`${entry.name} cannot be unpacked`);
    });
    if (crc32(whole) !== entry.crc) throw damaged(`${entry.name} is not what was packed`);
    return new Uint8Array(whole);
  }

  private packed({ name, localAt, packedBytes }: Entry): Uint8Array<ArrayBuffer> {
    const view = new DataView(this.bytes.buffer, this.bytes.byteOffset, this.bytes.byteLength);
    if (localAt + layout.LOCAL_LENGTH > view.byteLength || view.getUint32(localAt, true) !== layout.LOCAL)
      throw damaged(`${name} is not where it should be`);
    const start =
      localAt + layout.LOCAL_LENGTH + view.getUint16(localAt + 26, true) + view.getUint16(localAt + 28, true);
    if (start + packedBytes > view.byteLength) throw damaged(`the end of ${name} is missing`);
    return this.bytes.slice(start, start + packedBytes);
  }

  private async unpacked({ name, method }: Entry, packed: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
    if (method === layout.DEFLATED) return inflated(packed, this.allowance);
    if (method !== layout.STORED) throw damaged(`${name} is packed in an unknown way`);
    this.allowance.take(packed.length);
    return packed;
  }
}

/** Names of parts in a package are the same whatever their capitals: ECMA-376 part 2, from memory. */
function key(name: string): string {
  return name.replace(/^\//, "").toLowerCase();
}

function readDirectory(bytes: Uint8Array): Entry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = layout.endOfDirectory(view);
  if (end === undefined) throw damaged("its list of parts is missing, as where a download broke off");
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (count > mostParts || at === layout.IN_64_BITS)
    throw new FileTrouble(`The file is too large: it has more than ${mostParts} parts, or needs a larger kind of zip.`);
  const entries: Entry[] = [];
  for (let number = 0; number < count; number += 1) {
    if (at + layout.ENTRY_LENGTH > end || view.getUint32(at, true) !== layout.ENTRY)
      throw damaged("its list of parts breaks off");
    const nameLength = view.getUint16(at + 28, true);
    const nameEnd = at + layout.ENTRY_LENGTH + nameLength;
    if (nameEnd > end) throw damaged("its list of parts breaks off");
    if (view.getUint16(at + 8, true) & layout.LOCKED)
      throw new FileTrouble("The file's parts are locked with a password. Take the password off, then open it.");
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + layout.ENTRY_LENGTH, nameEnd)),
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packedBytes: view.getUint32(at + 20, true),
      localAt: view.getUint32(at + 42, true),
    });
    at = nameEnd + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries.filter(({ name }) => !name.endsWith("/"));
}
