/*
 * How a zip file is laid out: APPNOTE.TXT 4.3.7 (a part), 4.3.12 (its entry in the list), 4.3.16 (the list's end),
 * 4.4.4 (locked), 4.4.5 (how it is packed).
 */
export const LOCAL = 0x04034b50;
export const LOCAL_LENGTH = 30;
export const ENTRY = 0x02014b50;
export const ENTRY_LENGTH = 46;
export const END = 0x06054b50;
export const END_LENGTH = 22;
export const STORED = 0;
export const DEFLATED = 8;
/** The bit of a part that is locked with a password. */
export const LOCKED = 1;
/** The bit of a part whose name is UTF-8. */
export const NAME_IS_UTF8 = 0x0800;
export const IN_64_BITS = 0xffffffff;
/** The version that a program needs to unpack what is deflated. */
export const VERSION = 20;

const LONGEST_COMMENT = 0xffff;

/** Where the end of the list of parts stands; undefined where there is none. */
export function endOfDirectory(view: DataView): number | undefined {
  const first = Math.max(0, view.byteLength - END_LENGTH - LONGEST_COMMENT);
  for (let at = view.byteLength - END_LENGTH; at >= first; at -= 1) {
    if (view.getUint32(at, true) === END) return at;
  }
  return undefined;
}
