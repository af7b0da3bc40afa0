import { nearestName } from "../../quantities/nearestName";

/** A part of a help page, as the build lists it in help/search.json. */
export interface HelpPart {
  readonly address: string;
  readonly page: string;
  readonly heading: string;
  readonly text: string;
}

export interface Answer {
  readonly address: string;
  readonly title: string;
  /** The sentences that answer best. */
  readonly about: string;
}

export interface Answers {
  /** Every word was found; otherwise these are the nearest. */
  readonly isWhole: boolean;
  readonly answers: readonly Answer[];
}

const MOST = 8;
const NEAREST = 3;
/** No page may crowd the others out. */
const MOST_OF_PAGE = 2;
const MOST_LETTERS = 220;
/** A word in a heading says more than one in the text. */
const HEADING_COUNTS = 5;
const PAGE_COUNTS = 2;
const SYNONYM_COUNTS = 0.7;

/** Words of a question that say nothing of what it is about. */
const SMALL = new Set(
  (
    "a about am an and are as at be by can could do does for from get give has have how i if in is it its like many me much " +
    "my need of on or set should so some such that the their them there they this to use want was we what when where " +
    "which who why will with would you your"
  ).split(" "),
);

/** What people call things, and what the help calls them. */
const SAME: Readonly<Record<string, readonly string[]>> = {
  rock: ["stone"],
  gravel: ["stone"],
  aggregate: ["stone"],
  deep: ["depth"],
  thick: ["depth"],
  border: ["edging"],
  edger: ["edging"],
  staple: ["pin"],
  freight: ["delivery"],
  shipping: ["delivery"],
  labour: ["labor"],
  manhour: ["labor"],
  aluminium: ["aluminum"],
  cost: ["price"],
};

/** A word without its ending, so that "rounding" finds "round" and "rolls" finds "roll". */
const stem = (word: string) =>
  word
    .replace(/ies$/, "y")
    .replace(/(?<=\w{3})(?:ings?|ed|s)$/, "")
    .replace(/(?<=\w{3})e$/, "");

/** The words of a text that say what it is about, without their endings. */
const saying = (text: string) =>
  wordsOf(text)
    .filter((word) => !SMALL.has(word) && word.length > 1)
    .map(stem);
const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[a-z]+/g) ?? [];
const same = new Map(Object.entries(SAME).map(([word, others]) => [stem(word), others.map(stem)]));

interface Indexed {
  readonly part: HelpPart;
  readonly heading: readonly string[];
  readonly page: readonly string[];
  readonly text: readonly string[];
  readonly all: ReadonlySet<string>;
}

/** What is searched, made once of the parts. */
export type HelpSearch = (question: string) => Answers;

/**
 * Full-text search of the help. Numbers and small words of a question are passed over, and a word that no page has is
 * taken for the nearest one.
 *
 * @returns the parts that have every word of the question, best first; where none has, the three nearest.
 * @example helpSearch(parts)("how deep for 1-1/2 in rock").answers[0]?.title
 */
export function helpSearch(parts: readonly HelpPart[]): HelpSearch {
  const indexed = parts.map((part): Indexed => {
    const [heading, page, text] = [saying(part.heading || part.page), saying(part.page), wordsOf(part.text).map(stem)];
    return { part, heading, page, text, all: new Set([...heading, ...page, ...text]) };
  });
  const vocabulary = [...new Set(indexed.flatMap(({ all }) => [...all]))].filter((word) => word.length > 2);
  const known = new Set(vocabulary);
  const rarity = (words: readonly string[]) =>
    Math.log(1 + indexed.length / (1 + indexed.filter(({ all }) => words.some((word) => all.has(word))).length));
  return (question) => {
    const wanted = [...new Set(saying(question))].map((word) => {
      const others = [word, ...(same.get(word) ?? [])];
      return others.some((one) => known.has(one)) || vocabulary.length === 0 ? others : [nearestName(word, vocabulary)];
    });
    if (wanted.length === 0) return { isWhole: false, answers: [] };
    const weighed = wanted.map((words) => ({ words, weight: rarity(words) }));
    const scored = indexed
      .map((one) => ({
        one,
        has: wanted.filter((words) => words.some((word) => one.all.has(word))).length,
        score: weighed.reduce((sum, { words, weight }) => sum + weight * strength(one, words), 0),
      }))
      .filter(({ has }) => has > 0)
      .sort((a, b) => b.has - a.has || b.score - a.score);
    const whole = scored.filter(({ has }) => has === wanted.length);
    const isWhole = whole.length > 0;
    const shown = spread(isWhole ? whole : scored).slice(0, isWhole ? MOST : NEAREST);
    return { isWhole, answers: shown.map(({ one }) => answerOf(one.part, wanted.flat())) };
  };
}

/**
 * How much a part is about any of some words, the first of which was typed: a short heading is about each of its words,
 * and a long text has to have them more often.
 */
function strength({ heading, page, text }: Indexed, words: readonly string[]): number {
  const count = (all: readonly string[]) => all.filter((word) => words.includes(word)).length;
  const often = count(text);
  const asTyped = heading.includes(words[0] ?? "") ? 1 : SYNONYM_COUNTS;
  const inHeading = count(heading) > 0 ? (HEADING_COUNTS * asTyped) / (1 + heading.length / 3) : 0;
  const inPage = count(page) > 0 ? PAGE_COUNTS / (1 + page.length / 3) : 0;
  return inHeading + inPage + often / (often + 1 + text.length / 150);
}

function spread<Scored extends { readonly one: Indexed }>(scored: readonly Scored[]): Scored[] {
  const pages = new Map<string, number>();
  return scored.filter(({ one }) => {
    const count = (pages.get(one.part.page) ?? 0) + 1;
    pages.set(one.part.page, count);
    return count <= MOST_OF_PAGE;
  });
}

function answerOf({ address, page, heading, text }: HelpPart, words: readonly string[]): Answer {
  const sentences = text.match(/[^.!?]+(?:[.!?](?!\s|$)[^.!?]*)*[.!?]?/g) ?? [text];
  const has = (sentence: string) =>
    new Set(
      wordsOf(sentence)
        .map(stem)
        .filter((word) => words.includes(word)),
    ).size;
  // Below a heading that was asked for, the first sentence answers.
  const isAsked = saying(heading).some((word) => words.includes(word));
  const best = isAsked
    ? 0
    : sentences.reduce((most, sentence, at) => (has(sentence) > has(sentences[most] ?? "") ? at : most), 0);
  const about = sentences.slice(best).join(" ").replace(/\s+/g, " ").trim();
  const cut = about.length > MOST_LETTERS ? `${about.slice(0, MOST_LETTERS).replace(/\s\S*$/, "")}…` : about;
  return { address, title: heading === "" ? page : `${page}: ${heading}`, about: cut };
}
