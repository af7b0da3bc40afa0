import * as functions from "../../src/functions/index";
import { readTape } from "../../src/quantities/tape";
import { standInForCustomFunctions } from "../fakeCustomFunctions";
import { BARE } from "./calls/bare";
import { inputsOf } from "./calls/inputs";
import { type Claim, median, short, type Table } from "./table";

const MOST_MEDIAN = 3;
const MOST = 8;
/** "A few" seconds for a million readings of tape text. */
const MOST_SECONDS = 3;
const ROWS = 1024;
const CALLS = 2 ** 20;
const ROUNDS = 7;

type Called = (...given: (number | undefined)[]) => number;

/** Milliseconds for a million calls through one loop that knows nothing of what it calls, as a host calls. */
function timeOf(called: Called, rows: readonly (readonly number[])[]): number {
  let total = 0;
  const start = performance.now();
  for (let call = 0; call < CALLS; call++) {
    const row = rows[call % ROWS]!;
    total += called(row[0], row[1], row[2], row[3], row[4], row[5], row[6]);
  }
  const ms = performance.now() - start;
  if (!(total > 0)) throw new Error("A benchmark that gives nothing measures nothing.");
  return ms;
}

/** The arguments after the last of a row are left out, as a host sends them. */
const padded = (row: readonly number[]) => [...row, ...Array<undefined>(7 - row.length).fill(undefined)] as number[];

interface Compared {
  readonly id: string;
  readonly ours: number;
  readonly bare: number;
}

function compare(id: keyof typeof BARE): Compared {
  const rows = inputsOf(id, ROWS).map(padded);
  const own = functions[id] as Called;
  const bare = BARE[id] as Called;
  for (const row of rows) {
    const [ours, theirs] = [own(...row), bare(...row)];
    if (Math.abs(ours - theirs) > 1e-9 * Math.abs(theirs)) throw new Error(`${id}(${row}) is ${ours}, bare ${theirs}`);
  }
  let [ours, theirs] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  // In turns, and the least of each: what else runs on the machine only ever adds.
  for (let round = 0; round < ROUNDS; round++) {
    ours = Math.min(ours, timeOf(own, rows));
    theirs = Math.min(theirs, timeOf(bare, rows));
  }
  return { id, ours, bare: theirs };
}

/** Arithmetic quicker than this share of the loop is too little to be told from it. */
const LEAST_NET = 0.2;

/** What the loop and a call of nothing take by themselves, so that they flatter no one. */
function loopOf(rows: readonly (readonly number[])[]): number {
  const nothing: Called = (first) => first!;
  return Math.min(...Array.from({ length: ROUNDS }, () => timeOf(nothing, rows)));
}

/** A call with plain numbers against the same arithmetic written bare; and a million lengths read from tape text. */
export async function bench(): Promise<Table[]> {
  standInForCustomFunctions();
  const ids = Object.keys(BARE) as (keyof typeof BARE)[];
  // Once over, so that the loop has met every function before anything is measured.
  for (const id of ids) {
    const rows = inputsOf(id, ROWS).map(padded);
    timeOf(functions[id] as Called, rows);
    timeOf(BARE[id] as Called, rows);
  }
  const found = ids.map(compare);
  const ratios = found.map(({ ours, bare }) => ours / bare);
  const over = found.filter((_, place) => ratios[place]! > MOST).map(({ id }) => id);
  const nanoseconds = (ms: number) => short((ms * 1e6) / CALLS);
  const loop = loopOf(inputsOf("STONE_YARDS", ROWS).map(padded));
  const net = found.map(({ ours, bare }) =>
    bare - loop > LEAST_NET * loop ? (ours - loop) / (bare - loop) : undefined,
  );
  const rows = found.map(({ id, ours, bare }, place) => ({
    function: id,
    "ns a call": nanoseconds(ours),
    "bare, ns": nanoseconds(bare),
    "ours ÷ bare": short(ratios[place]!),
    "without the loop": net[place] === undefined ? "" : short(net[place]),
  }));
  const summary = {
    "median, ours ÷ bare": short(median(ratios)),
    "may be": MOST_MEDIAN,
    highest: short(Math.max(...ratios)),
    "may be ": MOST,
    "over it": over.join(", ") || "none",
    "median without the loop": short(median(net.filter((ratio) => ratio !== undefined))),
    "loop, ns": nanoseconds(loop),
  };
  const read = tape();
  return [
    { title: "A function call with plain numbers, and the bare arithmetic", rows },
    { title: "Over all of them", rows: [summary], claims: claimsOf(ratios) },
    { title: "A million lengths read from tape text", rows: read, claims: [tapeClaim(read)] },
  ];
}

function claimsOf(ratios: readonly number[]): Claim[] {
  const how = "against the bare arithmetic, in turns within one run, the fastest of each";
  return [
    { what: "A function call: the median", measured: short(median(ratios)), most: MOST_MEDIAN, unit: "times", how },
    { what: "A function call: the slowest", measured: short(Math.max(...ratios)), most: MOST, unit: "times", how },
  ];
}

const tapeClaim = (read: readonly Read[]): Claim => ({
  what: "A million lengths read from tape text",
  measured: read.at(-1)!.seconds,
  most: MOST_SECONDS,
  unit: "s",
  how: "ten ways to write a length, in turn",
});

interface Read {
  readonly text: string;
  readonly seconds: number;
  readonly sum: number;
}

const TEXTS = ["18' 6\"", "32' 6 1/2\"", "9.8 m", "75 mm", "6'-8\"", "12.5", "3 ft 4 in", "5′ 2½″", "40 cm", "9,8 m"];

function tape(): (Read & Readonly<Record<string, string | number>>)[] {
  const timed = (texts: readonly string[]) => {
    let total = 0;
    const start = performance.now();
    for (let read = 0; read < 1e6; read++) total += readTape(texts[read % texts.length]!, "ft");
    const ms = performance.now() - start;
    return { text: texts.length > 1 ? "all of them in turn" : texts[0]!, seconds: short(ms / 1000), sum: short(total) };
  };
  return [...TEXTS.map((text) => timed([text])), timed(TEXTS)];
}
