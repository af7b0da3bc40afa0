import { useState } from "preact/hooks";
import type { BedForm } from "../quantities/bed/form";
import { WorkbookFailure } from "../workbook/failure";
import { type KnownRates, stopIfRatesChanged } from "./rates/store";
import type { OpenedBed, UpdatePreview, WrittenUpdate } from "./updateEstimate";
import type { useForm } from "./useForm";
import type { Reporter } from "./useStatus";
import { useUpdatePreview } from "./useUpdatePreview";

const fetchUpdate = () => import(/* webpackChunkName: "update" */ "./updateEstimate");
const fetchPanel = () => import(/* webpackChunkName: "update" */ "./UpdatePreview");

/** An estimate of the sheet that is open in the pane: opened, previewed, written back, and undone. */
export function useUpdate(
  bed: ReturnType<typeof useForm>,
  rates: KnownRates,
  attempt: Reporter["attempt"],
  lookAgain: () => Promise<unknown>,
) {
  const [opened, setOpened] = useState<OpenedBed>();
  const { preview, replaced, show: showPreview, tick, cancel } = useUpdatePreview<UpdatePreview>();
  /** What shows the preview; it comes with the first one. */
  const [Panel, setPanel] = useState<typeof import("./UpdatePreview")["UpdatePreviewPanel"]>();
  const [written, setWritten] = useState<WrittenUpdate>();
  /** What was in the form before a bed was opened. */
  const [formBefore, setFormBefore] = useState<BedForm>();
  /** Whether the last update could not be made in place, so that a new estimate is the way. */
  const [isRefused, setIsRefused] = useState(false);
  const known = rates?.found?.rates;

  const show = (next: OpenedBed) => {
    setOpened(next);
    setIsRefused(false);
    cancel();
    bed.load(next.form);
  };

  return {
    opened,
    preview,
    Panel,
    replaced,
    isRefused,
    canUndo: written !== undefined,
    canBringBack: formBefore !== undefined,
    open: () =>
      attempt("Opening the bed…", async () => {
        const { openBed } = await fetchUpdate();
        const next = await openBed("selected", known);
        const isTyped =
          JSON.stringify(bed.typedForm) !== JSON.stringify(opened?.form ?? next.form) && hasShape(bed.typedForm);
        setFormBefore(isTyped ? bed.typedForm : undefined);
        setWritten(undefined);
        show(next);
        return `${next.name || "The bed"} is open. Change it here, then press Update.`;
      }),
    /** The bed that was in the form before, as a bed of its own. */
    bringBack: () => {
      if (!formBefore) return;
      bed.load(formBefore);
      setFormBefore(undefined);
      setOpened(undefined);
      cancel();
    },
    close: () => {
      setOpened(undefined);
      cancel();
      setWritten(undefined);
    },
    look: () =>
      attempt("Comparing with the sheet…", async () => {
        if (!opened) return undefined;
        await stopIfRatesChanged();
        const [{ previewUpdate }, { UpdatePreviewPanel }] = await Promise.all([fetchUpdate(), fetchPanel()]);
        setPanel(() => UpdatePreviewPanel);
        const next = await previewUpdate(opened, bed.typedForm, known);
        setIsRefused(next.refused !== undefined);
        if (next.refused !== undefined) throw new WorkbookFailure(next.refused);
        if (next.lines.length === 0 && next.kept.length === 0) return "The estimate on the sheet already matches.";
        showPreview(next);
        return undefined;
      }),
    tick,
    cancel,
    write: () =>
      attempt("Updating the estimate…", async () => {
        if (!opened || !preview) return undefined;
        const { openBed, writeUpdate } = await fetchUpdate();
        cancel();
        const done = await writeUpdate(preview, replaced);
        setWritten(done);
        const { sheetId, block } = preview.there;
        const next = { sheetId, at: block.area, name: done.names.after };
        show(await openBed(next, known));
        await lookAgain();
        return `Updated ${next.name || "the estimate"} at ${opened.where}: ${done.count} ${done.count === 1 ? "change" : "changes"}.`;
      }),
    undo: () =>
      attempt("Undoing the update…", async () => {
        if (!opened || !written) return undefined;
        const { openBed } = await fetchUpdate();
        await written.undo();
        setWritten(undefined);
        const { sheetId, at } = opened;
        show(await openBed({ sheetId, at, name: written.names.before }, known));
        await lookAgain();
        return `The update is undone. The cells at ${opened.where} are back to what they were.`;
      }),
  };
}

/** Whether anything was typed about a bed, beside what the office chose. */
function hasShape({ name, typed, widths, points }: BedForm): boolean {
  const texts = [name, ...Object.values(typed), ...widths, ...points.map(([x, y]) => x + y)];
  return texts.some((text) => text.trim() !== "");
}

export type Update = ReturnType<typeof useUpdate>;
