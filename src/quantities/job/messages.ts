import { SHORT_PIECE_WORDS } from "../edging";

/** What is said about needs that cannot be ordered. Part of the one catalogue. */
export const jobMessages = {
  badNeed: (bed: string, what: string, given: unknown) =>
    `${bed}: can't use ${String(given)} for ${what}. Fix it on the bed's own sheet, then make the documents again.`,
  noBeds: () => "No beds in this job yet. Check at least one.",
} as const;

const short = (value: number) => String(Number(value.toPrecision(6)));

/** Notes at the lines of an order. */
export const orderNotes = {
  apart: (what: readonly string[]) => `Not all ordered together: beds differ in ${listed(what)}.`,
  typed: (bed: string, quantity: number, unit: string) =>
    `${bed}: ${short(quantity)} ${unit} as typed there, on top of the rest.`,
  notKnown: (bed: string) => `${bed}: only its order is known, so it's ordered by itself.`,
  withPieces: (stakes: number) => `${short(stakes)} more come with the pieces.`,
  piecesApart: () => "Cut bed by bed: saving pieces would mean buying stakes that cost more.",
  shortPiece: (bed: string, piece: number) => `${bed}: P${piece} ${SHORT_PIECE_WORDS}`,
  unproven: () => "This is the best cut list found; fewer may be possible.",
} as const;

/** Warnings about trucks and trailers. GVWR is the maker's maximum loaded weight. */
export const truckWords = {
  noPayload: (what: string) =>
    `${what}: no payload given, so weight wasn't checked. Payload is GVWR less empty weight, people, and fuel.`,
  overloaded: (what: string, loads: number, tonsEach: number, payloadTons: number) =>
    `${what}: in ${loads} ${loads === 1 ? "load" : "loads"} each carries ${short(tonsEach)} tons, ` +
    `over its payload of ${short(payloadTons)}. Plan more loads.`,
  overfull: (what: string, loads: number, yardsEach: number, truckYards: number) =>
    `${what}: in ${loads} ${loads === 1 ? "load" : "loads"} each carries ${short(yardsEach)} cu yd, ` +
    `and the truck holds ${short(truckYards)}. Plan more loads.`,
} as const;

export const listed = (words: readonly string[]): string =>
  words.length < 3 ? words.join(" and ") : `${words.slice(0, -1).join(", ")}, and ${words.at(-1)}`;
