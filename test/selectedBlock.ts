import { readSelected, type SelectedBlock } from "../src/workbook/read/selectedBlock";

/** The estimate block that the selection is in, if any. */
export async function selectedBlock(): Promise<SelectedBlock | undefined> {
  return (await readSelected()).block;
}
