import { type SampleRow, sampleRows } from "../../sheets/rates/sampleRows";
import { readRateCells } from "../../workbook/read/rates";
import { refreshRates } from "./store";
import { useProposed } from "./useProposed";

/** Sample rows of the office's lists: shown, cleared, and undone. */
export const useSampleRows = () =>
  useProposed<SampleRow>({
    title: "clear sample rows",
    find: async () => {
      const there = await readRateCells();
      return there ? sampleRows(there.named) : [];
    },
    changesOf: ({ changes }) => changes,
    // The rows are as they are, whether or not they can be read at once.
    written: () => refreshRates().catch(() => false),
    words: {
      doing: { look: "Reading the rates…", write: "Clearing the sample rows…", undo: "Undoing…" },
      nothing: "No row of your lists is a sample.",
      done: (rows) =>
        `Cleared ${rows === 1 ? "1 sample row" : `${rows} sample rows`}. The blank rows are for your own.`,
      undone: "The sample rows are back.",
    },
  });
