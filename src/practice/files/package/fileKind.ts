import { mostFileBytes } from "../limits";
import { damaged, FileTrouble } from "../trouble";
import { ZipFile } from "../zip/readZip";

/** How the files of older spreadsheet programs begin, and locked newer ones, which hide in the same wrapping. */
const WRAPPED = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const ZIP = [0x50, 0x4b];
/** The name, in two bytes a letter, under which a locked workbook lies in the wrapping: [MS-OFFCRYPTO], from memory. */
const LOCKED = Uint8Array.from([..."EncryptedPackage"].flatMap((letter) => [letter.charCodeAt(0), 0]));

/**
 * Takes a file's bytes for a package of parts.
 *
 * @throws FileTrouble where they are none, saying what they are and what to do.
 */
export function openPackage(bytes: Uint8Array<ArrayBuffer>): ZipFile {
  if (bytes.length === 0) throw new FileTrouble("The file is empty.");
  if (bytes.length > mostFileBytes) {
    throw new FileTrouble(
      `The file is too large: ${Math.ceil(bytes.length / 1e6)} MB, and at most ${mostFileBytes / 1e6} MB can be opened here.`,
    );
  }
  if (beginsWith(bytes, WRAPPED)) {
    throw new FileTrouble(
      holds(bytes, LOCKED)
        ? "The file is locked with a password. Open it in your spreadsheet program, take the password off, and save it."
        : "The file is an older kind, such as .xls. Open it in your spreadsheet program and save it as .xlsx.",
    );
  }
  if (!beginsWith(bytes, ZIP)) {
    throw new FileTrouble("The file is no .xlsx workbook, whatever its name. Save it as .xlsx where it was made.");
  }
  const zip = new ZipFile(bytes);
  if (zip.has("xl/workbook.bin")) {
    throw new FileTrouble("The file is a binary workbook (.xlsb). Save it as .xlsx in your spreadsheet program.");
  }
  if (zip.has("content.xml") && zip.has("mimetype")) {
    throw new FileTrouble("The file is an OpenDocument file (.ods). Save it as .xlsx where it was made.");
  }
  if (!zip.has("[Content_Types].xml")) throw damaged("it is a zip file, but no workbook");
  return zip;
}

function beginsWith(bytes: Uint8Array, start: readonly number[]): boolean {
  return start.every((byte, index) => bytes[index] === byte);
}

function holds(bytes: Uint8Array, wanted: Uint8Array): boolean {
  const first = wanted[0] ?? 0;
  for (let at = bytes.indexOf(first); at >= 0; at = bytes.indexOf(first, at + 1)) {
    if (wanted.every((byte, index) => bytes[at + index] === byte)) return true;
  }
  return false;
}
