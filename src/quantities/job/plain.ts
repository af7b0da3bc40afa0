/** A number for a key or a specification: without the digits that binary arithmetic leaves over. */
export const plain = (value: number): string => String(Number(value.toPrecision(9)));

/** A name as it is told apart from others: capitals and spaces do not matter. */
export const sameName = (name: string): string => name.trim().toLowerCase().replace(/\s+/g, " ");

/** The spelling that stands for all of the same name, whatever their order: the first by the alphabet. */
export const spellingOf = (names: readonly string[]): string => names.map((name) => name.trim()).sort()[0] ?? "";
