/** A number for a key or a specification, to a thousandth: 4 1/3 is 4.333, as in the names of a job's kinds. */
export const plain = (value: number): string => String(Math.round(value * 1000) / 1000);

const onOneLine = (name: string) => name.trim().replace(/\s+/g, " ");

/** A name as it is told apart from others: capitals and spaces do not matter. */
export const sameName = (name: string): string => onOneLine(name).toLowerCase();

/** The spelling that stands for all of the same name, whatever their order: the first by the alphabet. */
export const spellingOf = (names: readonly string[]): string => names.map(onOneLine).sort()[0] ?? "";

/**
 * Names by which a job's beds can be told apart, on paper and in its cut list: the second bed of a name gets a number.
 *
 * @example distinctNames(["Walk", "Wall", "walk"]) // ["Walk", "Wall", "walk (2)"]
 */
export function distinctNames(names: readonly string[]): string[] {
  const given = new Set(names.map(sameName));
  const taken = new Set<string>();
  return names.map((name) => {
    let distinct = name;
    for (let n = 2; taken.has(sameName(distinct)) || (distinct !== name && given.has(sameName(distinct))); n++)
      distinct = `${name.trim()} (${n})`;
    taken.add(sameName(distinct));
    return distinct;
  });
}
