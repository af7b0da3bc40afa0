/**
 * The arithmetic of each function that takes single cells, written bare: no reading, no checks, no words. What a
 * person who trusts the cells would write. Whole things are rounded up with the same tolerance, since that is part of
 * the arithmetic. In the order of the function's arguments, all given.
 */
export type Bare = (...given: readonly number[]) => number;

const up = (amount: number) => {
  const nearest = Math.round(amount);
  return Math.abs(amount - nearest) <= 1e-9 * Math.max(1, Math.abs(amount)) ? nearest : Math.ceil(amount);
};
const strips = (w: number, r: number, o: number) => (w <= r ? 1 : up((w - o / 12) / (r - o / 12)));
const pieces = (e: number, p: number, lap: number) => Math.max(1, up((e - lap / 12) / (p - lap / 12)));

/** Heron's formula for thin triangles, as the function has it. */
const heron = (a: number, b: number, c: number) => {
  const long = Math.max(a, b, c);
  const short = Math.min(a, b, c);
  const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  const spare = short - (long - middle);
  return Math.sqrt((long + (middle + short)) * spare * (short + (long - middle)) * (long + (middle - short))) / 4;
};

const stakes = (e: number, p: number, gap: number, lap: number, corners: number) => {
  const count = pieces(e, p, lap);
  const segment = p - lap / 12;
  const spacing = gap / 12;
  return (count - 1) * up(segment / spacing) + Math.max(1, up((e - (count - 1) * segment) / spacing)) + 1 + corners;
};

const pins = (l: number, w: number, r: number, o: number, spacing: number, around: number, bay: number) => {
  const n = strips(w, r, o);
  const b = up(Math.min(r, w) / bay);
  const p = spacing / 12;
  const m = Math.max(1, up(l / p));
  const pairs = Math.floor(m / 2) + 1 + (m % 2);
  const singles = Math.floor(m / 2);
  return 2 * pairs + n * (b - 1) * pairs + n * b * singles + (n - 1) * (m + 1) + up(around / p);
};

/** Rolls used up one after another; the loop over pieces is the arithmetic. */
const rolls = (l: number, w: number, r: number, roll: number, o: number, end: number) => {
  const lap = end / 12;
  let count = 0;
  let left = 0;
  for (let strip = strips(w, r, o); strip > 0; strip--) {
    let at = 0;
    for (;;) {
      if (left <= lap + 1e-9 * l) {
        count++;
        left = roll;
      }
      if (left >= l - at - 1e-9 * l) {
        left -= l - at;
        break;
      }
      at += left - lap;
      left = 0;
    }
  }
  return count;
};

const workday = (notice: number, days: number) => {
  let date = notice;
  for (let toPass = days + 1; toPass > 0; ) if (++date % 7 >= 2) toPass--;
  return date;
};

export const BARE = {
  FEET: (a) => a!,
  INCHES: (a) => a!,
  AREA_RECTANGLE: (l, w, r, n) => l! * w! - n! * (1 - Math.PI / 4) * r! ** 2,
  AREA_TRIANGLE: (a, b, c) => heron(a!, b!, c!),
  AREA_ROUND: (d, i) => (Math.PI / 4) * (d! + i!) * (d! - i!),
  DIG_YARDS: (a, d, l, w, t) => (a! * d!) / 324 + (l! * w! * t!) / (144 * 27),
  SPOIL_YARDS: (y, s) => y! * (1 + s!),
  LOADS: (y, t, w, p) => Math.max(up(y! / t!), up((y! * w!) / p!)),
  EDGING_PIECES: (e, p, l) => pieces(e!, p!, l!),
  STAKES: (e, p, g, l, c) => stakes(e!, p!, g!, l!, c!),
  FABRIC_STRIPS: (w, r, o) => strips(w!, r!, o!),
  FABRIC_AREA: (l, w, r, o, roll, end) => {
    const lap = end! / 12;
    const count = l! <= roll! ? 1 : up((l! - lap) / (roll! - lap));
    return (w! + (strips(w!, r!, o!) - 1) * (o! / 12)) * (l! + (count - 1) * lap);
  },
  FABRIC_ROLLS: (l, w, r, roll, o, end) => rolls(l!, w!, r!, roll!, o!, end!),
  PINS: (l, w, r, o, s, c, b) => pins(l!, w!, r!, o!, s!, c!, b!),
  STONE_DEPTH: (h, t, g) => h! - t! - g!,
  STONE_DENSITY: (a) => a!,
  STONE_YARDS: (a, d, w) => ((a! * d!) / 324) * (1 + w!),
  STONE_TONS: (a, d, s, w) => ((a! * d!) / 324) * (1 + w!) * s!,
  STONE_COVERS: (t, d, s) => ((t! / s!) * 324) / d!,
  STONE_BAGS: (a, d, b, w) => up((((a! * d!) / 324) * (1 + w!) * 27) / b!),
  STONE_BULK_BAGS: (a, d, b, w) => up((((a! * d!) / 324) * (1 + w!)) / b!),
  PAVERS: (e, d, j) => up((e! * 12 + j!) / (d! + j!)),
  SAND_YARDS: (e, w, d, more) => ((e! * w! * d!) / 3888) * (1 + more!),
  ORDER_UP: (a, s, m) => Math.max(1, up(Math.max(a!, m!) / s!)) * s!,
  BARROW_TRIPS: (y, s, c, lb) => up(y! * Math.max(27 / c!, (s! * 2000) / lb!)),
  HAUL_HOURS: (t, d, l, u, w) => (t! * (l! + u! + (2 * d!) / w!)) / 60,
  PRICE_MARKUP: (c, m) => c! * (1 + m!),
  PRICE_MARGIN: (c, m) => c! / (1 - m!),
  MARKUP_FOR_MARGIN: (m) => m! / (1 - m!),
  DIG_DATE: (d, n) => workday(d!, n!),
} as const satisfies Record<string, Bare>;
