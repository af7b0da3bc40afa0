import { rectangleOf } from "../../xlsx/addresses";
import type { BookParts, SheetPart } from "../../xlsx/read/bookParts";
import { attributesOf, elements, firstElement, isTrue, numberIn, type XmlElement } from "../../xlsx/read/xml";
import type { FilePage } from "../../xlsx/write/sheet";
import type { PageSetup, PageTextPlace, PageZoom } from "../grid/port";

/** The host's words for sizes of paper, by the numbers that files have for them: ECMA-376 18.3.1.63. */
const papers: Readonly<Record<number, string>> = {
  1: "Letter",
  3: "Tabloid",
  4: "Ledger",
  5: "Legal",
  6: "Statement",
  7: "Executive",
  8: "A3",
  9: "A4",
  11: "A5",
  12: "B4",
  13: "B5",
  14: "Folio",
};

/** The letters before the left, middle and right part of a page's head or foot: ECMA-376 18.3.1.46. */
const textParts = ["L", "C", "R"] as const;
const textPlaces = {
  head: ["leftHeader", "centerHeader", "rightHeader"],
  foot: ["leftFooter", "centerFooter", "rightFooter"],
} as const satisfies Record<string, readonly PageTextPlace[]>;

const pointsPerInch = 72;

/** In inches; a larger one is no margin. */
const widestMargin = 49;

/** How a sheet of a file is printed; undefined where the file says nothing of it. */
export function readPage(book: BookParts, sheet: SheetPart, sheetId: string): PageSetup | undefined {
  const { xml } = sheet;
  const setup = firstElement(xml, "pageSetup")?.attributes;
  const margins = firstElement(xml, "pageMargins")?.attributes;
  const texts = firstElement(xml, "headerFooter");
  const breaks = [...elements(firstElement(xml, "rowBreaks"), "brk")];
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

function zoomOf(xml: XmlElement, setup: Readonly<Record<string, string>>): PageZoom {
  if (!isTrue(attributesOf(xml, "pageSetUpPr").fitToPage)) return { scale: numberIn(setup.scale, 100, 10, 400) };
  const [wide, tall] = [numberIn(setup.fitToWidth, 1, 0, 32_767), numberIn(setup.fitToHeight, 1, 0, 32_767)];
  return { ...(wide > 0 && { horizontalFitToPages: wide }), ...(tall > 0 && { verticalFitToPages: tall }) };
}

/** Splits a header or footer, which a file holds as one text: `&Lleft&Cmiddle&Rright`. */
function textsOf(
  inside: XmlElement | undefined,
  element: string,
  place: "head" | "foot",
): Partial<Record<PageTextPlace, string>> {
  const text = firstElement(inside, element)?.text ?? "";
  const parts: Record<string, string> = { L: "", C: "", R: "" };
  let now = "C";
  for (const [piece] of text.matchAll(/&&|&[LCR]|[^&]+|&/g)) {
    if (/^&[LCR]$/.test(piece)) now = piece.slice(1);
    else parts[now] += piece;
  }
  return Object.fromEntries(textParts.map((part, index) => [textPlaces[place][index], parts[part] ?? ""]));
}

/** How a sheet is printed, as a file says it, but for the names that a print area and title rows are. */
export function pageToFile({ orientation, paperSize, zoom, margins, texts, breaksAbove }: PageSetup): FilePage {
  const { scale, horizontalFitToPages, verticalFitToPages } = zoom;
  const fits = horizontalFitToPages !== undefined || verticalFitToPages !== undefined;
  const [header, footer] = (["head", "foot"] as const).map((place) => {
    const pieces = textPlaces[place].map((key, index) => (texts[key] ? `&${textParts[index]}${texts[key]}` : ""));
    return pieces.join("");
  });
  return {
    landscape: orientation === "Landscape",
    paper: Number(Object.entries(papers).find(([, name]) => name === paperSize)?.[0] ?? 1),
    marginsIn: Object.fromEntries(
      Object.entries(margins).map(([side, points]) => [side, points / pointsPerInch]),
    ) as FilePage["marginsIn"],
    // 0 is as many pages as it takes.
    ...(fits && { fit: { wide: horizontalFitToPages ?? 0, tall: verticalFitToPages ?? 0 } }),
    ...(!fits && scale !== undefined && { scale }),
    ...(header && { header }),
    ...(footer && { footer }),
    breaksAbove,
  };
}
