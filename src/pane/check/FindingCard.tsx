import { useState } from "preact/hooks";
import type { Change, Finding, Level } from "../../review/finding";
import { cellAddress } from "../../spreadsheet/areas";
import { goTo } from "../../workbook/sheets";
import { Button } from "../Button";
import { TextField } from "../Field";
import { onEscape } from "../onEscape";

interface FindingCardProps {
  readonly finding: Finding;
  readonly onFix: () => void;
  readonly onDismiss: (reason: string) => void;
}

const LEVELS: Readonly<Record<Level, string>> = { slip: "Error", odd: "Warning", question: "Question" };
const MOST_SHOWN = 6;

/** One finding: where, what was seen, why it matters, what to do; with its fix and a way to let it be. */
export function FindingCard({ finding, onFix, onDismiss }: FindingCardProps) {
  const [reason, setReason] = useState<string>();
  const { level, title, where, places, seen, matters, todo, fix } = finding;
  const [first] = places;
  const letBe = (event: Event) => {
    event.preventDefault();
    if (reason?.trim()) onDismiss(reason);
  };
  return (
    <article class={`finding ${level}`}>
      <h2>
        <span class="level">{LEVELS[level]}</span> {title}
      </h2>
      <p>
        <Button off={!first} onPress={() => first && void goTo(first)}>
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
        <form class="row" onKeyDown={onEscape(() => setReason(undefined), false)} onSubmit={letBe}>
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
    <details>
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
