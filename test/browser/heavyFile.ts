import { strToU8, zipSync } from "fflate";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const EVERYTHING = "A1:XFD1048576";

const row = (number: number, formula: string, attributes = "") =>
  `<row r="${number}"><c r="A${number}"><f ${attributes}>${formula}</f><v>1</v></c></row>`;
const rows = (count: number, formula: (row: number) => string) =>
  Array.from({ length: count }, (_, place) => row(place + 1, formula(place + 1))).join("");

/** What is in each sheet, as files hold it (ECMA-376 18.3.1). */
const SHEETS: Readonly<Record<string, string>> = {
  Jobs: `<sheetData><row r="1"><c r="A1"><v>7</v></c></row></sheetData><mergeCells count="1"><mergeCell ref="C5:XFD1048576"/></mergeCells><conditionalFormatting sqref="${EVERYTHING}"><cfRule type="expression" priority="1"><formula>A1&gt;1</formula></cfRule></conditionalFormatting><dataValidations count="1"><dataValidation type="list" sqref="${EVERYTHING}"><formula1>"a,b"</formula1></dataValidation></dataValidations>`,
  Array: `<sheetData>${row(1, `ROW(${EVERYTHING})`, `t="array" ref="${EVERYTHING}"`)}</sheetData>`,
  Columns: `<sheetData>${rows(20_000, (at) => `SUM(Jobs!B:B)+${at}`)}</sheetData>`,
  Indirect: `<sheetData>${rows(50, (at) => `SUM(INDIRECT("Jobs!${EVERYTHING}"))+${at}`)}</sheetData>`,
  Terms: `<sheetData>${row(1, Array(400).fill("1").join("+"))}${row(2, Array(5000).fill("1").join("+"))}</sheetData>`,
  Doubled: `<sheetData>${row(1, 'REPT("A",32767)')}${Array.from({ length: 28 }, (_, at) => row(at + 2, `A${at + 1}&amp;A${at + 1}`)).join("")}</sheetData>`,
};

/** A small .xlsx file with everything in it that can keep a spreadsheet page busy for minutes, or end it. */
export function heavyFile(): Uint8Array {
  const names = Object.keys(SHEETS);
  const each = (text: (name: string, number: number) => string) =>
    names.map((name, place) => text(name, place + 1)).join("");
  const defined = Array.from({ length: 50_000 }, (_, at) => `<definedName name="Rate_${at}">Jobs!$A$1</definedName>`);
  const parts: Record<string, string> = {
    "[Content_Types].xml": `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/>${each((_, number) => `<Override PartName="/xl/worksheets/sheet${number}.xml" ContentType="${TYPE}.worksheet+xml"/>`)}</Types>`,
    "_rels/.rels": `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${each((name, number) => `<sheet name="${name}" sheetId="${number}" r:id="rId${number}"/>`)}</sheets><definedNames>${defined.join("")}</definedNames></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${PACKAGE}/relationships">${each((_, number) => `<Relationship Id="rId${number}" Type="${OFFICE}/worksheet" Target="worksheets/sheet${number}.xml"/>`)}</Relationships>`,
  };
  for (const [place, name] of names.entries())
    parts[`xl/worksheets/sheet${place + 1}.xml`] = `<worksheet xmlns="${MAIN}">${SHEETS[name]}</worksheet>`;
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])));
}
