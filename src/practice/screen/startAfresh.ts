import { element } from "./element";
import { answered, sayInFront } from "./say";

/**
 * Lets a person throw away what was typed and have the invented office back; asks first.
 *
 * @param forget Throws away what is kept; gives why not, where it may not.
 */
export function offerStartAfresh(forget: () => Promise<string | undefined>): void {
  const ask = element("practice-afresh-ask") as HTMLDialogElement;
  const button = element("practice-afresh") as HTMLButtonElement;
  button.addEventListener("click", async () => {
    if ((await answered(ask, "keep")) === "afresh") await startAfresh(forget);
  });
  button.disabled = false;
}

async function startAfresh(forget: () => Promise<string | undefined>): Promise<void> {
  const refusal = await forget();
  if (refusal === undefined) location.reload();
  else sayInFront({ title: "Keep my work", text: refusal });
}
