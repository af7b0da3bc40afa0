import { useEffect, useState } from "preact/hooks";
import { WorkbookFailure } from "../../workbook/failure";
import type { FoundRates } from "../../workbook/read/rates";
import { watchSheets } from "../../workbook/watchSheets";

/** What the pane knows of the office's rates; undefined until it has looked, `found` absent where there are none. */
export type KnownRates = { readonly found?: FoundRates } | undefined;

/** Several cells change at once when someone pastes; they are read once. */
const PAUSE_MS = 200;

let known: KnownRates;
let watching: { readonly sheets: string; readonly stop: () => Promise<void> } | undefined;
const listeners = new Set<(rates: KnownRates) => void>();

/**
 * Reads the rates again: two syncs. All screens that show them follow.
 *
 * @returns whether they are other than they were known to be.
 */
export function refreshRates(): Promise<boolean> {
  const next = last.then(read);
  last = next.catch(() => false);
  return next;
}

/** One reading after another, so that each compares with what the one before it found. */
let last: Promise<unknown> = Promise.resolve();

async function read(): Promise<boolean> {
  const { readRates } = await import(/* webpackChunkName: "below" */ "../../workbook/read/rates");
  const found = await readRates();
  const before = known;
  if (before && JSON.stringify(found) === JSON.stringify(before.found)) return false;
  known = found ? { found } : {};
  for (const tell of listeners) tell(known);
  await follow(found?.sheets ?? []);
  return before !== undefined && JSON.stringify(found?.rates) !== JSON.stringify(before.found?.rates);
}

/** Before anything is written: what was shown is what is written, so rates that have changed since stop it. */
export async function stopIfRatesChanged(): Promise<void> {
  if (await refreshRates())
    throw new WorkbookFailure("The rates just changed, so nothing was written. Check the preview, then try again.");
}

/** The rates, read once and again whenever a cell of their sheet changes. */
export function useRates(): KnownRates {
  const [rates, setRates] = useState(known);
  useEffect(() => {
    listeners.add(setRates);
    // A workbook that cannot be read now is read before anything is written.
    if (known === undefined) refreshRates().catch(() => undefined);
    else setRates(known);
    return () => void listeners.delete(setRates);
  }, []);
  return rates;
}

let pause: ReturnType<typeof setTimeout> | undefined;

function refreshSoon(): void {
  clearTimeout(pause);
  pause = setTimeout(() => refreshRates().catch(() => undefined), PAUSE_MS);
}

/** Watches the sheets on which the rates stand now. Where the host tells of no changes, an insert reads them anyway. */
async function follow(sheets: readonly string[]): Promise<void> {
  const names = JSON.stringify(sheets);
  if (watching?.sheets === names) return;
  const before = watching;
  watching = undefined;
  await before?.stop().catch(() => undefined);
  if (sheets.length === 0) return;
  const stop = await watchSheets(sheets, refreshSoon).catch(() => undefined);
  if (stop) watching = { sheets: names, stop };
}
