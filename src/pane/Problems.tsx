import type { FormProblem } from "../quantities/bed/read";
import { useSettled } from "./useSettled";

/** What is in the way of inserting; each field says its own at once, this says all of them once there is a pause. */
export function Problems({ problems }: { readonly problems: readonly FormProblem[] }) {
  const lines = useSettled(problems.map(({ message }) => message).join("\n"));
  const shows = problems.length > 0 && lines !== "";
  return (
    <div role="alert" class="notice trouble">
      {shows && (
        <>
          <p>Before this can be inserted:</p>
          <ul>
            {lines.split("\n").map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
