/** A number for a key or a specification: without the digits that binary arithmetic leaves over. */
export const plain = (value: number): string => String(Number(value.toPrecision(9)));

const onOneLine = (name: string) => name.trim().replace(/\s+/g, " ");

/** A name as it is told apart from others: capitals and spaces do not matter. */
export const sameName = (name: string): string => onOneLine(name).toLowerCase();

/** The spelling that stands for all of the same name, whatever their order: the first by the alphabet. */
export const spellingOf = (names: readonly string[]): string => names.map(onOneLine).sort()[0] ?? "";
