import { writeZip } from "../src/xlsx/zip";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const SHEET_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";

function pointers(...all: readonly (readonly [id: string, kind: string, target: string])[]): string {
  const xmls = all.map(
    ([id, kind, target]) => `<Relationship Id="${id}" Type="${OFFICE}/${kind}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${PACKAGE}/relationships">${xmls.join("")}</Relationships>`;
}

/** The first sheet: what the practice workbook knows, among what it doesn't. */
export const jobsXml =
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}" xmlns:mc="urn:mc" mc:Ignorable="x14ac" xmlns:x14ac="urn:x14ac">` +
  `<sheetPr codeName="Jobs1"><tabColor theme="4" tint="0.4"/></sheetPr><dimension ref="A1:F6"/>` +
  `<sheetViews><sheetView zoomScale="85" tabSelected="1" workbookViewId="0"><selection activeCell="B2" sqref="B2"/></sheetView></sheetViews>` +
  `<sheetFormatPr defaultRowHeight="15" x14ac:dyDescent="0.25"/><cols><col min="1" max="2" width="20" customWidth="1"/><col min="4" max="4" width="9" style="1"/></cols>` +
  `<sheetData><row r="1" spans="1:6" x14ac:dyDescent="0.25"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="s"><v>2</v></c></row>` +
  `<row r="2" spans="1:6" x14ac:dyDescent="0.25"><c r="A2" t="inlineStr"><is><r><rPr><b/></rPr><t>Lark </t></r><r><t>walk</t></r></is></c><c r="B2" s="2"><v>18</v></c><c r="C2"><f>B2*2</f><v>36</v></c><c r="D2"><v>5</v></c><c r="F2"><f>WEBSERVICE("https://prices.example")</f><v>12.5</v></c></row>` +
  `<row r="3"><c r="A3"><f t="shared" ref="A3:A5" si="0">B3*10</f><v>20</v></c><c r="B3"><v>2</v></c><c r="C3" t="str"><f>B3&amp;" ft"</f><v>2 ft</v></c></row>` +
  `<row r="4"><c r="A4"><f t="shared" si="0"/><v>30</v></c><c r="B4"><v>3</v></c><c r="C4"><f>TODAY()</f><v>44000</v></c></row>` +
  `<row r="5"><c r="A5"><f t="shared" si="0"/><v>40</v></c><c r="B5"><v>4</v></c><c r="C5"><f>F2+1</f><v>13.5</v></c></row></sheetData>` +
  `<sheetProtection algorithmName="none" sheet="0"/><autoFilter ref="A1:C5"/><mergeCells count="1"><mergeCell ref="E3:F4"/></mergeCells>` +
  `<conditionalFormatting sqref="B2:B5"><cfRule type="top10" dxfId="0" priority="1" rank="1"/><cfRule type="cellIs" dxfId="0" priority="2" operator="greaterThan"><formula>9</formula></cfRule></conditionalFormatting>` +
  `<dataValidations count="2"><dataValidation type="whole" sqref="B2"><formula1>1</formula1><formula2>99</formula2></dataValidation><dataValidation type="list" sqref="A2"><formula1>"Lark walk,Other"</formula1></dataValidation></dataValidations>` +
  `<hyperlinks><hyperlink ref="A2" r:id="rId4" display="the plan"/></hyperlinks><printOptions gridLines="1"/><pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><pageSetup orientation="portrait" r:id="rId1"/>` +
  `<drawing r:id="rId2"/><legacyDrawing r:id="rId3"/><tableParts count="1"><tablePart r:id="rId5"/></tableParts><extLst><ext uri="{x}"><x:own xmlns:x="urn:other">kept</x:own></ext></extLst></worksheet>`;

/** The second sheet as programs write it that read no other kind: with the place of each cell. */
export const notesXml = `<worksheet xmlns="${MAIN}"><sheetData><row r="1"><c r="A1"><v>7</v></c><c r="B1"><f>Rate*2+Jobs!B2</f><v>32</v></c></row></sheetData></worksheet>`;

const stylesXml =
  `<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="11"/><color theme="1"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font></fonts>` +
  `<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border/></borders>` +
  `<cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="9" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="4" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyProtection="1"><protection locked="0"/></xf></cellXfs>` +
  `<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles><dxfs count="1"><dxf><font><b/><color rgb="FFFF0000"/></font></dxf></dxfs><tableStyles count="0"/></styleSheet>`;

/**
 * A workbook as another program might have made it, with parts that the practice workbook knows nothing of: a chart, a
 * comment, a printer's settings, a part of another add-in, a pivot table's memory.
 *
 * @param changes other texts for some of its parts.
 */
