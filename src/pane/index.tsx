import { render } from "preact";
import { App } from "./App";
import { takeDraftPlace } from "./draftPlace";
import { keepFocus } from "./keepFocus";
import { followTheme } from "./theme";

const root = document.getElementById("pane");
if (root) void start(root);

/** Waits for the host, so that no button is there before it can do its work. */
async function start(element: HTMLElement): Promise<void> {
  element.classList.add("bedrow");
  const host = typeof Office === "undefined" ? undefined : (await Office.onReady()).host;
  if (host === undefined || host !== Office.HostType.Excel) {
    render(
      <p class="notice trouble" role="alert">
        The spreadsheet program didn't answer. This page works as a pane inside it. Without one, open the practice
        workbook (practice.html).
      </p>,
      element,
    );
    return;
  }
  followTheme();
  await takeDraftPlace();
  keepFocus(element);
  render(<App />, element);
  // A mark for whoever measures, once the screen has been drawn.
  requestAnimationFrame(() => performance.mark("Bedrow pane usable"));
}
