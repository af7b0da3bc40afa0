import { type BrowserGrid, createBrowserGrid, type KeptWorkbook } from "./browser/browserGrid";
import type { OpenedNews } from "./files/afterOpening";
import { FunctionNames } from "./files/formula/functionNames";
import { FileTrouble } from "./files/trouble";
import type { Associations } from "./functions/associations";
import type { FunctionMetadata, FunctionsFile } from "./functions/metadata";
import type { PracticeOffice } from "./grid/practiceOffice";
import { HostSession } from "./host/session";
import { Shelf } from "./keep/database";
import { keepWork } from "./keep/keepWork";
import { offerFiles } from "./screen/files";
import { handOver } from "./screen/handOver";
import { type LoadingNote, LoadingTrouble } from "./screen/loadingNote";
import { nameFile, sayOpened } from "./screen/opened";
import { showReasons } from "./screen/reason";
import { offerStartAfresh } from "./screen/startAfresh";
import { showTrouble } from "./screen/trouble";

/**
 * Brings the grid up: the kept work or the invented office in it, the add-in's functions known to it.
 *
 * @param namespace What stands before the dot in the functions' names.
 * @param associations What the add-in's scripts have handed over, and will.
 */
export async function start(namespace: string, associations: Associations, note: LoadingNote): Promise<HostSession> {
  const shelf = new Shelf<KeptWorkbook>("workbook");
  const newsShelf = new Shelf<OpenedNews>("opened");
  let stopKeeping = () => {};
  offerStartAfresh(() => {
    stopKeeping();
    return Promise.all([shelf.clear(), newsShelf.clear()]);
  });

  note.step("Fetching the office and its functions…");
  const [kept, office, file] = await Promise.all([
    keptWork(shelf),
    fetched<PracticeOffice>("practice-office.json"),
    fetched<FunctionsFile>("functions.json"),
  ]);
  note.step("Opening the workbook…");
  await painted();
  const page = opened(office, kept);
  const { grid, save } = page;

  note.step("Working out the formulas…");
  await painted();
  const register = (metadata: readonly FunctionMetadata[]) => {
    const known = metadata.flatMap((one) => {
      const call = associations.get(one.id);
      return call ? [{ metadata: one, call }] : [];
    });
    return grid.register(namespace, known);
  };
  await register(file.functions);
  associations.onAdded((id) => void register(file.functions.filter((one) => one.id.toUpperCase() === id)));

  const keep = () =>
    keepWork({
      watch: grid.watch,
      work: save,
      put: (work) => shelf.put(work),
      onResult: (error) => showTrouble(error === undefined ? undefined : notKept),
    });
  stopKeeping = keep();
  offerFiles({
    grid: page,
    functions: new FunctionNames(file.functions.map(({ name }) => `${namespace}.${name}`)),
    replace: async (book, news) => {
      stopKeeping();
      try {
        await shelf.put(book);
        await newsShelf.put(news);
      } catch {
        stopKeeping = keep();
        throw new FileTrouble(noRoom);
      }
      location.reload();
    },
  });
  showReasons(grid);
  note.done();
  if (kept) nameFile(page.open.workbook.getName());
  await sayOpened(newsShelf, grid);
  return new HostSession(grid, namespace, handOver);
}

const notKept =
  "This browser does not keep your work: its storage is full or switched off. It will be gone when the page closes.";

const noRoom =
  "Nothing was opened: this browser's storage is full or switched off, and a file is opened by way of it. Close " +
  "private windows or make room, then try again.";

async function keptWork(shelf: Shelf<KeptWorkbook>): Promise<KeptWorkbook | undefined> {
  try {
    return await shelf.get();
  } catch {
    showTrouble(notKept);
    return undefined;
  }
}

function opened(office: PracticeOffice, kept: KeptWorkbook | undefined): BrowserGrid {
  try {
    return createBrowserGrid("practice-grid", office, kept);
  } catch (cause) {
    if (!kept) throw cause;
    const advice = "“Start afresh…” above throws it away and brings the invented office back.";
    throw new LoadingTrouble(`The work that this browser kept cannot be opened. ${advice}`, { cause });
  }
}

async function fetched<T>(file: string): Promise<T> {
  const response = await fetch(file);
  if (response.ok) return (await response.json()) as T;
  throw new LoadingTrouble(`${file} could not be fetched (${response.status}). Reload the page to try again.`);
}

/** Lets the browser show what was just said before a long piece of work begins. */
function painted(): Promise<void> {
  return new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 0)));
}
