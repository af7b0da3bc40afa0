import type { CallFunction } from "./book";
import { collect, type Seen, type Unchecked, uncheckedOf } from "./collect";
import type { Scope, WorkbookFacts } from "./facts";
import type { Finding } from "./finding";
import type { Knowledge } from "./knowledge";
import { rules as allRules } from "./rules";
import type { Rule } from "./rules/rule";
import { Study } from "./study";

export interface ReviewOptions {
  /** What is asked about; the whole workbook where left out. */
  readonly scope?: Scope;
  /**
   * Works out a function of ours from values, so that a finding can say what a formula would give and why one
   * fails; without it the finding says less.
   */
  readonly call?: CallFunction;
  readonly rules?: readonly Rule[];
}

/** How far a check has come. */
export interface Progress {
  /** 0 to 1. */
  readonly done: number;
  /** What is being done, for the person who waits. */
  readonly what: string;
}

export interface Review {
  /** The costliest first. */
  readonly findings: readonly Finding[];
  readonly unchecked: readonly Unchecked[];
  readonly sheets: number;
  readonly formulas: number;
}

/** Reading and comparing takes about as long as all rules together. */
const READING = 0.5;

/**
 * Checks a workbook in slices, so that whoever runs it can show progress, let the screen breathe, and stop.
 *
 * @param facts what was read of the workbook.
 * @param knowledge what is known of the functions, and the tables of stone and soil.
 * @returns a generator: each step is a slice of some milliseconds, the end is the review.
 */
export function* review(
  facts: WorkbookFacts,
  knowledge: Knowledge,
  options: ReviewOptions = {},
): Generator<Progress, Review> {
  const { scope = { kind: "workbook" }, call, rules = allRules } = options;
  const studying = Study.of(facts, knowledge, call);
  let step = studying.next();
  while (!step.done) {
    yield { done: step.value * READING, what: "Reading formulas" };
    step = studying.next();
  }
  const study = step.value;
  const seen: Seen[] = [];
  for (const [index, rule] of rules.entries()) {
    const done = READING + ((1 - READING) * index) / rules.length;
    yield { done, what: rule.title };
    for (const observation of rule.look(study)) {
      if (observation) seen.push({ rule, observation });
      else yield { done, what: rule.title };
    }
  }
  return {
    findings: collect(study, seen, scope),
    unchecked: uncheckedOf(study, scope),
    sheets: study.book.grids.filter((grid) => study.isChecked(grid.index)).length,
    formulas: study.readers.runs.reduce((sum, { from, to }) => sum + to - from + 1, 0),
  };
}

/** Checks a workbook in one go, for small ones and for tests. */
export function reviewAtOnce(facts: WorkbookFacts, knowledge: Knowledge, options?: ReviewOptions): Review {
  const steps = review(facts, knowledge, options);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

export interface RunOptions {
  readonly onProgress?: (progress: Progress) => void;
  /** Stops the check; what was found until then is not given, since it would look like all there is. */
  readonly signal?: AbortSignal;
  /** Lets the screen breathe; a turn of the event loop where left out. */
  readonly pause?: () => Promise<void>;
  /** How long to work between two pauses, in milliseconds. */
  readonly sliceMs?: number;
}

/** Long enough to get on, short enough that typing does not stutter. */
const USUAL_SLICE_MS = 25;

/**
 * Runs a check, or anything else in slices, to its end.
 *
 * @param steps such as {@link review} gives.
 * @returns undefined where it was stopped.
 */
export async function runInSlices(
  steps: Generator<Progress, Review>,
  options: RunOptions = {},
): Promise<Review | undefined> {
  const { onProgress, signal, pause = turn, sliceMs = USUAL_SLICE_MS } = options;
  let since = performance.now();
  for (;;) {
    if (signal?.aborted) return undefined;
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() - since < sliceMs) continue;
    onProgress?.(step.value);
    await pause();
    since = performance.now();
  }
}

const turn = () => new Promise<void>((resolve) => setTimeout(resolve));
