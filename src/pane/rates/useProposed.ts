import { useState } from "preact/hooks";
import { type CellWrite, undoChanges, type WrittenChanges, writeChanges } from "../../workbook/change/cells";
import { useStatus } from "../useStatus";

/** A change of several cells that is shown before it is written. */
interface Proposal<Item> {
  /** What it is, for the person. */
  readonly title: string;
  readonly find: () => Promise<readonly Item[]>;
  readonly changesOf: (item: Item) => readonly CellWrite[];
  /** Follows what was written, once it was. */
  readonly written?: () => Promise<unknown>;
  readonly words: {
    /** What is said while it looks, writes, and undoes; what was said last stays where left out. */
    readonly doing?: { readonly look: string; readonly write: string; readonly undo: string };
    readonly nothing: string;
    readonly done: (items: number) => string;
    readonly undone: string;
  };
}

/** A change that is looked for, shown, written when told to, and undone. */
export function useProposed<Item>({ title, find, changesOf, written: follow, words }: Proposal<Item>) {
  const [items, setItems] = useState<readonly Item[]>();
  const [written, setWritten] = useState<WrittenChanges>();
  const { status, attempt, say } = useStatus();
  const { doing, nothing, done, undone } = words;

  return {
    items,
    status,
    canUndo: written !== undefined,
    look: () =>
      attempt(doing?.look, async () => {
        const found = await find();
        setItems(found);
        return found.length === 0 ? nothing : undefined;
      }),
    write: () =>
      attempt(doing?.write, async () => {
        if (!items) return undefined;
        setWritten(await writeChanges(title, items.flatMap(changesOf)));
        setItems(undefined);
        await follow?.();
        return done(items.length);
      }),
    leave: () => {
      setItems(undefined);
      say("Nothing was changed.");
    },
    undo: () =>
      attempt(doing?.undo, async () => {
        if (!written) return undefined;
        await undoChanges(written);
        setWritten(undefined);
        await follow?.();
        return undone;
      }),
  };
}
