import { elements, escaped, firstElement, without } from "../package/xml";

/*
 * The number formats that files have numbers for: ECMA-376 part 1, 18.8.30; those for dates and money as programs show
 * them in the United States.
 */
const known: Readonly<Record<number, string>> = {
  0: "General",
  1: "0",
  2: "0.00",
  3: "#,##0",
  4: "#,##0.00",
  5: '"$"#,##0_);\\("$"#,##0\\)',
  6: '"$"#,##0_);[Red]\\("$"#,##0\\)',
  7: '"$"#,##0.00_);\\("$"#,##0.00\\)',
  8: '"$"#,##0.00_);[Red]\\("$"#,##0.00\\)',
  9: "0%",
  10: "0.00%",
  11: "0.00E+00",
  12: "# ?/?",
  13: "# ??/??",
  14: "m/d/yyyy",
  15: "d-mmm-yy",
  16: "d-mmm",
  17: "mmm-yy",
  18: "h:mm AM/PM",
  19: "h:mm:ss AM/PM",
  20: "h:mm",
  21: "h:mm:ss",
  22: "m/d/yyyy h:mm",
  37: "#,##0_);(#,##0)",
  38: "#,##0_);[Red](#,##0)",
  39: "#,##0.00_);(#,##0.00)",
  40: "#,##0.00_);[Red](#,##0.00)",
  41: '_(* #,##0_);_(* \\(#,##0\\);_(* "-"_);_(@_)',
  42: '_("$"* #,##0_);_("$"* \\(#,##0\\);_("$"* "-"_);_(@_)',
  43: '_(* #,##0.00_);_(* \\(#,##0.00\\);_(* "-"??_);_(@_)',
  44: '_("$"* #,##0.00_);_("$"* \\(#,##0.00\\);_("$"* "-"??_);_(@_)',
  45: "mm:ss",
  46: "[h]:mm:ss",
  47: "mm:ss.0",
  48: "##0.0E+0",
  49: "@",
};

/** The first of the numbers that stand for formats which a file spells out. */
const FIRST_OWN = 164;

/** A file's styles, with each one's number in the place of its number format. */
export interface MarkedStyles {
  /** The number formats by the styles' numbers. */
  readonly formats: readonly string[];
  /**
   * The styles for the library, in which the format of style 17 is the quoted text "17". So a style that the library
   * gives back can be told, and no number is taken for a date and rounded to its milliseconds.
   */
  readonly xml: string;
}

/** @param xml the part of the file that holds its styles. */
export function markStyles(xml: string): MarkedStyles {
  const own = new Map<number, string>();
  for (const { attributes } of elements(firstElement(xml, "numFmts")?.inner ?? "", "numFmt")) {
    own.set(Number(attributes.numFmtId), attributes.formatCode ?? "General");
  }
  const cellXfs = firstElement(xml, "cellXfs")?.inner ?? "";
  const formats = [...elements(cellXfs, "xf")].map(({ attributes }) => {
    const number = Number(attributes.numFmtId ?? 0);
    return own.get(number) ?? known[number] ?? "General";
  });
  let place = -1;
  const marked = cellXfs.replace(/<xf\b(?:"[^"]*"|'[^']*'|[^>"'])*>/g, (tag) => {
    place += 1;
    const bare = tag.replace(/\s(?:applyNumberFormat|numFmtId)\s*=\s*(?:"[^"]*"|'[^']*')/g, "");
    return bare.replace("<xf", `<xf numFmtId="${FIRST_OWN + place}"`);
  });
  const marks = formats.map((_, number) => {
    return `<numFmt numFmtId="${FIRST_OWN + number}" formatCode="&quot;${number}&quot;"/>`;
  });
  const rest = without(xml, ["numFmts", "dxfs", "extLst"]).replace(cellXfs, () => marked + firstXf(marked));
  return { formats, xml: rest.replace(/<styleSheet\b[^>]*>/, (tag) => `${tag}<numFmts>${marks.join("")}</numFmts>`) };
}

/** The library gives no style for cells of the first one, so it stands at the end once more. */
function firstXf(marked: string): string {
  const [first] = elements(marked, "xf");
  if (!first) return "";
  const attributes = Object.entries(first.attributes).map(([name, value]) => ` ${name}="${escaped(value)}"`);
  return `<xf${attributes.join("")}>${first.inner}</xf>`;
}

/** The number of a style that the library gives back; the first where the cell has none. */
export function styleNumber(format: string | undefined): number {
  return Number(/^"(\d+)"$/.exec(format ?? "")?.[1] ?? 0);
}

/** Whether a number format shows a day or a time of day. */
export function showsDate(format: string): boolean {
  const bare = format.replace(/"[^"]*"|\\.|_.|\*./g, "").replace(/\[(?!(?:h+|m+|s+)\])[^\]]*\]/gi, "");
  return /[ymdhs]/i.test(bare.replace(/General/gi, ""));
}
