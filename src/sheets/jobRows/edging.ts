import { quoted } from "../../quantities/bed/evaluate";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import { type RateKey, rateNames } from "../../quantities/bed/rates";
import {
  asksField,
  EDGING_KINDS,
  type EdgingKind,
  edgingKindNamed,
  hasPieces,
  METAL,
} from "../../quantities/edgingKinds";
import { readTape } from "../../quantities/tape";
import { INCHES_PER_FOOT } from "../../quantities/units";
import { followingFormula, NO_RATE } from "../estimate/rateFormulas";
import { byName, type NameTable, troubleOf } from "./byName";
import { namesProducts, ofProduct } from "./products";
import type { ResultRole } from "./roles";
import { depthArgument, type ListSetting, lengthArgument, type Row, rate } from "./setting";

/*
 * What the formulas of a row take from the kind of edging in it, and from its product. The office's single rates are those
 * of metal; other kinds have what is usual for them.
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

/** The columns of what rows take from their edging products. */
const TAKEN = {
  pieceLength: "pieceLength",
  stakesPerPiece: "stakesIncluded",
  trenchDepth: "trench",
} as const satisfies Partial<Record<RateKey, ResultRole>>;

/** A size of a kind: of the row's product, or for metal the office's rate, where it has one. */
function sizeOf(at: Row, kind: EdgingKind, key: keyof typeof TAKEN, blankMatters = false): string {
  return takesProduct(at, kind) ? at.of(TAKEN[key]) : ownSize(at.setting, kind, key, blankMatters);
}

/** A size of a kind, whatever the product. */
function ownSize(setting: ListSetting, kind: EdgingKind, key: RateKey, blankMatters: boolean): string {
  if (kind === METAL) return rate(setting, key, blankMatters);
  const usual = usualOf(kind, key);
  return kind.inSand && key === "pieceLength" ? `${readTape(usual, "in")}/${INCHES_PER_FOOT}` : usual;
}

const takesProduct = ({ setting }: Row, kind: EdgingKind) => namesProducts(setting, "edging") && hasPieces(kind);

/** A size for the column of its own: that of the row's product, else that of its kind, and 0 where the kind has none. */
export const productSize = (at: Row, key: keyof typeof TAKEN): string =>
  ofProduct(
    at,
    "edging",
    key,
    byEdging(at.setting, at.row, (kind) => {
      return hasPieces(kind) && asksField(kind, key) ? ownSize(at.setting, kind, key, true) : "0";
    }),
  );

/** A price for the column of its own: that of the row's product, else the office's single one, which is for metal. */
export const productPrice = (at: Row, key: "pieceCost" | "stakeCost"): string =>
  ofProduct(
    at,
    "edging",
    key,
    byEdging(at.setting, at.row, (kind) => {
      if (!hasPieces(kind) || !asksField(kind, key)) return "0";
      return kind === METAL ? followingFormula({ key, single: key }).slice(1) : quoted(NO_RATE);
    }),
  );

/** The length of a piece in inches. */
function pieceInches(at: Row, kind: EdgingKind): string {
  if (takesProduct(at, kind)) return `BED.FEET(${at.of("pieceLength")})*${INCHES_PER_FOOT}`;
  const usual = usualOf(kind, "pieceLength");
  return kind.inSand ? String(readTape(usual, "in")) : `${usual}*${INCHES_PER_FOOT}`;
}

/** Pieces of a run, of a kind that has some: pavers stand a joint apart, all others lap or butt. */
export function piecesOf(at: Row, kind: EdgingKind, run: string, closing: string): string {
  if (kind.inSand) return `BED.PAVERS(${run},${pieceInches(at, kind)},${initial("joint")}${closing})`;
  return `BED.EDGING_PIECES(${run},${sizeOf(at, kind, "pieceLength")},${lapOf(kind)}${closing})`;
}

const lapOf = (kind: EdgingKind) => (kind.fastened === "along" ? usualOf(kind, "pieceLap") : "0");

/** Piece length, stake spacing, and lap, as arguments. A layout takes a joint for a lap under 0. */
export function edgingRule(at: Row, kind: EdgingKind): string {
  const length = sizeOf(at, kind, "pieceLength");
  return kind.inSand
    ? `${length},${INCHES_PER_FOOT},-${initial("joint")}`
    : `${length},${usualOf(kind, "stakeSpacing")},${lapOf(kind)}`;
}

/** Fasteners to buy: stakes beyond those that come with the pieces, or so many for each piece by itself. */
export function fastenersOf(at: Row, kind: EdgingKind, pieces: string, stakes: string): string {
  if (kind.fastened === "each") {
    const spacing = usualOf(kind, "stakeSpacing");
    return `${pieces}*(BED.ORDER_UP(${pieceInches(at, kind)},${spacing})/${spacing}+1)`;
  }
  if (!kind.fastened) return "0";
  return `MAX(0,${stakes}-${pieces}*${sizeOf(at, kind, "stakesPerPiece", true)})`;
}

/** The trench below the scrape as further arguments of a dig: none where no edging is set. */
export function trenchOf(at: Row, kind: EdgingKind, border: string): string {
  if (!kind.lines.setEdging) return "";
  return `,${border},${usualOf(kind, "trenchWidth")},${sizeOf(at, kind, "trenchDepth")}`;
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
