import { useState } from "preact/hooks";
import { redrawSelectedBlock, type SelectedBlock, selectedBlock } from "../workbook/drawing";

/** The block that is selected, with its drawing. */
export function useDrawing() {
  const [block, setBlock] = useState<SelectedBlock>();
  const look = async () => {
    // A selection that tells nothing, such as a chart's, is no block.
    setBlock(await selectedBlock().catch(() => undefined));
  };
  return {
    block,
    look,
    draw: async () => {
      const { printPicture } = await import(/* webpackChunkName: "drawings" */ "./drawings");
      const { name } = await redrawSelectedBlock(printPicture);
      await look();
      return name;
    },
  };
}
