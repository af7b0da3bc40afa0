import type { Ref } from "preact";
import type { Word } from "./useWord";

/** What a screen says about its last deed, announced to those who do not see it. */
export function Said({ word, at }: { readonly word: Word | undefined; readonly at?: Ref<HTMLParagraphElement> }) {
  return (
    <p
      role="status"
      {...(at && { ref: at })}
      class={word?.kind === "trouble" ? "notice trouble" : "notice"}
      hidden={!word}
    >
      {word?.text}
    </p>
  );
}
