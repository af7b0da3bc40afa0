import { damaged, FileRefusal, refuseTooLarge } from "../limits";
import { SETTINGS } from "../write/xml";
import { ZipFile } from "../zip";
import { elements, firstElement, readXml } from "./xml";

/** How the files of older spreadsheet programs begin, and locked newer ones, which hide in the same wrapping. */
const WRAPPED = [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1];
const ZIP = [0x50, 0x4b];
/** The name, in two bytes a letter, of a locked workbook inside the wrapping: [MS-OFFCRYPTO], from memory. */
const LOCKED = Uint8Array.from([..."EncryptedPackage"].flatMap((letter) => [letter.charCodeAt(0), 0]));

/**
 * Takes a file's bytes for a package of parts.
 *
 * @throws FileRefusal where they are none, saying what they are and what to do.
 */
export function openPackage(bytes: Uint8Array): ZipFile {
  if (bytes.length === 0) throw new FileRefusal("The file is empty.");
  refuseTooLarge(bytes.length);
  if (beginsWith(bytes, WRAPPED)) {
    throw new FileRefusal(
      holds(bytes, LOCKED)
        ? "The file is locked with a password. Open it in your spreadsheet program, remove the password, and save it."
        : "The file is an older kind, such as .xls. Open it in your spreadsheet program and save it as .xlsx.",
    );
  }
  if (!beginsWith(bytes, ZIP)) {
    throw new FileRefusal(
      "The file isn't an .xlsx workbook, whatever its name says. Save it as .xlsx in the program it came from.",
    );
  }
  const zip = new ZipFile(bytes);
  if (zip.has("xl/workbook.bin")) {
    throw new FileRefusal("The file is a binary workbook (.xlsb). Save it as .xlsx in your spreadsheet program.");
  }
  if (zip.has("content.xml") && zip.has("mimetype")) {
    throw new FileRefusal("The file is an OpenDocument file (.ods). Save it as .xlsx in the program it came from.");
  }
  if (!zip.has("[Content_Types].xml")) throw damaged("it's a zip file, but not a workbook");
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

/** The title that a workbook's file gives itself; "" for none. @throws FileRefusal where it is no such file. */
export function fileTitle(bytes: Uint8Array): string {
  const properties = openPackage(bytes).part("docProps/core.xml");
  return properties ? (firstElement(readXml(properties), "dc:title")?.text.trim() ?? "") : "";
}

const settingsPart = /^customXml\/item\d+\.xml$/;

/** What add-ins kept in a file: {} where it is none of ours, undefined where it is damaged. */
export function readSettings(zip: ZipFile): Readonly<Record<string, unknown>> | undefined {
  for (const name of zip.names.filter((one) => settingsPart.test(one))) {
    const bytes = zip.part(name);
    if (!bytes || !new TextDecoder().decode(bytes).includes(SETTINGS)) continue;
    try {
      const read: unknown = JSON.parse(readXml(bytes).text);
      return typeof read === "object" && read !== null && !Array.isArray(read) ? { ...read } : undefined;
    } catch {
      return undefined;
    }
  }
  return {};
}

/** What a part of a package points to. */
export interface Relationship {
  /** The last word of what it is: "worksheet", "image". */
  readonly kind: string;
  /** The part's name; the address where it is outside of the file. */
  readonly target: string;
  readonly isOutside: boolean;
}

export type Relationships = ReadonlyMap<string, Relationship>;

/**
 * What a part points to, by id.
 *
 * @param part its name; "" for the package itself.
 */
export function relationshipsOf(zip: Pick<ZipFile, "part">, part: string): Relationships {
  const folder = part.slice(0, part.lastIndexOf("/") + 1);
  const bytes = zip.part(`${folder}_rels/${part.slice(folder.length)}.rels`);
  const found = new Map<string, Relationship>();
  if (!bytes) return found;
  for (const { attributes } of elements(readXml(bytes), "Relationship")) {
    const { Id = "", Type = "", Target = "", TargetMode } = attributes;
    const isOutside = TargetMode === "External";
    found.set(Id, {
      kind: Type.slice(Type.lastIndexOf("/") + 1),
      target: isOutside ? Target : resolved(folder, Target),
      isOutside,
    });
  }
  return found;
}

function resolved(folder: string, target: string): string {
  const steps = target.startsWith("/") ? [] : folder.split("/").filter(Boolean);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "" && step !== ".") steps.push(step);
  }
  return steps.join("/");
}
