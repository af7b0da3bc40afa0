import { counted, named } from "../words";

/** What of a file does not come along, or comes otherwise, in words for the person who decides whether to open it. */
export class Findings {
  private readonly counts = new Map<string, { count: number; readonly say: (count: number) => string }>();
  private readonly places = new Map<string, { readonly at: string[]; readonly say: (count: number) => string }>();

  /** Notes things that are told by their number. */
  count(one: string, count = 1, many = `${one}s`): void {
    if (count <= 0) return;
    const before = this.counts.get(one)?.count ?? 0;
    this.counts.set(one, { count: before + count, say: (all) => counted(all, one, many) });
  }

  /** Notes a single fact. */
  fact(words: string): void {
    this.counts.set(words, { count: 1, say: () => words });
  }

  /** Notes a place, told together with others of its kind: `say` begins the sentence, the places end it. */
  place(kind: string, at: string, say: (count: number) => string): void {
    const known = this.places.get(kind);
    if (known) known.at.push(at);
    else this.places.set(kind, { at: [at], say });
  }

  /** One line each, without a full stop. */
  lines(): string[] {
    return [
      ...[...this.counts.values()].map(({ count, say }) => say(count)),
      ...[...this.places.values()].map(({ at, say }) => `${say(at.length)}: ${named(at)}`),
    ];
  }
}
