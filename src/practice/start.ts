import { FileRefusal } from "../xlsx/limits";
import type { Arrived } from "./arriving";
import { clearWork, fileShelf, newsShelf, workShelf } from "./arriving";
import { type BrowserGrid, createBrowserGrid, type KeptWorkbook } from "./browser/browserGrid";
import type { Associations } from "./functions/associations";
import type { FunctionMetadata } from "./functions/metadata";
import type { PracticeOffice } from "./grid/practiceOffice";
import { HostSession } from "./host/session";
import { type KeepTrouble, keepTroubleOf, keepWords, refusals } from "./keep/keepTrouble";
import { keepWork } from "./keep/keepWork";
import { isKeptFile, keptFile } from "./keep/keptFile";
import { markOpening } from "./keep/openingMark";
import { fetchPane } from "./screen/fetchPane";
import { offerFiles } from "./screen/files";
import { sayFirstCell } from "./screen/firstCell";
import { handOver } from "./screen/handOver";
import { type LoadingNote, LoadingTrouble } from "./screen/loadingNote";
import { nameFile, sayOpened } from "./screen/opened";
import { partKeyboard } from "./screen/paneKeyboard";
import { showReasons } from "./screen/reason";
import { offerRowGroups } from "./screen/rowGroups";
import { offerStartAfresh } from "./screen/startAfresh";
import { showTrouble } from "./screen/trouble";
import { whenIdle } from "./screen/whenIdle";
import { FunctionNames } from "./xlsx/formulas";

/**
 * Brings the grid up: the kept work or the invented office in it, the add-in's functions known to it before the first
 * formula is worked out. What the first cell does not need comes after it: the results, the files, the pane.
 *
 * @param namespace What is before the dot in the functions' names.
 * @param associations What the add-in's scripts have handed over, and will.
 */
export async function start(
  namespace: string,
  associations: Associations,
  { kept, unkept: unkeptOnArrival, tab, office, functions }: Arrived,
  note: LoadingNote,
): Promise<HostSession> {
  let unkept = unkeptOnArrival;
  let stopKeeping: ReturnType<typeof keepWork> = async () => undefined;
  offerStartAfresh(async () => {
    if (unkept === "later" || unkept === "other tab") return refusals[unkept];
    void stopKeeping();
    // Where nothing can be kept, there is nothing to throw away.
    await clearWork().catch(() => undefined);
    return undefined;
  });

  note.step("Opening the workbook…");
  await painted();
  const unmark = kept ? markOpening() : () => undefined;
  const page = opened(office, kept);
  const { grid, save } = page;
  const register = (metadata: readonly FunctionMetadata[]) => {
    const known = metadata.flatMap((one) => {
      const call = associations.get(one.id);
      return call ? [{ metadata: one, call }] : [];
    });
    return grid.register(namespace, known);
  };
  const workedOut = register(functions.functions);
  associations.onAdded((id) => void register(functions.functions.filter((one) => one.id.toUpperCase() === id)));
  const keep = () =>
    keepWork({
      watch: grid.watch,
      work: save,
      put: (work) => workShelf.put(work),
      onResult: (error) => showTrouble("work", error === undefined ? "" : keepWords[keepTroubleOf(error)]),
    });
  if (unkept) showTrouble("work", keepWords[unkept]);
  await page.drawn;
  await painted();
  if (!unkept) stopKeeping = keep();
  tab.onLost(async () => {
    await stopKeeping(true);
    unkept = "other tab";
    showTrouble("work", keepWords[unkept]);
  });
  note.done();
  sayFirstCell();

  void whenIdle().then(fetchPane);
  showReasons(grid);
  partKeyboard();
  offerRowGroups(grid);
  if (kept) nameFile(page.open.workbook.getName());
  offerFiles(
    {
      grid: page,
      functions: new FunctionNames(functions.functions.map(({ name }) => `${namespace}.${name}`)),
      replace: async (book, news, bytes) => {
        refuse(unkept);
        void stopKeeping();
        const before = await fileShelf.get().catch(() => undefined);
        try {
          const file = keptFile(bytes);
          await fileShelf.put(file);
          await workShelf.put({ ...book, custom: { ...book.custom, file: file.id } });
          await newsShelf.put(news);
        } catch (error) {
          // The work that stays is that of the file before.
          if (isKeptFile(before)) await fileShelf.put(before).catch(() => undefined);
          stopKeeping = keep();
          refuse(keepTroubleOf(error));
        }
        location.reload();
      },
    },
    fileShelf,
  );
  await workedOut;
  unmark();
  await sayOpened(newsShelf, page);
  return new HostSession(grid, namespace, handOver);
}

function refuse(trouble: KeepTrouble | undefined): void {
  if (trouble) throw new FileRefusal(refusals[trouble]);
}

function opened(office: PracticeOffice, kept: KeptWorkbook | undefined): BrowserGrid {
  try {
    return createBrowserGrid("practice-grid", office, kept);
  } catch (cause) {
    if (!kept) throw cause;
    const advice = "“Start over…” above discards it and brings back the sample office.";
    throw new LoadingTrouble(`The work saved in this browser can't be opened. ${advice}`, { cause });
  }
}

/** Lets the browser show what was just said before a long piece of work begins. */
function painted(): Promise<void> {
  return new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
}
