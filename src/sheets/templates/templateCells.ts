import { must } from "../../quantities/must";
import { cellAddress } from "../../spreadsheet/areas";
import type { CellContent } from "../plain/region";
import { covers, spillsOf } from "../plain/spills";
import { eachFormula, type Outside, type Treatment } from "./findOutside";
import { withoutHidden } from "./hiddenCharacters";
import { literal } from "./literal";
import type { Piece, Saved } from "./readsOf";
import { movedBy } from "./reference";
import type { TemplateCell } from "./template";

/**
 * What is in the cells of a region, as a template holds it: formulas in the template's own addresses, and values.
 *
 * @param treatments what becomes of what they read outside.
 * @returns the cells, and what is otherwise than on the sheet, in sentences.
 */
export function templateCells(saved: Saved, outside: readonly Outside[], treatments: ReadonlyMap<string, Treatment>) {
  const { region, around } = saved;
  const spilled = spillsOf(region, around);
  const contents: (TemplateCell | undefined)[][] = region.formulas.map((cells, row) =>
    cells.map((content, column) => {
      const isFirst = spilled.some((spill) => spill.row === row && spill.column === column);
      if (!isFirst && spilled.some((spill) => covers(spill, row, column))) return undefined;
      return constant(region.values[row]?.[column] ?? content, cellAddress({ row, column }));
    }),
  );
  const told: string[] = [];
  const listed = new Map(outside.map((one) => [one.reads.toLowerCase(), one]));
  eachFormula(saved, ({ row, column, pieces, formula, address }) => {
    const at = cellAddress({ row, column });
    const asValue = !pieces || pieces.some((piece) => stands(piece, listed, treatments) === undefined);
    if (asValue) {
      if (!pieces) told.push(`${address} has a formula that can't be read, so its value is saved.`);
      return;
    }
    const text = pieces.map((piece) => written(piece, saved, listed, treatments)).join("");
    must(contents[row])[column] = { at, formula: text === "" ? formula : text };
  });
  const cleaned = contents.flat().filter((cell) => cell !== undefined && hidesText(cell)).length;
  if (cleaned > 0) told.push(`Hidden characters were removed from text (${cleaned} cells).`);
  const cells = contents.flat().flatMap((cell) => (cell ? withoutHiddenText(cell) : []));
  return { cells, told };
}

function constant(value: CellContent, at: string): TemplateCell | undefined {
  if (value === "") return undefined;
  if (typeof value === "number") return { at, number: value };
  return typeof value === "boolean" ? { at, truth: value } : { at, text: value };
}

const hidesText = ({ text }: TemplateCell): boolean => text !== undefined && withoutHidden(text) !== text;

function withoutHiddenText(cell: TemplateCell): TemplateCell[] {
  if (cell.text === undefined) return [cell];
  const text = withoutHidden(cell.text);
  return text === "" ? [] : [{ ...cell, text }];
}

type Listed = ReadonlyMap<string, Outside>;

/** How a piece is in the template; undefined where the whole formula has to give way to what it shows. */
function stands(
  piece: Piece,
  listed: Listed,
  treatments: ReadonlyMap<string, Treatment>,
): "as it is" | "value" | undefined {
  if (piece.kind !== "outside") return "as it is";
  const one = must(listed.get(piece.reads.toLowerCase()));
  if (treatments.get(one.reads) !== "value") return one.cannotStay === undefined ? "as it is" : undefined;
  return one.valueOf === "it" ? "value" : undefined;
}

function written(piece: Piece, { region }: Saved, listed: Listed, treatments: ReadonlyMap<string, Treatment>): string {
  if (piece.kind === "text") return piece.text;
  if (piece.kind === "inside") {
    // A name means one place, wherever its formula stands.
    const fixed = piece.name === undefined ? {} : { $top: true, $left: true, $bottom: true, $right: true };
    return movedBy({ ...piece.range, ...fixed }, -region.row, -region.column);
  }
  const one = must(listed.get(piece.reads.toLowerCase()));
  return stands(piece, listed, treatments) === "value" ? literal(must(one.value)) : one.reads;
}
