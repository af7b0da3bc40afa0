import { Button } from "../Button";
import { StatusMessage } from "../StatusMessage";
import { useSampleRows } from "./useSampleRows";

/** Clears the rows of the office's lists that are still samples, once they were shown. */
export function SampleRows() {
  const { items: rows, status, canUndo, look, write: clear, leave, undo } = useSampleRows();
  const lists = [...new Set(rows?.map(({ list }) => list))];
  return (
    <section aria-labelledby="sample-rows-heading">
      <h2 id="sample-rows-heading">Sample rows</h2>
      {rows && rows.length > 0 ? (
        <>
          <p>These rows are samples. Rows of your own stay. Beds that name one of these take the price of any other.</p>
          <ul>
            {lists.map((list) => (
              <li key={list}>
                {list}:{" "}
                {rows
                  .filter((row) => row.list === list)
                  .map(({ name }) => name)
                  .join("; ")}
              </li>
            ))}
          </ul>
          <p class="row">
            <Button main onPress={() => void clear()}>
              Clear {rows.length === 1 ? "this row" : `these ${rows.length} rows`}
            </Button>
            <Button onPress={leave}>Leave as is</Button>
          </p>
        </>
      ) : (
        <p class="row">
          <span class="grow below">Once your own products are in the lists, the samples can go.</span>
          <Button onPress={() => void look()}>Show sample rows</Button>
          {canUndo && <Button onPress={() => void undo()}>Undo</Button>}
        </p>
      )}
      <StatusMessage status={status} />
    </section>
  );
}
