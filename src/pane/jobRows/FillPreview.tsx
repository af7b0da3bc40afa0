import { useState } from "preact/hooks";
import type { FilledColumn, Filling } from "../../sheets/jobRows/fill";
import type { ListRow } from "../../sheets/jobRows/listRows";
import type { ResultRole } from "../../sheets/jobRows/roles";
import { columnLetters } from "../../spreadsheet/areas";
import { resultShown, type TriedRow } from "./tryOut";

interface FillPreviewProps {
  /** What the formulas give, row by row. */
  readonly tried: readonly TriedRow[];
  readonly filling: Filling;
  readonly replace: ReadonlySet<ResultRole>;
  readonly onReplace: (role: ResultRole, replaces: boolean) => void;
}

/** Preview, before anything is: formulas, rows, and every filled cell that would change. */
export function FillPreview({ tried, filling, replace, onReplace }: FillPreviewProps) {
  const { columns, beds, skipped, troubles, assumes } = filling;
  const without = tried.filter(({ problem }) => problem !== undefined);
  return (
    <section aria-labelledby="fill-heading">
      <h2 id="fill-heading">Preview</h2>
      {troubles.length > 0 && (
        <ul class="notice trouble lines">
          {troubles.map((trouble) => (
            <li key={trouble}>{trouble}</li>
          ))}
        </ul>
      )}
      <p>
        {beds.length === 0
          ? "No row has enough to go on."
          : `${beds.length.toLocaleString("en-US")} ${beds.length === 1 ? "bed" : "beds"}, rows ${rowsInWords(beds)}.`}
      </p>
      <FirstResults tried={tried} />
      {without.length > 0 && (
        <div class="notice trouble">
          <p>No result in {without.length === 1 ? "one row" : `${without.length.toLocaleString("en-US")} rows`}:</p>
          <ul class="lines">
            {byReason(without.map(({ row, problem }) => ({ row, why: problem ?? "" }))).map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </div>
      )}
      {columns.map((column) => (
        <FilledPart key={column.role} column={column} replaces={replace.has(column.role)} onReplace={onReplace} />
      ))}
      {skipped.length > 0 && (
        <details open={skipped.some(({ kind }) => kind === "short")}>
          <summary>Skipped rows ({skipped.length.toLocaleString("en-US")})</summary>
          <ul class="lines">
            {byReason(skipped).map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </details>
      )}
      {assumes.length > 0 && (
        <details open>
          <summary>Assumptions</summary>
          <ul class="lines">
            {assumes.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

type RowWhy = Pick<ListRow, "row" | "why">;

const FIRST_ROWS = 5;

/** What comes out in the first rows, before anything is written. */
function FirstResults({ tried }: Pick<FillPreviewProps, "tried">) {
  const first = tried.slice(0, FIRST_ROWS);
  const columns = first[0]?.results ?? [];
  if (columns.length === 0) return null;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <section class="sample" tabIndex={0} aria-label="Results of the first rows">
      <table>
        <thead>
          <tr>
            <th scope="col">Row</th>
            {columns.map(({ column, heading }) => (
              <th key={column} scope="col">
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {first.map(({ row, results }) => (
            <tr key={row}>
              <th scope="row">{row + 1}</th>
              {results.map(({ column, value }) => (
                <td key={column}>{resultShown(value)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

interface FilledPartProps {
  readonly column: FilledColumn;
  readonly replaces: boolean;
  readonly onReplace: FillPreviewProps["onReplace"];
}

function FilledPart({ column, replaces, onReplace }: FilledPartProps) {
  const { role, heading, first, written, same, clashes, isNew } = column;
  return (
    <div class="kept">
      <strong>
        {columnLetters(column.column)} {heading}
      </strong>
      {isNew ? " (new)" : ""}: {amountInWords(written, same)}
      <details>
        <summary>Formula</summary>
        <div>
          <code>
            {first.address} {first.formula}
          </code>
        </div>
        <span class="below">{first.reads.length > 0 ? `reads ${first.reads.join(", ")}` : ""}</span>
      </details>
      {clashes.length > 0 && <Clashes column={column} replaces={replaces} onReplace={(on) => onReplace(role, on)} />}
    </div>
  );
}

function Clashes({
  column,
  replaces,
  onReplace,
}: {
  readonly column: FilledColumn;
  readonly replaces: boolean;
  readonly onReplace: (on: boolean) => void;
}) {
  const [isOpen, setOpen] = useState(false);
  const { clashes, heading } = column;
  const count = clashes.length.toLocaleString("en-US");
  return (
    <>
      <label class="tick">
        <input
          type="checkbox"
          checked={replaces}
          onChange={(event) => {
            onReplace(event.currentTarget.checked);
            // What would be lost has to be seen.
            if (event.currentTarget.checked) setOpen(true);
          }}
        />
        Replace {count} filled {clashes.length === 1 ? "cell" : "cells"} in {heading}
      </label>
      <details open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          {replaces ? "Would change" : "Kept as they are"} ({count})
        </summary>
        {isOpen && (
          // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
          <section class="sample" tabIndex={0} aria-label={`Cells with contents in ${heading}, before and after`}>
            <table>
              <thead>
                <tr>
                  <th scope="col">Cell</th>
                  <th scope="col">Now</th>
                  <th scope="col">{replaces ? "Then" : "Would be"}</th>
                </tr>
              </thead>
              <tbody>
                {clashes.map(({ address, before, after }) => (
                  <tr key={address}>
                    <th scope="row">{address}</th>
                    <td>{String(before)}</td>
                    <td>{after}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </section>
        )}
      </details>
    </>
  );
}

function amountInWords(written: number, same: number): string {
  const cells = (count: number) => `${count.toLocaleString("en-US")} ${count === 1 ? "cell" : "cells"}`;
  if (written === 0 && same > 0) return `all ${cells(same)} already say this`;
  return `${cells(written)} to write${same > 0 ? `, ${same.toLocaleString("en-US")} already say it` : ""}`;
}

/** `5 to 9, 12`: rows that follow one another are joined. */
function rowsInWords(rows: readonly Pick<ListRow, "row">[]): string {
  const runs: [number, number][] = [];
  for (const { row } of rows) {
    const run = runs.at(-1);
    if (run?.[1] === row - 1) run[1] = row;
    else runs.push([row, row]);
  }
  const shown = runs
    .slice(0, 8)
    .map(([first, last]) => (first === last ? `${first + 1}` : `${first + 1} to ${last + 1}`));
  return shown.join(", ") + (runs.length > shown.length ? ` and ${runs.length - shown.length} more runs` : "");
}

function byReason(skipped: readonly RowWhy[]): string[] {
  const reasons = new Map<string, RowWhy[]>();
  for (const row of skipped) reasons.set(row.why, [...(reasons.get(row.why) ?? []), row]);
  return [...reasons].map(([why, rows]) => `${rows.length === 1 ? "Row" : "Rows"} ${rowsInWords(rows)}: ${why}`);
}
