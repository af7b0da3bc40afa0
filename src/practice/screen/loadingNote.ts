import { element } from "./element";

/** A reason why the page does not come up, in words for the person. */
export class LoadingTrouble extends Error {}

/** What a person is asked before anything is opened; an answer for each button. */
export interface Question<Answer extends string> {
  readonly title: string;
  readonly text: string;
  readonly choices: Readonly<Record<Answer, string>>;
}

/** What the page says while the grid is on its way, and where it does not arrive. */
export class LoadingNote {
  /** Says what is being done just now. */
  step(words: string): void {
    element("practice-step").textContent = words;
  }

  /** Asks, and goes on with what was said before once there is an answer. */
  async ask<Answer extends string>({ title, text, choices }: Question<Answer>): Promise<Answer> {
    const [heading, step, progress, place] = ["title", "step", "progress", "choices"].map((id) =>
      element(`practice-${id}`),
    ) as [HTMLElement, HTMLElement, HTMLElement, HTMLElement];
    const before = [heading.textContent, step.textContent] as const;
    [heading.textContent, step.textContent] = [title, text];
    progress.hidden = true;
    const answer = await new Promise<Answer>((resolve) => {
      const buttons = (Object.entries(choices) as [Answer, string][]).map(([key, label]) => {
        const button = document.createElement("button");
        button.type = "button";
        button.textContent = label;
        button.addEventListener("click", () => resolve(key));
        return button;
      });
      place.replaceChildren(...buttons);
      buttons[0]?.focus();
    });
    place.replaceChildren();
    progress.hidden = false;
    [heading.textContent, step.textContent] = before;
    return answer;
  }

  done(): void {
    element("practice-loading").hidden = true;
  }

  readonly fail = (error: unknown): void => {
    const reason = error instanceof Error ? error.message : String(error);
    element("practice-title").textContent = "The practice workbook didn't start.";
    this.step(error instanceof LoadingTrouble ? reason : `Reload the page to try again. (${reason})`);
    element("practice-progress").hidden = true;
  };
}
