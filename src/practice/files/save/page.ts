import type { Worksheet } from "exceljs";
import type { PageSetup } from "../../grid/port";
import { papers, pointsPerInch, textParts, textPlaces } from "../pageWords";

/** Sets up how a sheet of the file is printed, but for the names that a print area and title rows are. */
export function writePage(
  { orientation, paperSize, zoom, margins, texts, breaksAbove }: PageSetup,
  file: Worksheet,
): void {
  const inches = Object.fromEntries(Object.entries(margins).map(([side, points]) => [side, points / pointsPerInch]));
  const { scale, horizontalFitToPages, verticalFitToPages } = zoom;
  const fits = horizontalFitToPages !== undefined || verticalFitToPages !== undefined;
  Object.assign(file.pageSetup, {
    orientation: orientation === "Landscape" ? "landscape" : "portrait",
    paperSize: Number(Object.entries(papers).find(([, name]) => name === paperSize)?.[0] ?? 1),
    margins: inches,
    fitToPage: fits,
    // 0 is as many pages as it takes.
    ...(fits && { fitToWidth: horizontalFitToPages ?? 0, fitToHeight: verticalFitToPages ?? 0 }),
    ...(!fits && scale !== undefined && { scale }),
  });
  const [head, foot] = (["head", "foot"] as const).map((place) => {
    const pieces = textPlaces[place].map((key, index) => (texts[key] ? `&${textParts[index]}${texts[key]}` : ""));
    return pieces.join("");
  });
  if (head) file.headerFooter.oddHeader = head;
  if (foot) file.headerFooter.oddFooter = foot;
  // A file names the last row before a break.
  for (const row of breaksAbove) file.getRow(row).addPageBreak();
}
