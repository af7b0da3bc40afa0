import { element } from "./element";

/**
 * Says in the bar what is wrong, without being in the way. Each kind has a line of its own: what is said of one neither
 * hides nor takes off what is said of the other.
 *
 * @param words left out where that is no longer wrong.
 */
export function showTrouble(about: "work" | "pane", words = ""): void {
  element(`practice-${about}-trouble`).textContent = words;
}
