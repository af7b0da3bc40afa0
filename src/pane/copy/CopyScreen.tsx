import type { CopyMode } from "../../sheets/plain/toPlain";
import { Select } from "../Select";
import { useCopy } from "./useCopy";

const modes = [
  { value: "formulas", label: "Ordinary formulas, which go on working" },
  { value: "values only", label: "Values only" },
];

/** A copy of the sheet for people who do not have the add-in. */
export function CopyScreen() {
  const { mode, setMode, working, made, trouble, make } = useCopy();
  return (
    <>
      <header>
        <h1>A copy for others</h1>
      </header>
      <p class="below">
        Copies the sheet in front to a new one that works without this add-in: its functions become ordinary arithmetic,
        taped lengths become decimal numbers. The original stays as it is.
      </p>
      <Select label="What to make" value={mode} options={modes} onChoose={(value) => setMode(value as CopyMode)} />
      <p class="row">
        <button type="button" class="main" disabled={working} onClick={() => void make()}>
          Copy this sheet
        </button>
      </p>
      <p role="status" class={trouble ? "notice trouble" : "notice"} hidden={!working && !made && !trouble}>
        {working && "Copying the sheet…"}
        {trouble}
        {made && `The copy stands on ${made.sheetName}.`}
      </p>
      {made && made.copy.converted.length > 0 && (
        <p>
          Formulas made ordinary: {made.copy.converted.length}. Taped lengths made numbers: {made.copy.replaced.length}.
        </p>
      )}
      {made && made.copy.leftAsValues.length > 0 && (
        <section aria-labelledby="left-heading">
          <h2 id="left-heading">Left as values, which no longer follow changes</h2>
          <ul>
            {made.copy.leftAsValues.map(({ from, reason }) => (
              <li key={from}>
                {from}: {reason}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
