/** As many panes keep a bed of their own; what goes beyond shares the last place. */
const MOST_PLACES = 9;
/** A page that is loaded again may come up a moment before the one in front of it has let go of the first place. */
const TRIES = 4;
const PAUSE_MS = 100;

let taken = 1;

/** Under what this pane keeps its half-typed bed. */
export const draftKey = (): string => (taken === 1 ? "Bedrow.form" : `Bedrow.form ${taken}`);

/**
 * Takes the first place for a half-typed bed that no other open pane has, so that two panes never write over each
 * other's bed. The browser gives the place free when the pane closes, and the next pane finds the bed there. Where the
 * browser cannot tell of other panes, all have the first place.
 */
export async function takeDraftPlace(): Promise<void> {
  for (let tries = 0; tries < TRIES; tries += 1) {
    taken = 1;
    if (await isOurs(draftKey())) return;
    await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
  }
  for (taken = 2; taken < MOST_PLACES; taken += 1) if (await isOurs(draftKey())) return;
}

function isOurs(name: string): Promise<boolean> {
  return new Promise((resolve) => {
    // Held as long as the page is there: what is given back never comes to an end.
    const hold = (lock: Lock | null) => {
      resolve(lock !== null);
      return lock && new Promise<never>(() => undefined);
    };
    try {
      // A refusal says nothing of other panes.
      navigator.locks.request(name, { ifAvailable: true }, hold).catch(() => resolve(true));
    } catch {
      resolve(true);
    }
  });
}
