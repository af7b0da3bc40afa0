import { element } from "./element";

/** Something to tell a person, with a list where there are several things. */
export interface Said {
  readonly title: string;
  readonly text?: string;
  readonly lines?: readonly string[];
}

/** Says something in the bar, without being in the way. */
export function sayInBar(words: string): void {
  element("practice-note").textContent = words;
}

/** Says something that a person must have read before going on. */
export function sayInFront(said: Said): void {
  const dialog = element("practice-said") as HTMLDialogElement;
  fill(dialog, said);
  dialog.showModal();
}

/** Puts words into a dialog's heading, paragraph and list. */
export function fill(dialog: HTMLElement, { title, text = "", lines = [] }: Said): void {
  const part = (selector: string) => dialog.querySelector<HTMLElement>(selector);
  const [heading, paragraph, list] = [part("h2"), part("[data-part=text]"), part("ul")];
  if (heading) heading.textContent = title;
  if (paragraph) {
    paragraph.textContent = text;
    paragraph.hidden = text === "";
  }
  if (!list) return;
  list.replaceChildren(
    ...lines.map((line) => {
      const item = document.createElement("li");
      item.textContent = line;
      return item;
    }),
  );
  list.hidden = lines.length === 0;
}

/** Shows a dialog with buttons; gives the value of the one that closes it. @param otherwise where Escape does. */
export async function answered(dialog: HTMLDialogElement, otherwise: string): Promise<string> {
  dialog.returnValue = otherwise;
  dialog.showModal();
  await new Promise((resolve) => dialog.addEventListener("close", resolve, { once: true }));
  return dialog.returnValue;
}
