import { type Keeping, readKeptText, textToKeep } from "../../sheets/kept";

/** One thing in the browser's own storage, which panes of several workbooks share. */
export interface StoredThing<T> extends Keeping<T> {
  readonly key: () => string;
  /** Where it was before versions were written: read while nothing is under its key, and gone once something is. */
  readonly oldKey?: string;
  /**
   * What is to be kept where another pane may have kept something, too.
   *
   * @param there what is kept by now.
   * @param before what this pane kept last, or found.
   */
  readonly join: (there: T, before: T, now: T) => T;
}

/** Why something is not kept: see `sheets/kept`. "off": the browser has no storage for the pane, or no room in it. */
export type StoreTrouble = "later" | "damaged" | "off";

/** What is kept; nothing where nothing can be read. Never throws. */
export function readStored<T>(thing: StoredThing<T>): { readonly value?: T; readonly trouble?: StoreTrouble } {
  const text = storedText(thing);
  if (text === undefined) return { trouble: "off" };
  const kept = readKeptText(text, thing);
  if (kept.state === "kept") return { value: kept.value };
  return kept.state === "none" ? {} : { trouble: kept.state };
}

/**
 * Keeps something. What cannot be read stays, unless it is damaged and the person has said that it may go.
 *
 * @returns why it is not kept; undefined where it is. Never throws.
 */
export function writeStored<T>(thing: StoredThing<T>, before: T, now: T, startOver: boolean): StoreTrouble | undefined {
  const there = readStored(thing);
  if (there.trouble && !(there.trouble === "damaged" && startOver)) return there.trouble;
  const next = there.value === undefined ? now : thing.join(there.value, before, now);
  try {
    localStorage.setItem(thing.key(), textToKeep(next, thing));
    if (thing.oldKey) localStorage.removeItem(thing.oldKey);
    return undefined;
  } catch {
    return "off";
  }
}

/** "" where nothing is kept; undefined where the browser has no storage for the pane, or keeps it from it. */
function storedText({ key, oldKey }: Pick<StoredThing<unknown>, "key" | "oldKey">): string | undefined {
  try {
    return localStorage.getItem(key()) ?? (oldKey && localStorage.getItem(oldKey)) ?? "";
  } catch {
    return undefined;
  }
}
