import type { PracticeOffice } from "../../../src/practice/grid/practiceOffice";
import type { HeadlessHost } from "../../headlessHost";
import { officeOf } from "../../listSheets";

// The smallest PNG there is: one pixel (RFC 2083).
export const PNG = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";

/** An invented list of beds, and a sheet of notes with room for what is inserted. */
export const office: PracticeOffice = {
  sheets: [
    ...officeOf([
      ["Job", "Bed", "Length (ft)", "Width (ft)", "Depth (in)", "Stone", "Waste", "Tons"],
      ["Elm Row 3", "Front", 20, 4, 2.5, "river rock", 0.08, ""],
      ["Elm Row 3", "Side", 20, 4, 2.5, "river rock", 0.08, "6-8"],
      ["Elm Row 3", "Back", "20'", 4, 2.5, "river rock", 0.08, ""],
    ]).sheets.map((sheet) => ({
      ...sheet,
      frozenRows: 1,
      looks: [{ range: "A1:H1", bold: true, fill: "#EEF3E6", wrap: true }],
    })),
    {
      name: "Notes",
      cells: { A1: "mine", B2: "=1+1", H1: "Truck", I1: "Yards", H2: "Small", I2: 5 },
      columnWidths: { A: 120, E: 30 },
      looks: [
        { range: "D4:F6", fill: "#EEF3E6", bold: true, italic: true, numberFormat: "0.0", indent: 1 },
        { range: "E5", fontName: "Georgia", fontSize: 14, fontColor: "#24413A", horizontal: "Center", underline: true },
      ],
    },
  ],
};

/** Gives the office everything else that a write could spoil: a table, a name, rules, merged cells, a picture, a page. */
export async function addFixtures(_host: HeadlessHost): Promise<void> {
  await Excel.run(async (context) => {
    const { workbook } = context;
    const notes = workbook.worksheets.getItem("Notes");
    notes.tables.add(notes.getRange("H1:I2"), true).name = "Trucks";
    workbook.names.add("Truck_yards", notes.getRange("I2"));
    notes.getRange("A8:B8").merge();
    const { custom } = notes.getRange("B2").conditionalFormats.add(Excel.ConditionalFormatType.custom);
    custom.rule.formula = "=B2>1";
    custom.format.fill.color = "#FBF0D9";
    notes.getRange("A9").dataValidation.rule = { list: { inCellDropDown: true, source: "yes,no" } };
    const border = notes.getRange("D7").format.borders.getItem("EdgeBottom");
    border.style = "Continuous";
    border.color = "#112233";
    // Inside the cells that an estimate at D12 is written over.
    const put = (address: string, format: Excel.CellPropertiesFormat) =>
      notes.getRange(address).setCellProperties([[{ format }]]);
    put("E14", { borders: { bottom: { style: "Double", weight: "Thick", color: "#24413A" } } });
    put("F14", {
      borders: {
        bottom: { style: "Double", weight: "Thick", color: "#24413A" },
        right: { style: "Continuous", weight: "Thick", color: "#112233" },
        top: { style: "Dash", weight: "Medium", color: "#112233" },
      },
    });
    put("E15", { font: { strikethrough: true, underline: "Double" }, textOrientation: 45 });
    put("E16", { protection: { locked: false } });
    put("D13", { textOrientation: 180, protection: { locked: false } });
    notes.shapes.addImage(PNG).name = "Mine";
    notes.pageLayout.orientation = "Landscape";
    workbook.settings.add("Somebody.else", "kept");
    await context.sync();
  });
}
