import type { ComponentChildren, Ref } from "preact";

interface ButtonProps {
  readonly children: ComponentChildren;
  readonly onPress: () => void;
  /** The one that the screen is for. */
  readonly main?: boolean | undefined;
  /** Nothing can be done with it now. */
  readonly off?: boolean | undefined;
  /** What it does, where its own words are too few without what stands around it. */
  readonly label?: string | undefined;
  readonly title?: string | undefined;
  readonly at?: Ref<HTMLButtonElement> | undefined;
}

/**
 * A button. One that is off stays in its place and only does nothing: a disabled one would lose the keyboard's place
 * at the very moment it was pressed, and could not be found to be read.
 */
export function Button({ children, onPress, main = false, off = false, label, title, at }: ButtonProps) {
  return (
    <button
      type="button"
      class={main ? "main" : undefined}
      aria-disabled={off || undefined}
      aria-label={label}
      title={title}
      {...(at && { ref: at })}
      onClick={() => off || onPress()}
    >
      {children}
    </button>
  );
}
