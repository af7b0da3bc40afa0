import type { Injector } from "@univerjs/core";
import { core, sheets } from "./gridPackages";

const editors = [core.DOCS_NORMAL_EDITOR_UNIT_ID_KEY, core.DOCS_FORMULA_BAR_EDITOR_UNIT_ID_KEY];

/**
 * Closes the list of functions as soon as a person types on. The grid itself leaves a list open for a moment after
 * each key, in which Enter would put the function on top of it in the place of the one that was typed: =SU, a pause,
 * then M(1,2) and Enter gave =SUBTOTAL(1,2). On a busy machine the list may also come late, after what was typed on;
 * so Enter and Tab close it, too, unless what they follow can be the end of a name.
 */
export function closeStaleSuggestions(injector: Injector): void {
  const commands = injector.get(core.ICommandService);
  let typed = "";
  const close = ({ key }: KeyboardEvent) => {
    const types = key.length === 1 || key === "Backspace" || key === "Delete";
    if (types) typed = key;
    else if ((key !== "Enter" && key !== "Tab") || /[\w.]/.test(typed)) return;
    for (const editor of editors) {
      const list = `sheet.formula-embedding-editor.search_function.${editor}`;
      if (commands.hasCommand(list)) commands.syncExecuteCommand(list, { keyCode: sheets.KeyCode.ESC });
    }
  };
  document.addEventListener("keydown", close, { capture: true });
}
