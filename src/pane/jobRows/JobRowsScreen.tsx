import { useState } from "preact/hooks";
import { Select } from "../Select";
import { FitList } from "./FitList";
import { StartList } from "./StartList";

const actions = [
  { value: "fit", label: "A list of my own: fit to my columns" },
  { value: "start", label: "None yet: start a list" },
];

/** One bed a row: formulas for a list that is there, or a new list. */
export function JobRowsScreen() {
  const [action, setAction] = useState("fit");
  return (
    <>
      <header>
        <h1>Job rows</h1>
      </header>
      <p class="below">For sheets with one bed a row. Nothing is written before you have seen it.</p>
      <Select label="What you have" value={action} options={actions} onChoose={setAction} />
      {action === "fit" ? <FitList /> : <StartList />}
    </>
  );
}
