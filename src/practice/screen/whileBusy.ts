import { inSlices, type Steps } from "../../xlsx/steps";
import { element } from "./element";

/** Work that takes longer than this, in milliseconds, shows how far it is. */
const patience = 500;

/**
 * Does a piece of work that may take a while: it then shows how far it is, and a person can cancel it.
 *
 * @param title what is being done.
 * @throws Canceled where the person did.
 */
export async function whileBusy<T>(title: string, steps: Steps<T>): Promise<T> {
  const dialog = element("practice-busy") as HTMLDialogElement;
  const bar = element("practice-busy-progress") as HTMLProgressElement;
  const cancel = new AbortController();
  element("practice-busy-title").textContent = title;
  bar.value = 0;
  const late = setTimeout(() => dialog.showModal(), patience);
  // Escape closes the dialog as its button does.
  const onClose = () => cancel.abort();
  dialog.addEventListener("close", onClose);
  try {
    return await inSlices(
      steps,
      (share) => {
        bar.value = share;
      },
      cancel.signal,
    );
  } finally {
    clearTimeout(late);
    dialog.removeEventListener("close", onClose);
    dialog.close();
  }
}
