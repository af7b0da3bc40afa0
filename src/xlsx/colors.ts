import { elements, firstElement, withoutPrefixes, type XmlElement } from "./read/xml";

/** A color as a file has it: written out, or by a number. */
export interface FileColor {
  readonly argb?: string;
  readonly theme?: number;
  readonly tint?: number;
  readonly indexed?: number;
}

/** Gives a file's color as HTML has it; undefined where the file leaves it to the program. */
export type ColorReader = (color: FileColor | undefined) => string | undefined;

/** In the order in which files count them; ECMA-376 18.8.3, where the first two pairs change places, from memory. */
const themeOrder = [
  "lt1",
  "dk1",
  "lt2",
  "dk2",
  "accent1",
  "accent2",
  "accent3",
  "accent4",
  "accent5",
  "accent6",
  "hlink",
  "folHlink",
];
const ownTheme = "FFFFFF 000000 E7E6E6 44546A 4472C4 ED7D31 A5A5A5 FFC000 5B9BD5 70AD47 0563C1 954F72".split(" ");

/** The colors that files have numbers for: ECMA-376 18.8.27. The first eight are listed twice. */
const first = "000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF".split(" ");
const indexed = [
  ...first,
  ...first,
  ...(
    "800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF " +
    "000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 " +
    "3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333"
  ).split(" "),
];

/** The color that an element names, such as `<color theme="4" tint="0.4"/>`; undefined where it names none. */
export function colorOf(element: XmlElement | undefined): FileColor | undefined {
  const { rgb, theme, tint, indexed } = element?.attributes ?? {};
  if (rgb === undefined && theme === undefined && indexed === undefined) return undefined;
  return {
    ...(rgb !== undefined && { argb: rgb }),
    ...(theme !== undefined && { theme: Number(theme) }),
    ...(tint !== undefined && { tint: Number(tint) }),
    ...(indexed !== undefined && { indexed: Number(indexed) }),
  };
}

/** @param themePart the part of the file that holds its theme, where it has one. */
export function colorReader(themePart: XmlElement | undefined): ColorReader {
  const scheme = themePart && firstElement(withoutPrefixes(themePart), "clrScheme");
  const theme = themeOrder.map((name, place) => themeColor(scheme, name) ?? ownTheme[place] ?? "000000");
  return (color) => {
    if (!color) return undefined;
    if (color.argb !== undefined)
      return /^(?:[\da-f]{2})?([\da-f]{6})$/i.exec(color.argb)?.[1]?.replace(/^/, "#").toUpperCase();
    const base = color.theme === undefined ? indexed[color.indexed ?? -1] : theme[color.theme];
    return base && `#${tinted(base, color.tint ?? 0)}`;
  };
}

function themeColor(scheme: XmlElement | undefined, name: string): string | undefined {
  const inner = firstElement(scheme, name);
  const [plain] = elements(inner, "srgbClr");
  const [system] = elements(inner, "sysClr");
  const value = plain?.attributes.val ?? system?.attributes.lastClr ?? "";
  return /^[\da-f]{6}$/i.test(value) ? value.toUpperCase() : undefined;
}

/** Lighter by a share of the way to white, or darker by a share of its own lightness: ECMA-376 18.8.19. */
function tinted(color: string, tint: number): string {
  if (!tint) return color;
  const [red = 0, green = 0, blue = 0] = [0, 2, 4].map((at) => Number.parseInt(color.slice(at, at + 2), 16) / 255);
  const [most, least] = [Math.max(red, green, blue), Math.min(red, green, blue)];
  const lightness = (most + least) / 2;
  const wanted = tint < 0 ? lightness * (1 + tint) : lightness + (1 - lightness) * tint;
  // Hue and saturation stay: each part keeps its share of what the lightness leaves room for.
  const room = (level: number) => 1 - Math.abs(2 * level - 1);
  const scale = room(lightness) === 0 ? 0 : room(wanted) / room(lightness);
  return [red, green, blue]
    .map((part) => Math.round(Math.min(1, Math.max(0, wanted + (part - lightness) * scale)) * 255))
    .map((part) => part.toString(16).padStart(2, "0").toUpperCase())
    .join("");
}
