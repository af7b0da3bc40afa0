import { useId, useState } from "preact/hooks";
import type { Change, Finding } from "../../review/finding";
import { LEVEL_WORDS } from "../../review/report";
import { cellAddress } from "../../spreadsheet/areas";
import { goTo } from "../../workbook/sheets";
import { Button } from "../Button";
import { TextField } from "../Field";
import { onEscape } from "../onEscape";

interface FindingCardProps {
  readonly finding: Finding;
  /** Its place in the list, from 1, and how many there are. */
  readonly place: number;
  readonly count: number;
  readonly onFix: () => void;
  readonly onDismiss: (reason: string) => void;
}

const MOST_SHOWN = 6;

/** One finding: where, what was seen, why it matters, what to do; with its fix and a way to ignore it. */
export function FindingCard({ finding, place, count, onFix, onDismiss }: FindingCardProps) {
  const [reason, setReason] = useState<string>();
  const { level, title, where, places, seen, matters, todo, fix } = finding;
  const [first] = places;
  const id = useId();
  const go = () => first && void goTo(first);
  const ignore = (event: Event) => {
    event.preventDefault();
    if (reason?.trim()) onDismiss(reason);
  };
  return (
    <article
      class={`finding ${level}`}
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the cards of a feed take the keyboard
      tabIndex={0}
      aria-labelledby={id}
      aria-posinset={place}
      aria-setsize={count}
      onKeyDown={(event) => {
        if (event.key === "Enter" && event.target === event.currentTarget) go();
      }}
    >
      <h2 id={id}>
        <span class="level">{LEVEL_WORDS[level]}</span> {title}
      </h2>
      <p>
        <Button off={!first} onPress={go}>
          Go to {where}
        </Button>
      </p>
      <p>{seen}</p>
      <p>{matters}</p>
      <p>
        <strong>{todo}</strong>
      </p>
      {fix && <Fix fix={fix} onFix={onFix} />}
      {reason === undefined ? (
        <p class="row">
          <Button onPress={() => setReason("")}>Ignore…</Button>
        </p>
      ) : (
        <form class="row" onKeyDown={onEscape(() => setReason(undefined), false)} onSubmit={ignore}>
          <TextField
            label="Reason"
            value={reason}
            placeholder="such as agreed with the customer"
            onType={setReason}
            takesOver
          />
          <Button off={reason.trim() === ""} onPress={() => onDismiss(reason)}>
            Ignore
          </Button>
          <Button onPress={() => setReason(undefined)}>Cancel</Button>
        </form>
      )}
    </article>
  );
}

function Fix({ fix, onFix }: { fix: readonly Change[]; onFix: () => void }) {
  return (
    <details open={fix.length <= MOST_SHOWN}>
      <summary>Suggested fix</summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Cell</th>
            <th scope="col">Now</th>
            <th scope="col">After</th>
          </tr>
        </thead>
        <tbody>
          {fix.slice(0, MOST_SHOWN).map((change) => (
            <tr key={change.sheet + cellAddress(change)}>
              <th scope="row">
                {change.sheet}!{cellAddress(change)}
              </th>
              <td>{String(change.before)}</td>
              <td>{String(change.after)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {fix.length > MOST_SHOWN && <p class="below">and {fix.length - MOST_SHOWN} more cells.</p>}
      <p class="row">
        <Button main onPress={onFix}>
          Fix
        </Button>
      </p>
    </details>
  );
}
