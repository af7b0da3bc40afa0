/** A page that is loaded again may come up a moment before the one in front of it has let go. */
const TRIES = 10;
const PAUSE_MS = 100;
/** How long another tab gets to save its last change before it's taken for one that hangs. */
const HAND_OVER_MS = 3000;
const NAME = "practice-workbook";

/**
 * Which of a browser's tabs saves the work: the one that opened first, until it closes or another takes over. Two that
 * save the whole work would overwrite each other. Where the browser can't tell of other tabs, each is taken for the
 * only one.
 */
export class KeepingTab {
  private release: () => void = () => undefined;
  private saveLast: (() => Promise<void>) | undefined;
  private isLost = false;
  private channel: BroadcastChannel | undefined;

  /** Whether no other tab has the work; this one has it from then on. */
  async isOnlyOne(): Promise<boolean> {
    for (let tries = 0; tries < TRIES; tries += 1) {
      if (await this.hold({ ifAvailable: true })) return true;
      await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
    }
    return false;
  }

  /** Has the other tab save its last change and stop, and takes its place; one that hangs isn't waited for. */
  async takeOver(): Promise<void> {
    this.ask();
    if (!(await this.hold({ signal: AbortSignal.timeout(HAND_OVER_MS) }))) await this.hold({ steal: true });
  }

  /** @param saveLast saves the last change and stops saving, since another tab takes over; done at once where it has. */
  onLost(saveLast: () => Promise<void>): void {
    this.saveLast = saveLast;
    if (this.isLost) void saveLast();
  }

  private hold(how: LockOptions): Promise<boolean> {
    return new Promise((resolve) => {
      let isHeld = false;
      // Held until it's let go, or for as long as the page is there.
      const held = (lock: Lock | null) => {
        isHeld = lock !== null;
        if (isHeld) this.listen();
        resolve(isHeld);
        return lock && new Promise<void>((release) => (this.release = release));
      };
      const refused = (reason: unknown) => {
        if (isHeld) void this.lose();
        // Any other refusal says nothing of other tabs.
        else resolve(!(reason instanceof Error && reason.name === "TimeoutError"));
      };
      try {
        navigator.locks.request(NAME, how, held).catch(refused);
      } catch {
        resolve(true);
      }
    });
  }

  private ask(): void {
    this.channel ??= new BroadcastChannel(NAME);
    this.channel.postMessage("take over");
  }

  private listen(): void {
    this.channel ??= new BroadcastChannel(NAME);
    this.channel.onmessage = () => void this.lose();
  }

  private async lose(): Promise<void> {
    if (this.isLost) return;
    this.isLost = true;
    // Work that can't be saved is said where it's tried; the other tab waits for no more.
    await this.saveLast?.().catch(() => undefined);
    this.release();
  }
}
