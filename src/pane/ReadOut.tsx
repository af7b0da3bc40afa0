import { useSettled } from "./useSettled";

/** Reads out what changes on the screen while something is typed, once there is a pause. */
export function ReadOut({ text }: { readonly text: string }) {
  return (
    <p role="status" class="read-out">
      {useSettled(text)}
    </p>
  );
}
