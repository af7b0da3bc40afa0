import { lettersApart, nearestName } from "../../quantities/nearestName";

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
  /** A part has every word; otherwise these are the nearest. */
  readonly isWhole: boolean;
  readonly answers: readonly Answer[];
}

const MOST = 8;
const NEAREST = 3;
/** No page may crowd the others out. */
const MOST_OF_PAGE = 2;
const MOST_LETTERS = 220;
/** Pages that answer before others, and those that list everything there is, by how their addresses begin. */
const FIRST_PAGES = /^questions\.html/;
const LAST_PAGES = /^(?:faults|numbers|speed)\.html|#(?:arguments|related|what-can-go-wrong|in-ordinary-formulas)/;
const FIRST_COUNT = 1.25;
const LAST_COUNT = 0.5;
/** The page of a function whose name was typed. */
const NAMED_COUNTS = 2;
const FUNCTION_PAGE = /^([A-Z_]+)\.html$/;
/** A word that is typed wrong differs from the right one in no more than one letter of this many. */
const LETTERS_PER_TYPO = 4;
/** A word in a heading says more than one in the text. */
const HEADING_COUNTS = 5;
const PAGE_COUNTS = 2;
const SYNONYM_COUNTS = 0.7;

/** Words of a question that say nothing of what it is about. */
const SMALL = new Set(
  (
    "a about add am an and any are as at be by can change could do does find for from get give has have how i if in is it its " +
    "like make many me mean much my need of on or set should show so some such that the their them there they this to too " +
    "use vs want was we what when where which who why will with would you your"
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
  landscape: ["fabric"],
  barrier: ["fabric"],
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
const wordsOf = (text: string): readonly string[] => text.toLowerCase().match(/[a-z]+|\d{3,}/g) ?? [];
const same = new Map(Object.entries(SAME).map(([word, others]) => [stem(word), others.map(stem)]));

interface Indexed {
  readonly part: HelpPart;
  readonly heading: readonly string[];
  readonly page: readonly string[];
  readonly text: readonly string[];
  readonly all: ReadonlySet<string>;
  /** The name of a function, on its page. */
  readonly named: string;
}

/** What is searched, made once of the parts. */
export type HelpSearch = (question: string) => Answers;

/**
 * Full-text search of the help. Short numbers and small words of a question are passed over, and a word that is typed
 * wrong is taken for the nearest one.
 *
 * @returns the parts that have every word of the question, and any that answer better, best first; where none has every
 *   word, the three nearest.
 * @example helpSearch(parts)("how deep for 1-1/2 in rock").answers[0]?.title
 */
export function helpSearch(parts: readonly HelpPart[]): HelpSearch {
  const indexed = parts.map((part): Indexed => {
    const [heading, page, text] = [saying(part.heading || part.page), saying(part.page), wordsOf(part.text).map(stem)];
    const named = nameIn(FUNCTION_PAGE.exec(part.address)?.[1] ?? "");
    return { part, heading, page, text, all: new Set([...heading, ...page, ...text]), named };
  });
  const vocabulary = [...new Set(indexed.flatMap(({ all }) => [...all]))].filter((word) => word.length > 2);
  const known = new Set(vocabulary);
  const rarity = (words: readonly string[]) =>
    Math.log(1 + indexed.length / (1 + indexed.filter(({ all }) => words.some((word) => all.has(word))).length));
  /** The parts that have any of the words, best first: all of a question counts more than some of it often. */
  const ranked = (question: string, wanted: readonly (readonly string[])[]) =>
    indexed
      .map((one) => {
        const has = wanted.filter((words) => words.some((word) => one.all.has(word))).length;
        const about = wanted.reduce((sum, words) => sum + rarity(words) * strength(one, words), 0);
        const isNamed = wanted.length > 1 && nameIn(question) === one.named;
        const weight = weightOf(one.part) * (isNamed ? NAMED_COUNTS : 1);
        return { one, has, score: about * (has / wanted.length) ** 2 * weight };
      })
      .filter(({ has }) => has > 0)
      .sort((a, b) => b.score - a.score);
  return (question) => {
    const typed = [...new Set(saying(question))]
      .filter((word) => known.has(word) || !/\d/.test(word))
      .map((word) => [word, ...(same.get(word) ?? [])]);
    if (typed.length === 0 || vocabulary.length === 0) return { isWhole: false, answers: [] };
    const isKnown = (words: readonly string[]) => words.some((word) => known.has(word));
    const nearest = ([word = ""]: readonly string[]) => nearestName(word, vocabulary);
    const wanted = typed.map((words) => {
      const isTypo = !isKnown(words) && lettersApart(words[0] ?? "", nearest(words)) <= mostTypos(words[0] ?? "");
      return isTypo ? [nearest(words)] : words;
    });
    const found = ranked(question, wanted);
    const whole = found.findIndex(({ has }) => has === wanted.length);
    const isWhole = whole >= 0;
    const about =
      found.length > 0
        ? found
        : ranked(
            question,
            typed.map((words) => [nearest(words)]),
          );
    const all = isWhole ? about.filter(({ has }, place) => has === wanted.length || place < whole) : about;
    const shown = spread(all).slice(0, isWhole ? MOST : NEAREST);
    return { isWhole, answers: shown.map(({ one }) => answerOf(one.part, wanted.flat())) };
  };
}

/** A function's name as people type it: `BED.STONE_TONS`, `stone tons`. */
const nameIn = (text: string) => wordsOf(text).join(" ").replace(/^bed /, "");

const mostTypos = (word: string) => Math.floor(word.length / LETTERS_PER_TYPO);

const weightOf = ({ address }: HelpPart) =>
  FIRST_PAGES.test(address) ? FIRST_COUNT : LAST_PAGES.test(address) ? LAST_COUNT : 1;

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
