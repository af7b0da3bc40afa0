import { useState } from "preact/hooks";
import { redrawSelectedBlock, type SelectedBlock, selectedBlock } from "../workbook/drawing";
import { useOnceMore } from "./useOnceMore";

/** The block that is selected, with its drawing. */
export function useDrawing() {
  const [block, setBlock] = useState<SelectedBlock>();
  const onceMore = useOnceMore();
  const look = async () => {
    // A selection that tells nothing, such as a chart's, is no block.
    setBlock(await selectedBlock().catch(() => undefined));
  };
  return {
    block,
    look,
    draw: async () => {
      const { printPicture } = await import(/* webpackChunkName: "drawings" */ "./drawings");
      const { name } = await onceMore((startAnew) => redrawSelectedBlock(printPicture, startAnew));
      await look();
      return name;
    },
  };
}
