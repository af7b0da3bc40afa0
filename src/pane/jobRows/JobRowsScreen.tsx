import { useState } from "preact/hooks";
import { Select } from "../Select";
import { FitList } from "./FitList";
import { StartList } from "./StartList";

const deeds = [
  { value: "fit", label: "A list of my own: fit to my columns" },
  { value: "start", label: "None yet: start a list" },
];

/** One bed a row: formulas for a list that is there, or a new list. */
export function JobRowsScreen() {
  const [deed, setDeed] = useState("fit");
  return (
    <>
      <header>
        <h1>Job rows</h1>
      </header>
      <p class="below">For sheets with one bed a row. Nothing is written before you have seen it.</p>
      <Select label="What you have" value={deed} options={deeds} onChoose={setDeed} />
      {deed === "fit" ? <FitList /> : <StartList />}
    </>
  );
}
