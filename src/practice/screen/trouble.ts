import { element } from "./element";

/** Says in the bar what is wrong without being in the way; nothing takes it off again. */
export function showTrouble(words: string | undefined): void {
  const line = element("practice-trouble");
  line.hidden = words === undefined;
  line.textContent = words ?? "";
}
