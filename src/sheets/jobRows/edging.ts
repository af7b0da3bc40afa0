import { type FieldKey, fields } from "../../quantities/bed/fields";
import { type RateKey, rateNames } from "../../quantities/bed/rates";
import { EDGING_KINDS, type EdgingKind, edgingKindNamed, hasPieces, METAL } from "../../quantities/edgingKinds";
import { readTape } from "../../quantities/tape";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { byName, type NameTable, troubleOf } from "./byName";
import { depthArgument, type ListSetting, lengthArgument, rate } from "./setting";

/*
 * What the formulas of a row take from the kind of edging in it. The office's single rates are those of metal; other
 * kinds have what is usual for them.
 */

const table: NameTable<EdgingKind> = {
  role: "edgingKind",
  rows: EDGING_KINDS,
  usual: METAL,
  unknown: "no such edging",
};

/** A part of a formula that differs by the kind of edging in its row. */
export const byEdging = (setting: ListSetting, row: number, of: (kind: EdgingKind) => string): string =>
  byName(setting, table, row, of);

/** What is wrong with the name of a kind, in one line; undefined for one of the table and for a blank. */
export const edgingTrouble = (name: string): string | undefined =>
  troubleOf(name, () => edgingKindNamed(name, fields.edgingKind.label));

const initial = (key: FieldKey) => fields[key].initial;
const usualOf = ({ usual }: EdgingKind, key: FieldKey): string => usual[key] ?? initial(key);

/** A size of a kind: for metal the office's rate, where it has one. */
const sizeOf = (setting: ListSetting, kind: EdgingKind, key: RateKey): string =>
  kind === METAL ? rate(setting, key) : usualOf(kind, key);

/** Pieces of a run, of a kind that has some: pavers stand a joint apart, all others lap or butt. */
export function piecesOf(setting: ListSetting, kind: EdgingKind, run: string, closing: string): string {
  if (kind.inSand)
    return `BED.PAVERS(${run},${readTape(usualOf(kind, "pieceLength"), "in")},${initial("joint")}${closing})`;
  return `BED.EDGING_PIECES(${run},${sizeOf(setting, kind, "pieceLength")},${lapOf(kind)}${closing})`;
}

const lapOf = (kind: EdgingKind) => (kind.fastened === "along" ? usualOf(kind, "pieceLap") : "0");

/** Piece length, stake spacing, and lap, as arguments. A layout takes a joint for a lap under 0. */
export function edgingRule(setting: ListSetting, kind: EdgingKind): string {
  if (kind.inSand)
    return `${readTape(usualOf(kind, "pieceLength"), "in")}/${INCHES_PER_FOOT},${INCHES_PER_FOOT},-${initial("joint")}`;
  return `${sizeOf(setting, kind, "pieceLength")},${usualOf(kind, "stakeSpacing")},${lapOf(kind)}`;
}

/** Fasteners to buy: stakes beyond those that come with the pieces, or so many for each piece by itself. */
export function fastenersOf(setting: ListSetting, kind: EdgingKind, pieces: string, stakes: string): string {
  if (kind.fastened === "each") {
    const spacing = usualOf(kind, "stakeSpacing");
    const inches = `${usualOf(kind, "pieceLength")}*${INCHES_PER_FOOT}`;
    return `${pieces}*(BED.ORDER_UP(${inches},${spacing})/${spacing}+1)`;
  }
  if (!kind.fastened) return "0";
  const included = kind === METAL ? rate(setting, "stakesPerPiece", true) : usualOf(kind, "stakesPerPiece");
  return `MAX(0,${stakes}-${pieces}*${included})`;
}

/** The trench below the scrape as further arguments of a dig: none where no edging is set. */
export function trenchOf(setting: ListSetting, kind: EdgingKind, border: string): string {
  if (!kind.lines.setEdging) return "";
  return `,${border},${usualOf(kind, "trenchWidth")},${sizeOf(setting, kind, "trenchDepth")}`;
}

/** The hours to set the edging. */
export function settingHours(kind: EdgingKind, border: string): string {
  if (!kind.lines.setEdging) return "0";
  return `${border}/${kind === METAL ? rateNames.edgingRate : usualOf(kind, "edgingRate")}`;
}

/** Sand to order, to set pavers in. */
export function sandOf(kind: EdgingKind, border: string): string {
  if (!kind.inSand) return "0";
  const sand = `BED.SAND_YARDS(${border},${usualOf(kind, "trenchWidth")},${initial("sandDepth")})`;
  return `BED.ORDER_UP(${sand},${initial("sandStep")})`;
}

/** The depth of a row's stone, in inches; where no edging stands above the ground, it goes with the scrape. */
export function stoneDepth(setting: ListSetting, row: number): string {
  const scrape = lengthArgument(setting, "scrape", row, "in");
  const depth = depthArgument(setting, row);
  if (setting.columns.has("depth") || !scrape) return depth;
  return byEdging(setting, row, (kind) => (hasPieces(kind) ? depth : `BED.INCHES(${scrape})-${initial("topGap")}`));
}

/** How deep a row's bed is scraped, in inches, where it's edged so. */
export function scrapeDepth(setting: ListSetting, row: number, kind: EdgingKind): string {
  const scrape = lengthArgument(setting, "scrape", row, "in");
  if (scrape) return scrape;
  const { scrapeIn, depthIn } = setting.assumed;
  if (hasPieces(kind)) return String(scrapeIn);
  const depth = lengthArgument(setting, "depth", row, "in");
  return depth ? `BED.INCHES(${depth})+${initial("topGap")}` : String(depthIn + Number(initial("topGap")));
}
