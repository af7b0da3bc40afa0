import { showTrouble } from "./trouble";

/** Fetches the add-in's pane, which shows itself once the host is up. */
export function fetchPane(): void {
  const script = document.createElement("script");
  script.src = "pane.js";
  script.addEventListener("error", () => {
    showTrouble("pane", "The pane couldn't be loaded. Check your connection, then reload the page.");
  });
  document.head.append(script);
}
