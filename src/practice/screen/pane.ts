import { element } from "./element";

/** Lets a person fold the pane away where the window is too narrow for it and the sheet side by side. */
export function foldPane(): void {
  const toggle = element("practice-pane-toggle");
  const show = (shown: boolean) => {
    document.body.classList.toggle("pane-folded", !shown);
    toggle.setAttribute("aria-expanded", String(shown));
    toggle.textContent = shown ? "Hide pane" : "Show pane";
  };
  toggle.addEventListener("click", () => show(toggle.getAttribute("aria-expanded") !== "true"));
  show(!matchMedia("(max-width: 800px)").matches);
}
