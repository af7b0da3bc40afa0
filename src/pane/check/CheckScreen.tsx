import type { Scope } from "../../review/facts";
import { summaryOf } from "../../review/report";
import { Select } from "../Select";
import { FindingCard } from "./FindingCard";
import { useCheck } from "./useCheck";

const scopes = [
  { value: "workbook", label: "The whole workbook" },
  { value: "sheet", label: "This sheet" },
  { value: "area", label: "The selected cells" },
];

/** Checks the sheets that the office really uses: what is wrong, what is odd, and what is missing. */
export function CheckScreen() {
  const check = useCheck();
  const { progress, word, found, sorted } = check;
  return (
    <>
      <header>
        <h1>Check the sheets</h1>
      </header>
      <p class="below">
        Finds slips of the keys and things that do not fit a stone bed. Nothing is changed by itself, and what was not
        looked at stands at the end.
      </p>
      <Select
        label="What to check"
        value={check.scope}
        options={scopes}
        onChoose={(scope) => check.setScope(scope as Scope["kind"])}
      />
      <p class="row">
        <button type="button" class="main" disabled={progress !== undefined} onClick={() => void check.check()}>
          Check
        </button>
        {progress && (
          <button type="button" onClick={check.stop}>
            Stop
          </button>
        )}
        <button
          type="button"
          disabled={!check.canTakeBack}
          title={check.canTakeBack}
          onClick={() => void check.takeBack()}
        >
          Take the fix back
        </button>
        <button type="button" disabled={!found} onClick={() => void check.report()}>
          Put the report on a sheet
        </button>
      </p>
      {progress && (
        <p>
          <progress value={progress.done} aria-label="How far the check has come" /> {progress.what}
        </p>
      )}
      <p role="status" class={word?.kind === "trouble" ? "notice trouble" : "notice"} hidden={!word && !sorted}>
        {word?.text} {sorted && !progress ? summaryOf(sorted) : ""}
      </p>
      {sorted?.open.map((finding) => (
        <FindingCard
          key={finding.key}
          finding={finding}
          onFix={() => void check.fix(finding)}
          onDismiss={(reason) => void check.dismiss(finding, reason)}
        />
      ))}
      {sorted && sorted.dismissed.length > 0 && (
        <details>
          <summary>Dismissed ({sorted.dismissed.length})</summary>
          <ul>
            {sorted.dismissed.map(({ finding, dismissal }) => (
              <li key={finding.key}>
                {finding.title}, {finding.where}: {dismissal.reason} ({dismissal.on}){" "}
                <button type="button" onClick={() => void check.bringBack(dismissal)}>
                  Show again
                </button>
              </li>
            ))}
          </ul>
        </details>
      )}
      {found && (
        <section aria-labelledby="unchecked-heading">
          <h2 id="unchecked-heading">Not looked at</h2>
          <ul>
            {found.unchecked.map(({ what, where, why }) => (
              <li key={what + where}>
                {what}
                {where ? ` (${where})` : ""}: {why}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
