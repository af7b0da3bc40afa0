/**
 * What is kept as text, in a workbook's settings or in the browser: with the number of its version, so that an earlier
 * add-in leaves alone what a later one has written. One way for all that is kept:
 *
 * - Text that is damaged, or of a later version, is told to the person and stays as it is.
 * - What is damaged gives way once the person has said so; what a later version wrote never does.
 *
 * The note of the last insert alone is no list that grows: the next insert takes its place, whatever was there.
 */
export type Kept<T> =
  | { readonly state: "none" }
  | { readonly state: "kept"; readonly value: T }
  | { readonly state: "later" }
  | { readonly state: "damaged" };

/** A kind of thing that is kept. */
export interface Keeping<T> {
  /** Counts up when an earlier add-in could no longer read it. */
  readonly version: number;
  /** The thing, of what JSON gave; undefined where it is damaged. It is never trusted: anyone can write a setting. */
  readonly read: (content: unknown) => T | undefined;
}

/** Before versions were written, the thing itself was there. */
const FIRST_VERSION = 1;

/**
 * Reads what is kept; never throws.
 *
 * @param text as it is kept; "" where nothing is.
 */
export function readKeptText<T>(text: string, { version, read }: Keeping<T>): Kept<T> {
  if (text === "") return { state: "none" };
  try {
    const content: unknown = JSON.parse(text);
    const written = versionOf(content);
    if (written > version) return { state: "later" };
    const value = read(isVersioned(content) ? content.kept : content);
    return value === undefined ? { state: "damaged" } : { state: "kept", value };
  } catch {
    return { state: "damaged" };
  }
}

/** The text under which a thing is kept. */
export function textToKeep(kept: unknown, { version }: Pick<Keeping<unknown>, "version">): string {
  return JSON.stringify({ version, kept });
}

function versionOf(content: unknown): number {
  return isObject(content) && typeof content.version === "number" ? content.version : FIRST_VERSION;
}

function isVersioned(content: unknown): content is { readonly kept: unknown } {
  return isObject(content) && typeof content.version === "number" && Object.hasOwn(content, "kept");
}

/** Whether a value has members by name: an object, and no list. */
export function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
