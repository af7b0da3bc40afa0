import type { PageSetup } from "../sheets/plan";

/**
 * Queues how a sheet is printed onto it.
 *
 * @param target the cells that are printed: where the plan stands.
 */
export function queuePage(worksheet: Excel.Worksheet, target: Excel.Range, page: PageSetup): void {
  const { paper, landscape, pagesWide, pagesTall, headingRows, breaksAbove = [], marginsIn, footer } = page;
  const { pageLayout, horizontalPageBreaks } = worksheet;
  pageLayout.paperSize = paper === "a4" ? "A4" : "Letter";
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.zoom = {
    horizontalFitToPages: pagesWide,
    ...(pagesTall !== undefined && { verticalFitToPages: pagesTall }),
  };
  pageLayout.setPrintMargins("Inches", marginsIn);
  pageLayout.setPrintArea(target);
  if (headingRows) {
    const headings = target.getRow(0).getResizedRange(headingRows - 1, 0);
    pageLayout.setPrintTitleRows(headings.getEntireRow());
  }
  for (const row of breaksAbove) horizontalPageBreaks.add(target.getCell(row, 0));
  if (footer) pageLayout.headersFooters.defaultForAllPages.centerFooter = footer;
}
