import type { FirstBed } from "../../sheets/jobRows/newList";
import { cellAddress } from "../../spreadsheet/areas";
import { Button } from "../Button";
import { readsAs, TextField } from "../Field";
import { InTheWayNotice } from "../InTheWayNotice";
import { StatusMessage } from "../StatusMessage";
import { AssumedFields } from "./AssumedFields";
import { ResultPicker } from "./ResultPicker";
import { useStart } from "./useStart";

const EVERY_FIELD = ["depth", "stone", "waste", "border"] as const;

const NEW_SHEET = { kind: "new sheet", name: "Beds" } as const;

/** A heading row and the first bed below it, to be copied down. */
export function StartList() {
  const start = useStart();
  const { first, wanted, preview, status, isWorking, inTheWay, sizeProblems } = start;
  const type = (change: Partial<FirstBed>) => start.setFirst({ ...first, ...change });
  // A depth that isn't typed yet is asked for below, not refused.
  const { depth: _, ...others } = start.problems;
  const isDepthBlank = start.texts.depth.trim() === "";
  const isReady =
    sizeProblems.length === undefined && sizeProblems.width === undefined && Object.keys(start.problems).length === 0;
  return (
    <>
      <fieldset>
        <legend>The first bed</legend>
        <div class="pairs">
          <TextField label="Job" value={first.job} onType={(job) => type({ job })} />
          <TextField label="Bed" value={first.bed} onType={(bed) => type({ bed })} />
          {(["length", "width"] as const).map((side) => (
            <TextField
              key={side}
              label={side === "length" ? "Length" : "Width"}
              unit="ft"
              value={first[side]}
              placeholder={`such as 18' 6"`}
              note={readsAs(first[side], "ft")}
              problem={sizeProblems[side] || undefined}
              onType={(text) => type({ [side]: text })}
            />
          ))}
        </div>
      </fieldset>
      <AssumedFields
        fields={EVERY_FIELD}
        texts={start.texts}
        problems={isDepthBlank ? others : start.problems}
        onChange={start.setTexts}
      />
      <fieldset class="edged">
        <legend>Also a column for what differs by bed</legend>
        {start.more.map(({ label, isOn, toggle }) => (
          <label key={label} class="tick">
            <input type="checkbox" checked={isOn} onChange={toggle} />
            {label}
          </label>
        ))}
      </fieldset>
      <ResultPicker
        chosen={start.results}
        existing={new Map()}
        inputs={start.inputs}
        added={wanted.results.filter(({ isAdded }) => isAdded).map(({ role }) => role)}
        onChange={start.setResults}
      />
      {wanted.troubles.length > 0 && (
        <ul class="notice trouble lines">
          {wanted.troubles.map((trouble) => (
            <li key={trouble}>{trouble}</li>
          ))}
        </ul>
      )}
      <details>
        <summary>Preview ({preview.columns} columns, 2 rows)</summary>
        <p class="below">Shown as if inserted at A1.</p>
        <ul class="lines">
          {preview.formulas[0]?.map((heading, column) => (
            <li key={String(heading)}>
              {heading}:{" "}
              <code>
                {cellAddress({ row: 1, column })}{" "}
                {String(preview.formulas[1]?.[column] ?? "").replace(/^'/, "") || "blank"}
              </code>
            </li>
          ))}
        </ul>
      </details>
      {!isReady && <p class="below">Type the first bed's length and width, and the stone depth, to insert the list.</p>}
      <div class="insert-bar">
        {inTheWay ? (
          <InTheWayNotice
            inTheWay={inTheWay}
            what="list"
            onPlace={(place) => void start.write(place.kind === "cell" ? place : NEW_SHEET)}
            onCancel={start.cancel}
          />
        ) : (
          <p class="row">
            <Button main off={isWorking || !isReady} onPress={() => void start.write({ kind: "selection" })}>
              Insert at the selected cell
            </Button>
            <Button off={isWorking || !isReady} onPress={() => void start.write(NEW_SHEET)}>
              On a new sheet
            </Button>
            <Button off={isWorking || !start.canUndo} title={start.canUndo} onPress={() => void start.undo()}>
              Undo
            </Button>
          </p>
        )}
        <StatusMessage status={status} />
      </div>
    </>
  );
}
