import { useEffect, useState } from "preact/hooks";
import type { PlainCopy } from "../../sheets/plain/result";
import type { CopyMode } from "../../sheets/plain/toPlain";
import { canOpenWorkbooks } from "../../workbook/newWorkbook";
import type { InTheWay } from "../../workbook/place";
import { selectedPlace } from "../../workbook/selectedPlace";
import { watchSelection } from "../../workbook/selection";
import { takeBackLastInsert } from "../../workbook/takeBack";
import { WorkbookTrouble } from "../../workbook/trouble";
import { download } from "./download";
import { copyFile, copyForSheet, copyForWorkbook, copyName, type OnSheet, openCopy, writeCopy } from "./makeCopy";
import { readAgain, readSource, type Source, type What } from "./source";

export type Where = "new sheet" | "cell" | "workbook";

export interface Wish {
  readonly what: What;
  readonly where: Where;
  readonly mode: CopyMode;
}

/** What was looked at before anything is written, and what it would become. */
export interface Looked {
  readonly wish: Wish;
  readonly source: Source;
  readonly copy: PlainCopy;
}

export interface Word {
  readonly text: string;
  readonly kind: "working" | "done" | "trouble";
}

/** Copies cells so that they work without the add-in: looks at them first, and writes what was looked at. */
export function useCopy() {
  const [wish, setWish] = useState<Wish>({ what: "sheet", where: "new sheet", mode: "formulas" });
  const [looked, setLooked] = useState<Looked>();
  const [inTheWay, setInTheWay] = useState<InTheWay>();
  const [canTakeBack, setCanTakeBack] = useState(false);
  const [word, setWord] = useState<Word>();
  const selected = useSelection();
  const opens = canOpenWorkbooks();

  const attempt = async (text: string, deed: () => Promise<Word | undefined>) => {
    setInTheWay(undefined);
    setWord({ kind: "working", text });
    try {
      setWord(await deed());
    } catch (error) {
      setWord({ kind: "trouble", text: troubleOf(error) });
    }
  };

  const write = async ({ wish: { mode }, source: before }: Looked, to: OnSheet): Promise<Word | undefined> => {
    const inserted = await writeCopy(await readAgain(before), mode, to);
    if (!inserted.done) {
      setInTheWay(inserted.inTheWay);
      return undefined;
    }
    setLooked(undefined);
    setCanTakeBack(true);
    return { kind: "done", text: `The copy stands on ${inserted.sheetName} at ${inserted.address}.` };
  };

  const hand = async ({ wish: { mode }, source: before }: Looked): Promise<Word> => {
    const source = await readAgain(before);
    if (opens) await openCopy(source, mode);
    else download(await copyFile(source, mode), copyName(source, mode));
    setLooked(undefined);
    return { kind: "done", text: "The copy is a workbook of its own now. Save it where you want to keep it." };
  };

  return {
    wish,
    looked,
    inTheWay,
    canTakeBack,
    word,
    selected,
    /** Whether the host opens the copy as a workbook, or the browser saves it. */
    opens,
    choose: (change: Partial<Wish>) => {
      setWish({ ...wish, ...change });
      setLooked(undefined);
      setInTheWay(undefined);
      setWord(undefined);
    },
    look: () =>
      attempt("Reading the cells…", async () => {
        const source = await readSource(wish.what);
        const isElsewhere = wish.where === "workbook";
        const copy = isElsewhere
          ? copyForWorkbook(source, wish.mode)
          : copyForSheet(source, wish.mode, { kind: "new sheet" });
        setLooked({ wish, source, copy });
        return undefined;
      }),
    make: (found: Looked) =>
      attempt("Making the copy…", async () => {
        if (found.wish.where === "workbook") return hand(found);
        if (found.wish.where === "new sheet") return write(found, { kind: "new sheet" });
        return write(found, { kind: "cell", ...(await selectedPlace()) });
      }),
    makeAt: (found: Looked, to: OnSheet) => attempt("Making the copy…", () => write(found, to)),
    takeBack: () =>
      attempt("Taking it back…", async () => {
        const { title, where } = await takeBackLastInsert();
        setCanTakeBack(false);
        return { kind: "done", text: `The ${title} was taken back from ${where}.` };
      }),
    cancel: () => {
      setLooked(undefined);
      setInTheWay(undefined);
      setWord({ kind: "done", text: "Nothing was written." });
    },
  };
}

function troubleOf(error: unknown): string {
  if (error instanceof WorkbookTrouble) return error.message;
  // The part that makes files is fetched when it is first wanted.
  if (error instanceof Error && error.name === "ChunkLoadError")
    return "The part that makes files could not be fetched. Nothing was written. Try again.";
  throw error;
}

/** The selected cell's address, without its sheet; "" where the host tells none. */
function useSelection(): string {
  const [address, setAddress] = useState("");
  useEffect(() => {
    const watching = watchSelection(setAddress);
    watching.catch(() => setAddress(""));
    return () => void watching.then((stop) => stop()).catch(() => undefined);
  }, []);
  return address;
}
