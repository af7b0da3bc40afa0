import { parseA1Ref, type RangeA1, type Token } from "@borgar/fx";
import { must } from "../../quantities/must";
import { definesNames } from "../plain/formula";
import type { Region, SheetArea, Surroundings } from "../plain/region";
import { tableColumns } from "../plain/tableColumns";
import { isOrdinaryFunction } from "./ordinaryFunctions";
import { ownNames } from "./ownNames";
import { isWithin, isWorkbookName, listed, referenceOf } from "./reference";
import { isOfRatesSheet } from "./template";
import { tokensOf } from "./tokens";

/** A piece of a formula that is to become part of a template. */
export type Piece =
  /** Stays as it is written. */
  | { readonly kind: "text"; readonly text: string }
  /** Cells of the region, by their place on the sheet; `name` where the formula calls them by one. */
  | { readonly kind: "inside"; readonly range: RangeA1; readonly name?: string }
  | OutsidePiece;

/** Something outside of the region. */
export interface OutsidePiece {
  readonly kind: "outside";
  /** How it is listed: `Rates!$B$2`, or a name. */
  readonly reads: string;
  /** The cells that it means, where it means cells. */
  readonly sheet?: string;
  readonly range?: RangeA1;
  /** What it means in itself, where it is a constant with a name. */
  readonly constant?: number;
  /** Why a template cannot read it; then only what its formulas show can be saved. */
  readonly cannotStay?: string;
}

/** The region that is saved, and what is known of its workbook. */
export interface Saved {
  readonly region: Region;
  readonly around: Surroundings;
}

/**
 * A formula of the region in pieces, of which all references are told apart.
 *
 * @param formula with its "=".
 * @param at its cell on the sheet, for a table's "this row".
 * @returns undefined where it can't be read as a formula.
 */
export function piecesOf(formula: string, at: SheetArea, saved: Saved): Piece[] | undefined {
  try {
    const tokens = tokensOf(formula);
    const own = definesNames(formula) ? ownNames(tokens) : new Set<string>();
    return tokens.map((token) => pieceOf(token, at, saved, own));
  } catch {
    return undefined;
  }
}

function pieceOf({ type, value }: Token, at: SheetArea, saved: Saved, own: ReadonlySet<string>): Piece {
  const stays: Piece = { kind: "text", text: value };
  switch (type) {
    case "range":
    case "range_beam":
      return cellsPiece(value, saved);
    case "range_ternary":
      return { kind: "outside", reads: value, cannotStay: "it has no end" };
    case "structured": {
      const meant = tableColumns(value, saved.around.tables ?? [], at);
      if (!meant) return { kind: "outside", reads: value, cannotStay: "it is part of a table" };
      return placed(meant.sheetName, meant.range, saved);
    }
    case "range_named":
      if (own.has(value.toLowerCase()) || isOfRatesSheet(value) || isOrdinaryFunction(value.toUpperCase()))
        return stays;
      return namePiece(value, saved);
    default:
      return stays;
  }
}

function cellsPiece(text: string, saved: Saved): Piece {
  const reference = referenceOf(text);
  switch (reference.kind) {
    case "workbook":
      return { kind: "outside", reads: text, cannotStay: "it's in another workbook" };
    case "sheets":
      return { kind: "outside", reads: text, cannotStay: "it reads several sheets at once" };
    case "unread":
      return { kind: "outside", reads: text, cannotStay: "it can't be read" };
    default:
      return placed(reference.sheet ?? saved.region.sheetName, reference.range, saved);
  }
}

function placed(sheet: string, range: RangeA1, { region }: Saved): Piece {
  const isOwn = sheet.toLowerCase() === region.sheetName.toLowerCase();
  if (isOwn && isWithin(range, areaOfRegion(region))) return { kind: "inside", range };
  return { kind: "outside", reads: listed(sheet, range), sheet, range };
}

function namePiece(name: string, saved: Saved): Piece {
  const meaning = meaningOf(name, saved.around);
  const meant = meaning === undefined ? undefined : parseA1Ref(meaning, { allowNamed: false });
  if (meant && "range" in meant && meant.context?.length === 1) {
    const piece = placed(must(meant.context[0]), meant.range, saved);
    if (piece.kind === "inside") return { ...piece, name };
    if (piece.kind === "outside" && isWorkbookName(name)) return { ...piece, reads: name };
  }
  if (!isWorkbookName(name)) return { kind: "outside", reads: name, cannotStay: "it isn't a workbook-wide name" };
  const constant = meaning === undefined || meaning.trim() === "" ? Number.NaN : Number(meaning);
  return { kind: "outside", reads: name, ...(Number.isFinite(constant) && { constant }) };
}

function meaningOf(name: string, { names = {} }: Surroundings): string | undefined {
  const key = Object.keys(names).find((one) => one.toLowerCase() === name.toLowerCase());
  return key === undefined ? undefined : must(names[key]).replace(/^=/, "");
}

export function areaOfRegion({ row, column, formulas }: Region) {
  return { row, column, rows: formulas.length, columns: formulas[0]?.length ?? 0 };
}
