import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";

/** The heading of a part that takes another's place: the keyboard goes on from it, and it is read out. */
export function PanelHeading({ id, children }: { readonly id: string; readonly children: ComponentChildren }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <h2 id={id} tabIndex={-1} ref={heading}>
      {children}
    </h2>
  );
}
