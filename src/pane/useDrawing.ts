import { useOnceMore } from "./useOnceMore";
import { useSelected } from "./useSelection";

/** Reading a block takes more than the first load should: it comes with what is below the form. */
const readSelected = async () =>
  (await import(/* webpackChunkName: "below" */ "../workbook/read/selectedBlock")).readSelected();

/** What is selected, and the drawing of the block that it lies in. */
export function useDrawing() {
  const [selected, setSelected] = useSelected(readSelected);
  const onceMore = useOnceMore();
  return {
    /** The first selected cell; "" where the host tells none. */
    cell: selected?.address ?? "",
    block: selected?.block,
    /** Looks again: something of the block has changed, and not what is selected. */
    look: async () => setSelected(await readSelected().catch(() => undefined)),
    draw: async () => {
      const [{ printPicture }, { redrawSelectedBlock }] = await Promise.all([
        import(/* webpackChunkName: "drawings" */ "./drawings"),
        import(/* webpackChunkName: "drawings" */ "../workbook/drawing/drawing"),
      ]);
      const { name } = await onceMore((startOver) => redrawSelectedBlock(printPicture, startOver));
      setSelected(await readSelected().catch(() => undefined));
      return name;
    },
  };
}
