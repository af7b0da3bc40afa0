import { element } from "./element";

/** A reason why the page does not come up, in words for the person. */
export class LoadingTrouble extends Error {}

/** What the page says while the grid is on its way, and where it does not arrive. */
export class LoadingNote {
  /** Says what is being done just now. */
  step(words: string): void {
    element("practice-step").textContent = words;
  }

  done(): void {
    element("practice-loading").hidden = true;
  }

  readonly fail = (error: unknown): void => {
    const reason = error instanceof Error ? error.message : String(error);
    const title = element("practice-loading").querySelector("strong");
    if (title) title.textContent = "The practice workbook didn't start.";
    this.step(error instanceof LoadingTrouble ? reason : `Reload the page to try again. (${reason})`);
    element("practice-progress").hidden = true;
  };
}
