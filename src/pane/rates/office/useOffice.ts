import { useEffect, useRef, useState } from "preact/hooks";
import { isoDate } from "../../../quantities/calendar/calendarDay";
import { type OfficeFile, officeFileName, versionWords } from "../../../sheets/office/officeFile";
import { recordOf } from "../../../sheets/office/record";
import { undoOffice, type WrittenOffice, writeOffice } from "../../../workbook/change/officeSettings";
import { WorkbookFailure } from "../../../workbook/failure";
import { today } from "../../papers/today";
import { saveFile } from "../../saveFile";
import { counted } from "../../templates/words";
import type { Reporter } from "../../useStatus";
import { type KnownRates, refreshRates } from "../store";
import { makeOfficeFile, type Ticks } from "./makeOfficeFile";
import { type LoadedTexts, loadTexts, unloadTexts } from "./officeDetails";
import { officeOffer, readOfficeFile } from "./officeSource";
import { type LoadPlan, planLoad } from "./planLoad";
import {
  type OfficeState,
  type OfficeWorkbook,
  readOfficeState,
  readOfficeWorkbook,
  versionCells,
} from "./readOfficeWorkbook";

/** What the part for office settings shows in place of the screen. */
export type OfficePanel =
  | { readonly kind: "save"; readonly workbook: OfficeWorkbook; readonly number: number }
  | { readonly kind: "load" }
  | { readonly kind: "preview"; readonly plan: LoadPlan };

/** What was loaded last, to be undone. */
interface Loaded {
  readonly written: WrittenOffice;
  readonly texts: LoadedTexts | undefined;
}

/** Saving the office's settings to a file, and loading them from one or from the office's folder. */
export function useOffice(reporter: Reporter, rates: KnownRates) {
  const [state, setState] = useState<OfficeState>();
  const [offer, setOffer] = useState<{ readonly file?: OfficeFile; readonly why?: string }>({});
  const [panel, setPanel] = useState<OfficePanel>();
  const [loaded, setLoaded] = useState<Loaded>();

  const look = useRef(0);
  const refresh = async () => {
    look.current += 1;
    const mine = look.current;
    const next = await readOfficeState().catch(() => undefined);
    if (next && mine === look.current) setState(next);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: read again whenever the rates change
  useEffect(() => void refresh(), [rates]);
  useEffect(() => {
    let wanted = true;
    void officeOffer().then((read) => {
      if (wanted && read) setOffer(read.ok ? { file: read.file } : { why: read.why.join(" ") });
    });
    return () => {
      wanted = false;
    };
  }, []);

  const preview = async (file: OfficeFile) =>
    setPanel({ kind: "preview", plan: planLoad(file, await readOfficeWorkbook()) });

  return {
    state,
    offer,
    panel,
    canUndo: loaded !== undefined,
    openSave: () =>
      reporter.attempt("Reading the workbook…", async () => {
        const workbook = await readOfficeWorkbook();
        // One more than any that is known here.
        const number = 1 + Math.max(workbook.known.record?.number ?? 0, offer.file?.number ?? 0);
        setPanel({ kind: "save", workbook, number });
        return undefined;
      }),
    openLoad: () => {
      reporter.clear();
      setPanel({ kind: "load" });
    },
    close: () => setPanel(undefined),
    previewOffer: () =>
      reporter.attempt("Reading the workbook…", async () => {
        if (offer.file) await preview(offer.file);
        return undefined;
      }),
    previewFile: (file: File) =>
      reporter.attempt("Reading the file…", async () => {
        const read = await readOfficeFile(file);
        if (!read.ok) {
          const more = read.more > 0 ? ` And ${read.more} more.` : "";
          throw new WorkbookFailure(
            `${file.name} can't be loaded, so nothing was changed. ${read.why.join(" ")}${more}`,
          );
        }
        await preview(read.file);
        return undefined;
      }),
    save: (office: string, ticks: Ticks) =>
      reporter.attempt("Saving…", async () => {
        if (panel?.kind !== "save") return undefined;
        const version = { office: office.trim(), saved: isoDate(today()), number: panel.number };
        const workbook = await readOfficeWorkbook();
        const { file, text, leftOut } = makeOfficeFile(version, workbook, ticks);
        const { mayReplace = false } = workbook.known;
        // The note goes first: where it can't be written, no file claims to be what this workbook uses.
        await writeOffice({
          record: recordOf(file, file.rates),
          startOver: mayReplace,
          cells: file.rates ? versionCells(workbook, file) : [],
          sheets: [],
        });
        const name = officeFileName(file);
        saveFile(new Blob([text], { type: "application/json" }), name);
        setPanel(undefined);
        await refresh();
        const without = leftOut.length > 0 ? ` Left out, since they're damaged: ${leftOut.join(", ")}.` : "";
        return `Saved ${versionWords(file)}, as ${name}.${without}`;
      }),
    load: () =>
      reporter.attempt("Loading…", async () => {
        if (panel?.kind !== "preview") return undefined;
        const { plan } = panel;
        const written = await writeOffice(plan.writes).catch(async (error: unknown) => {
          // Where the workbook has changed since the preview, the next try starts from what it has now.
          await preview(plan.file).catch(() => undefined);
          throw error;
        });
        const texts = plan.file.texts && loadTexts(plan.file.texts);
        setLoaded({ written, texts: texts && "after" in texts ? texts : undefined });
        setPanel(undefined);
        // They are loaded, whether or not they can be read at once.
        await refreshRates().catch(() => false);
        await refresh();
        return loadedWords(plan, texts !== undefined && "trouble" in texts);
      }),
    undo: () =>
      reporter.attempt("Undoing…", async () => {
        if (!loaded) return undefined;
        await undoOffice(loaded.written);
        if (loaded.texts) unloadTexts(loaded.texts);
        setLoaded(undefined);
        await refreshRates().catch(() => false);
        await refresh();
        return "The office settings that were loaded are undone. Everything is as it was before.";
      }),
  };
}

export type OfficeWork = ReturnType<typeof useOffice>;

function loadedWords({ file, differences, newSheet, texts, past }: LoadPlan, textsFailed: boolean): string {
  const parts = [
    newSheet && `a Rates sheet with ${counted(newSheet.length, "rate")}`,
    differences && differences.length > 0 && counted(differences.length, "rate"),
    texts.length > 0 && !textsFailed && "letterhead and terms",
    past && past.jobs > 0 && counted(past.jobs, "past job"),
  ].filter(Boolean);
  const failed = textsFailed ? " This browser can't save the letterhead and terms." : "";
  const what = parts.length > 0 ? `: ${parts.join(", ")}` : "";
  return `Loaded ${file.office}, ${versionWords(file)}${what}.${failed}`;
}
