import type { BlockOnSheet } from "../../sheets/estimate/openBlock";
import { BLOCK_COLUMNS, blockAt, findBlocks } from "../../sheets/estimate/readBlock";
import type { Anchor } from "../../spreadsheet/areas";
import { inWorkbook } from "../failure";
import { anchorOf } from "./areas";
import { contentsOf } from "./cells";

/** Which block is meant: the one that is selected, or the one that was at a place and has a name. */
export type WantedBlock = "selected" | { readonly sheetId: string; readonly at: Anchor; readonly name: string };

/**
 * An estimate block with all its cells. One request.
 *
 * @returns undefined where there is none. A block that was moved on its sheet is found by its name, where no other
 *   block there has it.
 */
export async function readBlock(wanted: WantedBlock): Promise<BlockOnSheet | undefined> {
  return inWorkbook(async (context) => {
    const corner =
      wanted === "selected"
        ? context.workbook.getSelectedRange().getCell(0, 0)
        : context.workbook.worksheets.getItemOrNullObject(wanted.sheetId).getCell(wanted.at.row, wanted.at.column);
    corner.load("rowIndex,columnIndex");
    const { worksheet } = corner;
    worksheet.load("id,name");
    const used = worksheet.getUsedRangeOrNullObject(true);
    used.load("rowIndex,columnIndex,values,formulas,valueTypes");
    await context.sync();
    if (corner.isNullObject || used.isNullObject) return undefined;

    const at = anchorOf(used);
    const blocks = findBlocks(used.values, at, used.formulas);
    const here = blockAt(blocks, anchorOf(corner));
    const named = wanted === "selected" ? [] : blocks.filter(({ form }) => form.name === wanted.name);
    const block =
      wanted === "selected" || here?.form.name === wanted.name ? here : named.length === 1 ? named[0] : undefined;
    if (!block) return undefined;
    const { area } = block;
    const inBlock = <T>(cells: readonly (readonly T[])[]): T[][] => {
      const first = area.column - at.column;
      return cells
        .slice(area.row - at.row, area.row - at.row + area.rows)
        .map((row) => Array.from({ length: BLOCK_COLUMNS }, (_, index) => row[first + index] ?? ("" as T)));
    };
    return {
      sheetId: worksheet.id,
      sheetName: worksheet.name,
      block,
      contents: inBlock(contentsOf(used)),
      values: inBlock(used.values),
    };
  });
}
