import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost({ office: { sheets: [{ name: "Crew sheet", cells: { A1: 1 } }] } });
});
afterEach(() => host.dispose());

const onSheet = (work: (sheet: Excel.Worksheet) => void) =>
  Excel.run(async (context) => {
    work(context.workbook.worksheets.getItem("Crew sheet"));
    await context.sync();
  });
const setUp = () =>
  onSheet((sheet) => {
    const { pageLayout } = sheet;
    pageLayout.orientation = Excel.PageOrientation.landscape;
    pageLayout.paperSize = Excel.PaperType.a4;
    pageLayout.zoom = { horizontalFitToPages: 1 };
    pageLayout.setPrintMargins(Excel.PrintMarginUnit.inches, { top: 0.5, left: 1 });
    pageLayout.setPrintArea("A1:F40");
    pageLayout.setPrintTitleRows("$1:$2");
    pageLayout.headersFooters.defaultForAllPages.centerFooter = "Page &P of &N";
    sheet.horizontalPageBreaks.add("A21");
    sheet.horizontalPageBreaks.add(sheet.getRange("A11:C12"));
  });

describe("a sheet's pages", () => {
  test("are as the host has them where no one has set them up", async () => {
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Crew sheet");
      const { pageLayout } = sheet;
      pageLayout.load("orientation,paperSize,zoom,topMargin");
      const area = pageLayout.getPrintAreaOrNullObject();
      const titles = pageLayout.getPrintTitleRowsOrNullObject();
      const breaks = sheet.horizontalPageBreaks.getCount();
      await context.sync();
      expect([pageLayout.orientation, pageLayout.paperSize, pageLayout.zoom]).toEqual([
        "Portrait",
        "Letter",
        { scale: 100 },
      ]);
      expect([area.isNullObject, titles.isNullObject, breaks.value]).toEqual([true, true, 0]);
    });
  });

  test("are set up, and told", async () => {
    await setUp();
    await Excel.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Crew sheet");
      const { pageLayout } = sheet;
      pageLayout.load("orientation,paperSize,zoom,topMargin,leftMargin,bottomMargin");
      const { defaultForAllPages } = pageLayout.headersFooters;
      defaultForAllPages.load("centerFooter");
      const area = pageLayout.getPrintAreaOrNullObject().load("address");
      const titles = pageLayout.getPrintTitleRowsOrNullObject().load("address");
      sheet.horizontalPageBreaks.load("items");
      await context.sync();
      expect([pageLayout.orientation, pageLayout.paperSize, pageLayout.zoom]).toEqual([
        "Landscape",
        "A4",
        { horizontalFitToPages: 1 },
      ]);
      // Half an inch and one inch in points; the bottom margin was left alone.
      expect([pageLayout.topMargin, pageLayout.leftMargin, pageLayout.bottomMargin]).toEqual([36, 72, 54]);
      expect([area.address, titles.address]).toEqual(["'Crew sheet'!A1:F40", "'Crew sheet'!1:2"]);
      expect(defaultForAllPages.centerFooter).toBe("Page &P of &N");
      const cells = sheet.horizontalPageBreaks.items.map((one) => one.getCellAfterBreak().load("address"));
      await context.sync();
      expect(cells.map(({ address }) => address)).toEqual(["'Crew sheet'!A11", "'Crew sheet'!A21"]);
    });
  });

  test("go with their rows, are kept over a reload, and can be read by whoever makes a file", async () => {
    await setUp();
    const { sheets } = host.grid;
    sheets.insertRows(sheets.activeId(), 15, 3);
    const kept = host.save();
    host.dispose();
    host = await createHost({ kept });
    const sheetId = host.grid.sheets.activeId();
    expect(host.grid.pages.get(sheetId)).toMatchObject({
      orientation: "Landscape",
      printArea: { sheetId, row: 0, column: 0, rowCount: 43, columnCount: 6 },
      titleRows: { row: 0, rowCount: 2 },
      breaksAbove: [10, 23],
      texts: { centerFooter: "Page &P of &N", leftHeader: "" },
    });
  });

  test("lose their breaks one by one, or all", async () => {
    await setUp();
    await Excel.run(async (context) => {
      const { horizontalPageBreaks } = context.workbook.worksheets.getItem("Crew sheet");
      horizontalPageBreaks.load("items");
      await context.sync();
      horizontalPageBreaks.items[0]!.delete();
      const left = horizontalPageBreaks.getCount();
      await context.sync();
      horizontalPageBreaks.removePageBreaks();
      const none = horizontalPageBreaks.getCount();
      await context.sync();
      expect([left.value, none.value]).toEqual([1, 0]);
    });
  });

  const refusals: readonly (readonly [string, (sheet: Excel.Worksheet) => void])[] = [
    [
      "a share and a number of pages at once",
      (sheet) => (sheet.pageLayout.zoom = { scale: 50, verticalFitToPages: 1 }),
    ],
    ["half a page", (sheet) => (sheet.pageLayout.zoom = { horizontalFitToPages: 0.5 })],
    ["title rows that are not whole", (sheet) => sheet.pageLayout.setPrintTitleRows("A1:B2")],
    ["a break above the first row", (sheet) => sheet.horizontalPageBreaks.add("A1")],
    ["a negative margin", (sheet) => sheet.pageLayout.setPrintMargins("Inches", { top: -1 })],
    [
      "a line at the foot that is too long",
      (sheet) => (sheet.pageLayout.headersFooters.defaultForAllPages.centerFooter = "x".repeat(256)),
    ],
  ];
  test.each(refusals)("are not set to %s", async (_, work) => {
    const before = host.grid.pages.get(host.grid.sheets.activeId());
    await expect(onSheet((sheet) => void work(sheet))).rejects.toMatchObject({ code: "InvalidArgument" });
    expect(host.grid.pages.get(host.grid.sheets.activeId())).toEqual(before);
  });

  test("stay as they are on a protected sheet", async () => {
    await onSheet((sheet) => sheet.protection.protect());
    await expect(setUp()).rejects.toMatchObject({ code: "AccessDenied" });
  });
});
