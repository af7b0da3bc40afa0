import { element } from "./element";

/**
 * Lets a person throw away what was typed and have the invented office back; asks first.
 *
 * @param forget Throws away what is kept.
 */
export function offerStartAfresh(forget: () => Promise<unknown>): void {
  const ask = element("practice-afresh-ask") as HTMLDialogElement;
  element("practice-afresh").addEventListener("click", () => {
    ask.returnValue = "keep";
    ask.showModal();
  });
  ask.addEventListener("close", () => {
    if (ask.returnValue === "afresh") void forget().then(() => location.reload());
  });
}
