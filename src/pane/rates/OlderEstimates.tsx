import { Button } from "../Button";
import { StatusMessage } from "../StatusMessage";
import { cellWords, groupsOf, useOlderEstimates } from "./useOlderEstimates";

/** Lets estimates from before the workbook had rates follow them, cell by cell as listed. */
export function OlderEstimates() {
  const { items: cells, status, canUndo, look, write: follow, leave, undo } = useOlderEstimates();
  return (
    <section aria-labelledby="older-heading">
      <h2 id="older-heading">Older estimates</h2>
      {cells && cells.length > 0 ? (
        <>
          <p>These cells still hold the defaults. If they follow your rates, the prices change with them.</p>
          {groupsOf(cells).map(([estimate, own]) => (
            <details key={estimate}>
              <summary>
                {estimate}: {own.length} cells
              </summary>
              <ul>
                {own.map((cell) => (
                  <li key={cellWords(cell)}>{cellWords(cell)}</li>
                ))}
              </ul>
            </details>
          ))}
          <p class="row">
            <Button main onPress={() => void follow()}>
              Let {cells.length === 1 ? "it" : `these ${cells.length}`} follow
            </Button>
            <Button onPress={leave}>Leave as is</Button>
          </p>
        </>
      ) : (
        <p class="row">
          <span class="grow below">Estimates made before you had rates keep the default prices.</span>
          <Button onPress={() => void look()}>Find them</Button>
          {canUndo && <Button onPress={() => void undo()}>Undo</Button>}
        </p>
      )}
      <StatusMessage status={status} />
    </section>
  );
}
