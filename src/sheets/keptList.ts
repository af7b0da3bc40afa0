/**
 * Reads the entries of a list that is kept, one by one.
 *
 * @param content of what JSON gave.
 * @returns the entries that can be read, and the others as they are, to be written back with them; undefined where it is
 *   no list.
 */
export function readList<T>(content: unknown, isItem: (value: unknown) => value is T): KeptList<T> | undefined {
  if (!Array.isArray(content)) return undefined;
  return { items: content.filter(isItem), unread: content.filter((one) => !isItem(one)) };
}

/** A list that is kept. */
export interface KeptList<T> {
  readonly items: readonly T[];
  readonly unread: readonly unknown[];
}

export const NO_ITEMS: KeptList<never> = { items: [], unread: [] };

/** The list with other entries, as it is kept: what could not be read stays in it. */
export function listToKeep<T>({ unread }: KeptList<T>, items: readonly T[]): readonly unknown[] {
  return [...items, ...unread];
}
