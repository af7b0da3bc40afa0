import { must } from "../must";

const SLOTS = 2 ** 12;
/** Odd numbers that spread what is multiplied by them over all bits: 2^32 over the golden ratio, and another. */
const [SPREAD_PLACE, SPREAD_LENGTH] = [0x9e3779b1, 0x85ebca6b];
const WORD = 2 ** 32;

const places = new Float64Array(SLOTS);
const lengths = new Float64Array(SLOTS);
const sums = new Float64Array(SLOTS);
/** Places are numbered on from walk to walk, so that none of an earlier walk is taken for one of this. */
let placesOfEarlierWalks = 1;

/**
 * Remembers, for one walk, how much was gathered at best on arriving at a place in an order with a length left. It
 * forgets what others overwrite, which costs steps and never an answer. The walk before must be over.
 *
 * @param count places in the order.
 * @returns tells whether this walk was here before with as much or more; if not, it is now.
 */
export function seenBefore(count: number): (place: number, length: number, sum: number) => boolean {
  const start = placesOfEarlierWalks;
  placesOfEarlierWalks += count;
  return (place, length, sum) => {
    const mixed = Math.imul(place, SPREAD_PLACE) ^ Math.imul(length | 0, SPREAD_LENGTH) ^ Math.floor(length / WORD);
    const slot = (mixed ^ (mixed >>> 15)) & (SLOTS - 1);
    if (places[slot] === start + place && lengths[slot] === length && must(sums[slot]) >= sum) return true;
    places[slot] = start + place;
    lengths[slot] = length;
    sums[slot] = sum;
    return false;
  };
}
