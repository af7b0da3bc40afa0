import type { ComponentChildren } from "preact";
import { useLayoutEffect, useRef } from "preact/hooks";

interface GroupProps {
  readonly heading: string;
  /** What in it was changed from the usual, said beside the heading. */
  readonly changed?: string;
  /** Opens the group when it becomes true. Closing is left to the person who opened it. */
  readonly opens: boolean;
  readonly children: ComponentChildren;
}

/** A folded part of a screen that opens when something in it needs attention, and then stays open. */
export function Group({ heading, changed, opens, children }: GroupProps) {
  const details = useRef<HTMLDetailsElement>(null);
  useLayoutEffect(() => {
    if (opens && details.current) details.current.open = true;
  }, [opens]);
  return (
    <details ref={details}>
      <summary>
        {heading}
        {changed && <span class="below"> {changed}</span>}
      </summary>
      {children}
    </details>
  );
}
