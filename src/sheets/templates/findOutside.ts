import { must } from "../../quantities/must";
import { cellAddress } from "../../spreadsheet/areas";
import { isFormula } from "../plain/region";
import { areaOfRegion, type OutsidePiece, type Piece, piecesOf, type Saved } from "./readsOf";
import { oneCell } from "./reference";

/** What can become of something outside: read on, put what it shows now, or ask when the template is opened. */
export type Treatment = "keep" | "value" | "ask";

/** Something outside of the region that its formulas read. */
export interface Outside {
  readonly reads: string;
  /** Cells of the sheet whose formulas read it. */
  readonly readBy: readonly string[];
  /** What it shows now, where it is one cell or constant that shows something. */
  readonly value?: string | number | boolean;
  /** What the person may choose. */
  readonly treatments: readonly Treatment[];
  /** What "value" puts: what it shows into the formulas, or what the formulas show in place of them. */
  readonly valueOf: "it" | "formulas";
  /** Why it cannot be read on. */
  readonly cannotStay?: string;
}

/** All that formulas of a region read outside of it, each once, in the order in which it is met. */
export function findOutside(saved: Saved): Outside[] {
  const found = new Map<string, { piece: OutsidePiece; readBy: string[] }>();
  eachFormula(saved, ({ pieces, address }) => {
    for (const piece of pieces ?? []) {
      if (piece.kind !== "outside") continue;
      const known = found.get(piece.reads.toLowerCase());
      if (!known) found.set(piece.reads.toLowerCase(), { piece, readBy: [address] });
      else if (known.readBy.at(-1) !== address) known.readBy.push(address);
    }
  });
  return [...found.values()].map(({ piece, readBy }) => {
    const { reads, cannotStay } = piece;
    const value = shownBy(piece, saved);
    return {
      reads,
      readBy,
      treatments: cannotStay === undefined ? ["keep", "value", "ask"] : ["value"],
      valueOf: value === undefined ? "formulas" : "it",
      ...(value !== undefined && { value }),
      ...(cannotStay !== undefined && { cannotStay }),
    };
  });
}

/** Names that mean cells of the region itself; the template reads the cells. */
export function namesInside(saved: Saved): string[] {
  const names = new Set<string>();
  eachFormula(saved, ({ pieces }) => {
    for (const piece of pieces ?? []) if (piece.kind === "inside" && piece.name !== undefined) names.add(piece.name);
  });
  return [...names];
}

interface FormulaOf {
  readonly row: number;
  readonly column: number;
  /** On the sheet. */
  readonly address: string;
  readonly formula: string;
  readonly pieces: Piece[] | undefined;
}

/** Every formula of a region. Text that begins with "=" shows itself, which no formula does. */
export function eachFormula(saved: Saved, visit: (found: FormulaOf) => void): void {
  const { region } = saved;
  const area = areaOfRegion(region);
  region.formulas.forEach((cells, row) => {
    cells.forEach((content, column) => {
      if (!isFormula(content) || content === must(region.values[row])[column]) return;
      const place = { row: area.row + row, column: area.column + column };
      const at = { ...place, sheetName: region.sheetName, rows: 1, columns: 1 };
      visit({ row, column, address: cellAddress(place), formula: content, pieces: piecesOf(content, at, saved) });
    });
  });
}

const ERROR = /^#(?:N\/A|[A-Z0/]+[!?])$/;

function shownBy({ sheet, range, constant, cannotStay }: OutsidePiece, { around }: Saved) {
  if (cannotStay !== undefined) return undefined;
  const cell = range && oneCell(range);
  if (!cell || sheet === undefined) return constant;
  const value = around.valueAt?.(sheet, cell.row, cell.column);
  // A blank is no zero, and an error no value.
  return value === undefined || value === "" || ERROR.test(String(value)) ? undefined : value;
}
