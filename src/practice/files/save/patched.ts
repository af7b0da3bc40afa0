import { settingsPart, settingsXml } from "../settingsPart";
import { ZipFile } from "../zip/readZip";
import { writeZip } from "../zip/writeZip";
import { type Change, contentTypes, declare, pointers, pointTo, relationshipTypes } from "./parts";
import { type PictureWords, withWords } from "./pictures";
import { addSpillFacts, spilling } from "./spillFacts";
import { numberedTable, type TablePart } from "./tables";

/** What the library leaves out of a file, and is added to its parts afterwards. */
export interface Additions {
  readonly namesXml: string;
  readonly settings: Readonly<Record<string, unknown>>;
  /** By sheet, in order. */
  readonly sheets: readonly {
    readonly id: string;
    readonly mergesXml: string;
    readonly listsXml: string;
    readonly pictures: readonly PictureWords[];
  }[];
  readonly tables: readonly TablePart[];
}

const customXml = "http://schemas.openxmlformats.org/officeDocument/2006/customXml";
const settingsId = "{6B0B3F0E-3C1D-4E0B-9C4A-5B1B0A6D2F11}";

/** The file with what the library left out. */
export async function patched(file: Uint8Array<ArrayBuffer>, additions: Additions): Promise<Uint8Array<ArrayBuffer>> {
  const parts = await textsOf(file);
  const change = (name: string, edit: (text: string) => string) =>
    parts.text.set(name, edit(parts.text.get(name) ?? ""));
  change("xl/workbook.xml", (xml) => xml.replace("</sheets>", () => `</sheets>${additions.namesXml}`));
  additions.sheets.forEach(({ id, mergesXml, listsXml, pictures }, place) => {
    const name = `xl/worksheets/sheet${place + 1}.xml`;
    // The order of a sheet's elements is fixed: ECMA-376 18.3.1.99.
    change(name, (xml) => {
      const merged = xml.replace(/<\/sheetData>|<sheetData\/>/, (end) => end + mergesXml);
      return spilling(merged.replace(afterLists, (next) => listsXml + next));
    });
    const drawing = pointers(parts.text, name).find(({ kind }) => kind === "drawing")?.target;
    if (drawing) change(drawing.replace("../", "xl/"), (xml) => withWords(xml, pictures));
    addTables(change, parts.text, name, additions.tables, id);
  });
  addSpillFacts(change);
  if (Object.keys(additions.settings).length > 0) addSettings(change, additions.settings);
  const encoder = new TextEncoder();
  const all = [...parts.text].map(([name, text]) => [name, encoder.encode(text)] as const);
  return writeZip(new Map([...all, ...parts.other]), true);
}

/** What follows the lists to choose from in a sheet; the last of them is its end. */
const afterLists =
  /<(?:hyperlinks|printOptions|pageMargins|pageSetup|headerFooter|rowBreaks|drawing|tableParts|extLst|\/worksheet)\b/;

async function textsOf(file: Uint8Array<ArrayBuffer>) {
  const zip = new ZipFile(file);
  const text = new Map<string, string>();
  const other = new Map<string, Uint8Array<ArrayBuffer>>();
  for (const name of zip.names) {
    const bytes = await zip.part(name);
    if (!bytes) continue;
    if (/\.(?:xml|rels)$/.test(name)) text.set(name, new TextDecoder().decode(bytes));
    else other.set(name, bytes);
  }
  return { text, other };
}

function addTables(
  change: Change,
  text: ReadonlyMap<string, string>,
  sheet: string,
  tables: readonly TablePart[],
  id: string,
): void {
  const here = [...tables.entries()].filter(([, { sheetId }]) => sheetId === id);
  if (here.length === 0) return;
  for (const [place, { xml }] of here) {
    const part = `xl/tables/table${place + 1}.xml`;
    change(part, () => numberedTable(xml, place + 1));
    declare(change, part, `${contentTypes}.spreadsheetml.table+xml`);
    pointTo(change, sheet, `table${place + 1}`, `${relationshipTypes}/table`, `../tables/table${place + 1}.xml`);
  }
  const marks = here.map(([place]) => `<tablePart r:id="table${place + 1}"/>`);
  const partsXml = `<tableParts count="${marks.length}">${marks.join("")}</tableParts>`;
  if (text.has(sheet)) change(sheet, (xml) => xml.replace("</worksheet>", `${partsXml}</worksheet>`));
}

function addSettings(change: Change, settings: Readonly<Record<string, unknown>>): void {
  const facts = settingsPart.replace("item", "itemProps");
  change(settingsPart, () => settingsXml(settings));
  change(
    facts,
    () => `<ds:datastoreItem ds:itemID="${settingsId}" xmlns:ds="${customXml}"><ds:schemaRefs/></ds:datastoreItem>`,
  );
  declare(change, facts, `${contentTypes}.customXmlProperties+xml`);
  pointTo(change, settingsPart, "facts", `${relationshipTypes}/customXmlProps`, facts.replace(/^.*\//, ""));
  pointTo(change, "xl/workbook.xml", "settings", `${relationshipTypes}/customXml`, `../${settingsPart}`);
}
