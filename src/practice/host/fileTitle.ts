/*
 * Where a zip file says what is in it: APPNOTE.TXT 4.3.7, 4.3.12 and 4.3.16. A workbook's title stands in
 * docProps/core.xml (Office Open XML, ECMA-376 part 2, core properties).
 */
const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const END_LENGTH = 22;
const ENTRY_LENGTH = 46;
const LOCAL_LENGTH = 30;
const STORED = 0;
const PROPERTIES = "docProps/core.xml";

/**
 * The title that a workbook's file gives itself; undefined where it gives none.
 *
 * @param file an .xlsx file.
 */
export async function fileTitle(file: Uint8Array): Promise<string | undefined> {
  const packed = findProperties(file);
  if (!packed) return undefined;
  const text = await textOf(packed.bytes, packed.method).catch(() => "");
  const [, title = ""] = /<dc:title>([^<]*)<\/dc:title>/.exec(text) ?? [];
  return unescaped(title).trim() || undefined;
}

/** Whether the bytes are those of a zip file, as every workbook's file is. */
export function isZip(file: Uint8Array): boolean {
  return startOfDirectory(new DataView(file.buffer, file.byteOffset, file.byteLength)) !== undefined;
}

function findProperties(file: Uint8Array): { bytes: Uint8Array<ArrayBuffer>; method: number } | undefined {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  let at = startOfDirectory(view);
  while (at !== undefined && at + ENTRY_LENGTH <= file.length && view.getUint32(at, true) === DIRECTORY_ENTRY) {
    const nameLength = view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(file.subarray(at + ENTRY_LENGTH, at + ENTRY_LENGTH + nameLength));
    if (name === PROPERTIES) {
      const local = view.getUint32(at + 42, true);
      const start = local + LOCAL_LENGTH + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
      const bytes = file.slice(start, start + view.getUint32(at + 20, true));
      return { bytes, method: view.getUint16(at + 10, true) };
    }
    at += ENTRY_LENGTH + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return undefined;
}

function startOfDirectory(view: DataView): number | undefined {
  for (let at = view.byteLength - END_LENGTH; at >= 0; at -= 1)
    if (view.getUint32(at, true) === END_OF_DIRECTORY) return view.getUint32(at + 16, true);
  return undefined;
}

function textOf(bytes: Uint8Array<ArrayBuffer>, method: number): Promise<string> {
  const packed = new Blob([bytes]).stream();
  return new Response(method === STORED ? packed : packed.pipeThrough(new DecompressionStream("deflate-raw"))).text();
}

function unescaped(text: string): string {
  const marks: Readonly<Record<string, string>> = { lt: "<", gt: ">", quot: '"', apos: "'", amp: "&" };
  return text.replace(/&(lt|gt|quot|apos|amp);/g, (_, mark: string) => marks[mark] ?? "");
}