export function handMadeFile(changes: Readonly<Record<string, string>> = {}): Uint8Array {
  const parts: Record<string, string> = {
    "[Content_Types].xml":
      `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Default Extension="bin" ContentType="x/printer"/><Default Extension="vml" ContentType="x/vml"/>` +
      [
        ["workbook.xml", `${SHEET_TYPE}.sheet.main+xml`],
        ["worksheets/sheet1.xml", `${SHEET_TYPE}.worksheet+xml`],
        ["worksheets/sheet2.xml", `${SHEET_TYPE}.worksheet+xml`],
        ["styles.xml", `${SHEET_TYPE}.styles+xml`],
        ["sharedStrings.xml", `${SHEET_TYPE}.sharedStrings+xml`],
        ["calcChain.xml", `${SHEET_TYPE}.calcChain+xml`],
        ["tables/table1.xml", `${SHEET_TYPE}.table+xml`],
        ["comments1.xml", `${SHEET_TYPE}.comments+xml`],
        ["drawings/drawing1.xml", "application/vnd.openxmlformats-officedocument.drawing+xml"],
        ["charts/chart1.xml", "application/vnd.openxmlformats-officedocument.drawingml.chart+xml"],
        ["pivotCache/pivotCacheDefinition1.xml", `${SHEET_TYPE}.pivotCacheDefinition+xml`],
      ]
        .map(([name, type]) => `<Override PartName="/xl/${name}" ContentType="${type}"/>`)
        .join("") +
      `</Types>`,
    "_rels/.rels": pointers(["rId1", "officeDocument", "xl/workbook.xml"]),
    "xl/workbook.xml":
      `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><workbookPr codeName="Book"/><bookViews><workbookView activeTab="0"/></bookViews>` +
      `<sheets><sheet name="Jobs" sheetId="3" r:id="rId1"/><sheet name="Notes" sheetId="7" r:id="rId2"/></sheets>` +
      `<definedNames><definedName name="Rate" hidden="1">Notes!$A$1</definedName><definedName name="_xlnm._FilterDatabase" localSheetId="0" hidden="1">Jobs!$A$1:$C$5</definedName></definedNames><calcPr calcId="191029"/></workbook>`,
    "xl/_rels/workbook.xml.rels": pointers(
      ["rId1", "worksheet", "worksheets/sheet1.xml"],
      ["rId2", "worksheet", "worksheets/sheet2.xml"],
      ["rId3", "styles", "styles.xml"],
      ["rId4", "sharedStrings", "sharedStrings.xml"],
      ["rId5", "calcChain", "calcChain.xml"],
      ["rId6", "pivotCacheDefinition", "pivotCache/pivotCacheDefinition1.xml"],
      ["rId7", "customXml", "../customXml/item1.xml"],
    ),
    "xl/worksheets/sheet1.xml": jobsXml,
    "xl/worksheets/_rels/sheet1.xml.rels": pointers(
      ["rId1", "printerSettings", "../printerSettings/printerSettings1.bin"],
      ["rId2", "drawing", "../drawings/drawing1.xml"],
      ["rId3", "vmlDrawing", "../drawings/vmlDrawing1.vml"],
      ["rId4", "hyperlink", "#Notes!A1"],
      ["rId5", "table", "../tables/table1.xml"],
      ["rId6", "comments", "../comments1.xml"],
    ),
    "xl/worksheets/sheet2.xml": notesXml.replaceAll(/ r="[^"]*"/g, ""),
    "xl/styles.xml": stylesXml,
    "xl/sharedStrings.xml": `<sst xmlns="${MAIN}" count="3" uniqueCount="3"><si><t>Bed</t></si><si><t>Length</t></si><si><t>Twice</t></si></sst>`,
    "xl/calcChain.xml": `<calcChain xmlns="${MAIN}"><c r="C2" i="3"/><c r="A3" i="3"/></calcChain>`,
    "xl/tables/table1.xml": `<table xmlns="${MAIN}" id="1" name="Beds" displayName="Beds" ref="A1:C5"><autoFilter ref="A1:C5"/><tableColumns count="3"><tableColumn id="1" name="Bed"/><tableColumn id="2" name="Length"/><tableColumn id="3" name="Twice"/></tableColumns><tableStyleInfo name="TableStyleMedium2" showRowStripes="1"/></table>`,
    "xl/comments1.xml": `<comments xmlns="${MAIN}"><authors><author>A</author></authors><commentList><comment ref="B2" authorId="0"><text><t>ask again</t></text></comment></commentList></comments>`,
    "xl/printerSettings/printerSettings1.bin": "printer",
    "xl/drawings/vmlDrawing1.vml": "<xml/>",
    "xl/drawings/drawing1.xml": `<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"><xdr:twoCellAnchor><xdr:graphicFrame/></xdr:twoCellAnchor></xdr:wsDr>`,
    "xl/drawings/_rels/drawing1.xml.rels": pointers(["rId1", "chart", "../charts/chart1.xml"]),
    "xl/charts/chart1.xml": `<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:f>Jobs!$B$2:$B$5</c:f></c:chartSpace>`,
    "xl/pivotCache/pivotCacheDefinition1.xml": `<pivotCacheDefinition xmlns="${MAIN}" recordCount="0"/>`,
    "customXml/item1.xml": `<other xmlns="urn:other">of another add-in</other>`,
    ...changes,
  };
  return writeZip(new Map(Object.entries(parts).map(([name, text]) => [name, new TextEncoder().encode(text)])));
}
