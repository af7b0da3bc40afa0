/** A name as it is compared: lower case, words parted by one space, whatever stood between them. */
export function plainName(name: string): string {
  return name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}

/**
 * The name of a list that someone most likely meant: the one that shares the most whole words with what was
 * typed, and among those the one with the fewest letters to change.
 *
 * @param typed what was typed.
 * @param names the list, at least one.
 * @returns a name of the list.
 * @example nearestName("granit chips", ["river rock", "crushed granite"]) // "crushed granite"
 */
export function nearestName(typed: string, names: readonly string[]): string {
  const words = plainName(typed).slice(0, 60).split(" ");
  let best = names[0] ?? "";
  let fewest = Number.POSITIVE_INFINITY;
  for (const name of names) {
    const others = name.split(" ");
    let apart = lettersApart(words.join(" "), name) / 100;
    for (const word of words) apart += Math.min(...others.map((other) => lettersApart(word, other) / other.length));
    if (apart < fewest) [best, fewest] = [name, apart];
  }
  return best;
}

/** Letters to insert, drop or change to make one text of the other (Levenshtein 1966). */
export function lettersApart(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 0; i < a.length; i++) {
    const next = [i + 1];
    for (let j = 0; j < b.length; j++) {
      const change = (row[j] ?? 0) + (a[i] === b[j] ? 0 : 1);
      next.push(Math.min(change, (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
}
