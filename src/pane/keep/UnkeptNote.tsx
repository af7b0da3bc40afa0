import { Button } from "../Button";
import type { StoreTrouble } from "./stored";
import type { Unkept } from "./useStored";

const GOES = "What you type now will be gone when the pane closes; what you insert stays in the workbook.";

const WORDS: Readonly<Record<StoreTrouble, string>> = {
  off: `This browser does not keep what you type: its storage is full or switched off. ${GOES}`,
  later: `A later version of this add-in has kept here what was typed before. It was left alone; use that version to go on with it. ${GOES}`,
  damaged: `What was typed here before is damaged and cannot be read. It was left alone. ${GOES}`,
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
              <Button onPress={unkept.startOver}>Throw the old away and keep this</Button>
            </p>
          )}
        </>
      )}
    </div>
  );
}
