import { Button } from "../Button";
import type { StoreTrouble } from "./stored";
import type { Unkept } from "./useStored";

const GOES = "What you type now will be lost when the pane closes. What you insert stays in the workbook.";

const WORDS: Readonly<Record<StoreTrouble, string>> = {
  off: `This browser can't save what you type: its storage is full or turned off. ${GOES}`,
  later: `A newer version of this add-in saved what was typed here before. It wasn't changed. Use that version to continue. ${GOES}`,
  damaged: `What was typed here before is damaged and can't be read. It wasn't changed. ${GOES}`,
};

/** Says that what is typed is not kept, and why. */
export function UnkeptNote({ unkept }: { readonly unkept: Unkept }) {
  return (
    <div role="status" class="notice">
      {unkept && (
        <>
          <p>{WORDS[unkept.trouble]}</p>
          {unkept.trouble === "damaged" && (
            <p class="row">
              <Button onPress={unkept.startOver}>Discard the old one and save this</Button>
            </p>
          )}
        </>
      )}
    </div>
  );
}
