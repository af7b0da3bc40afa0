/** A page that is loaded again may come up a moment before the one in front of it has let go. */
const TRIES = 10;
const PAUSE_MS = 100;
const NAME = "practice-workbook";

/**
 * Whether no other tab has the practice workbook open. The tab that asked first has it until it closes: two that keep
 * the whole work would write over each other. Where the browser cannot tell of other tabs, each is taken for the only one.
 */
export async function isOnlyTab(): Promise<boolean> {
  for (let tries = 0; tries < TRIES; tries += 1) {
    if (await isOurs()) return true;
    await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
  }
  return false;
}

function isOurs(): Promise<boolean> {
  return new Promise((resolve) => {
    // Held as long as the page is there: what is given back never comes to an end.
    const hold = (lock: Lock | null) => {
      resolve(lock !== null);
      return lock && new Promise<never>(() => undefined);
    };
    try {
      // A refusal says nothing of other tabs.
      navigator.locks.request(NAME, { ifAvailable: true }, hold).catch(() => resolve(true));
    } catch {
      resolve(true);
    }
  });
}
