import { useState } from "preact/hooks";
import type { WrittenBlock } from "../../workbook/change/updateBlock";
import type { Reporter } from "../useStatus";
import { useUpdatePreview } from "../useUpdatePreview";
import type { FoundBed, FoundJob } from "./readJob";
import { type JobUpdatePreview, previewJobUpdate } from "./updateJob";
import { writeJobUpdate } from "./writeJobUpdate";

/** What an update needs: the job's estimate, the beds that it is to have, and what was read with them. */
export interface JobToUpdate {
  readonly job: NonNullable<FoundJob["jobs"][number]>;
  readonly beds: readonly FoundBed[];
  readonly found: FoundJob;
}

/**
 * The estimate of a job, updated in its sheet to the beds that are checked: previewed, written, and undone.
 *
 * @param again reads the workbook once more; @param reread shows what it holds after a write.
 */
export function useJobUpdate(
  attempt: Reporter["attempt"],
  again: () => Promise<JobToUpdate>,
  reread: () => Promise<unknown>,
) {
  const { preview, replaced, show, tick, cancel } = useUpdatePreview<JobUpdatePreview>();
  const [written, setWritten] = useState<WrittenBlock & { readonly where: string }>();
  return {
    preview,
    replaced,
    canUndo: written !== undefined,
    forget: () => setWritten(undefined),
    look: () =>
      attempt("Comparing with the sheet…", async () => {
        const { job, beds, found } = await again();
        const next = await previewJobUpdate(job, beds, found);
        if (next.lines.length === 0 && next.kept.length === 0) return "The job estimate is up to date.";
        show(next);
        return undefined;
      }),
    tick,
    cancel,
    write: () =>
      attempt("Updating the job estimate…", async () => {
        if (!preview) return undefined;
        cancel();
        const done = await writeJobUpdate(preview, replaced);
        setWritten({ ...done, where: preview.where });
        await reread();
        return `Updated the job estimate at ${preview.where}: ${done.count} ${done.count === 1 ? "change" : "changes"}.`;
      }),
    undo: () =>
      attempt("Undoing the update…", async () => {
        if (!written) return undefined;
        await written.undo();
        setWritten(undefined);
        await reread();
        return `The update is undone. The cells at ${written.where} are back to what they were.`;
      }),
  };
}
