import type { Worksheet } from "exceljs";
import { type Area, areaAddress } from "../../spreadsheet/areas";
import type { PageSetup } from "../plan";

/** The numbers that files have for sizes of paper: ECMA-376, 18.3.1.63 pageSetup (from memory). */
const PAPER: Readonly<Record<PageSetup["paper"], number>> = { letter: 1, a4: 9 };
const FOOTER_MARGIN_IN = 0.3;

/** Sets up how a sheet of a file is printed. `area` is where the plan stands on it. */
export function setPage(sheet: Worksheet, page: PageSetup, area: Area): void {
  const { paper, landscape, pagesWide, pagesTall, headingRows, breaksAbove = [], marginsIn, footer } = page;
  const first = area.row + 1;
  sheet.pageSetup = {
    paperSize: PAPER[paper],
    orientation: landscape ? "landscape" : "portrait",
    fitToPage: true,
    fitToWidth: pagesWide,
    // 0 is as many as it takes.
    fitToHeight: pagesTall ?? 0,
    margins: { ...marginsIn, header: FOOTER_MARGIN_IN, footer: FOOTER_MARGIN_IN },
    printArea: areaAddress(area),
    ...(headingRows && { printTitlesRow: `${first}:${first + headingRows - 1}` }),
  };
  // A file holds the last row of a page.
  for (const row of breaksAbove) sheet.getRow(area.row + row).addPageBreak();
  if (footer) sheet.headerFooter.oddFooter = `&C${footer}`;
}
