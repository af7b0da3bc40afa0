import { render } from "preact";
import { App } from "./App";
import { followTheme } from "./theme";

const root = document.getElementById("pane");
if (root) void start(root);

/** Waits for the host, so that no button is there before it can do its work. */
async function start(element: HTMLElement): Promise<void> {
  element.classList.add("bedrow");
  if (typeof Office === "undefined") {
    render(
      <p class="notice trouble" role="alert">
        The spreadsheet program did not answer. This page works inside it, as a pane; without it, open the practice
        workbook (practice.html).
      </p>,
      element,
    );
    return;
  }
  await Office.onReady();
  followTheme(element);
  render(<App />, element);
}
