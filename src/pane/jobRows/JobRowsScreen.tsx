import { useState } from "preact/hooks";
import { Select } from "../Select";
import { FitList } from "./FitList";
import { StartList } from "./StartList";

const actions = [
  { value: "fit", label: "My own list: use my columns" },
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
      <p class="below">For sheets with one bed per row. You'll see a preview before anything is written.</p>
      <Select label="What you have" value={action} options={actions} onChoose={setAction} />
      {action === "fit" ? <FitList /> : <StartList />}
    </>
  );
}
