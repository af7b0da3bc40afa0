import type { PageSetup, PageTextPlace, PageZoom } from "../../grid/port";
import { rectangleOf } from "../formula/cellPlace";
import type { BookParts, SheetPart } from "../package/bookParts";
import { isTrue } from "../package/bookParts";
import { elements, firstElement, numberIn, unescaped } from "../package/xml";
import { papers, pointsPerInch, textParts, textPlaces } from "../pageWords";

/** In inches; a larger one is no margin. */
const widestMargin = 49;

/** How a sheet of a file is printed; undefined where the file says nothing of it. */
export function readPage(book: BookParts, sheet: SheetPart, sheetId: string): PageSetup | undefined {
  const { xml } = sheet;
  const setup = firstElement(xml, "pageSetup")?.attributes;
  const margins = firstElement(xml, "pageMargins")?.attributes;
  const texts = firstElement(xml, "headerFooter")?.inner ?? "";
  const breaks = [...elements(firstElement(xml, "rowBreaks")?.inner ?? "", "brk")];
  const named = (name: string) => {
    const place = book.sheetAt.indexOf(sheet);
    return book.names.find((one) => one.name === name && one.sheetPlace === place)?.text ?? "";
  };
  const [printArea] = areasOf(named("_xlnm.Print_Area"));
  const titles = /\$(\d+):\$(\d+)/.exec(named("_xlnm.Print_Titles"));
  if (!setup && !margins && !texts && breaks.length === 0 && !printArea && !titles) return undefined;
  const points = (side: string, inches: number) =>
    Math.round(numberIn(margins?.[side], inches, 0, widestMargin) * pointsPerInch * 1e4) / 1e4;
  const first = Number(titles?.[1] ?? 1);
  return {
    orientation: setup?.orientation === "landscape" ? "Landscape" : "Portrait",
    paperSize: papers[numberIn(setup?.paperSize, 1, 1, 118)] ?? "Letter",
    zoom: zoomOf(xml, setup ?? {}),
    margins: {
      top: points("top", 0.75),
      bottom: points("bottom", 0.75),
      left: points("left", 0.7),
      right: points("right", 0.7),
      header: points("header", 0.3),
      footer: points("footer", 0.3),
    },
    texts: { ...textsOf(texts, "oddHeader", "head"), ...textsOf(texts, "oddFooter", "foot") } as PageSetup["texts"],
    ...(printArea && { printArea: { sheetId, ...printArea } }),
    ...(titles && { titleRows: { row: first - 1, rowCount: Number(titles[2]) - first + 1 } }),
    // A file names the last row before a break.
    breaksAbove: breaks.map(({ attributes }) => numberIn(attributes.id, 0, 0, 1_048_576)).filter((row) => row > 0),
  };
}

function areasOf(text: string) {
  return text.split(",").flatMap((one) => rectangleOf(one.slice(one.lastIndexOf("!") + 1)) ?? []);
}

function zoomOf(xml: string, setup: Readonly<Record<string, string>>): PageZoom {
  if (!isTrue(firstElement(xml, "pageSetUpPr")?.attributes.fitToPage))
    return { scale: numberIn(setup.scale, 100, 10, 400) };
  const [wide, tall] = [numberIn(setup.fitToWidth, 1, 0, 32_767), numberIn(setup.fitToHeight, 1, 0, 32_767)];
  return { ...(wide > 0 && { horizontalFitToPages: wide }), ...(tall > 0 && { verticalFitToPages: tall }) };
}

/** The three parts of a head or foot, which stand one behind the other in a file: `&Lleft&Cmiddle&Rright`. */
function textsOf(inner: string, element: string, place: "head" | "foot"): Partial<Record<PageTextPlace, string>> {
  const text = unescaped(firstElement(inner, element)?.inner ?? "");
  const parts: Record<string, string> = { L: "", C: "", R: "" };
  let now = "C";
  for (const [piece] of text.matchAll(/&&|&[LCR]|[^&]+|&/g)) {
    if (/^&[LCR]$/.test(piece)) now = piece.slice(1);
    else parts[now] += piece;
  }
  return Object.fromEntries(textParts.map((part, index) => [textPlaces[place][index], parts[part] ?? ""]));
}
