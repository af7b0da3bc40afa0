import { must } from "../must";
import { type Cut, type Job, type Pieces, type Plan, stocksIn } from "./job";

/** Stock lengths that are all cut the same so far. */
interface Batch {
  readonly room: number;
  readonly at: readonly number[];
  readonly copies: readonly number[];
  readonly times: number;
}

/**
 * A plan without search: first-fit-decreasing or best-fit-decreasing, whichever takes fewer stock lengths.
 * Both are common practice: the pieces, longest first, each into the first or into the fullest stock with room.
 */
export function quickPlan(job: Job, pieces: Pieces): Plan {
  const first = fill(job, pieces, (batches, length) => batches.findIndex(({ room }) => room >= length));
  const fullest = fill(job, pieces, fullestWithRoom);
  return stocksIn(fullest) < stocksIn(first) ? fullest : first;
}

function fullestWithRoom(batches: readonly Batch[], length: number): number {
  let found = -1;
  batches.forEach(({ room }, n) => {
    if (room >= length && (found < 0 || room < must(batches[found]).room)) found = n;
  });
  return found;
}

function fill(job: Job, pieces: Pieces, choose: (batches: readonly Batch[], length: number) => number): Cut[] {
  const batches: Batch[] = [];
  job.sizes.forEach((length, size) => {
    let left = must(pieces[size]);
    const cutFrom = ({ room, at, copies }: Batch, more: number, times: number): Batch[] => {
      if (times === 0) return [];
      left -= more * times;
      return [{ room: room - more * length, at: [...at, size], copies: [...copies, more], times }];
    };
    while (left > 0) {
      const chosen = choose(batches, length);
      const fresh = { room: job.capacity, at: [], copies: [], times: left };
      const place = chosen < 0 ? batches.length : chosen;
      const batch = batches[chosen] ?? fresh;
      // All of the batch take as many as fit; where the pieces run out, one takes the rest, and the others stay.
      const each = Math.min(left, Math.floor(batch.room / length));
      const times = Math.min(batch.times, Math.floor(left / each));
      const last = times < batch.times ? left - times * each : 0;
      const changed = [...cutFrom(batch, each, times), ...cutFrom(batch, last, last > 0 ? 1 : 0)];
      const others = batch.times - times - (last > 0 ? 1 : 0);
      if (others > 0 && batch !== fresh) changed.push({ ...batch, times: others });
      batches.splice(place, 1, ...changed);
    }
  });
  return batches.map(({ at, copies, times }) => ({ pattern: { at, copies }, times }));
}
