import type { Scope } from "../../review/facts";
import { summaryOf } from "../../review/report";
import { Button } from "../Button";
import { Select } from "../Select";
import { StatusMessage } from "../StatusMessage";
import type { Status } from "../useStatus";
import { FindingList } from "./FindingList";
import { useCheck } from "./useCheck";

const scopes = [
  { value: "workbook", label: "The whole workbook" },
  { value: "sheet", label: "This sheet" },
  { value: "area", label: "The selected cells" },
];

/** Checks the sheets that the office really uses: what is wrong, what is odd, and what is missing. */
export function CheckScreen() {
  const check = useCheck();
  const { progress, found, sorted } = check;
  return (
    <>
      <header>
        <h1>Check the sheets</h1>
      </header>
      <p class="below">
        Finds typing errors and numbers that don't fit a stone bed. Nothing changes until you say so. What wasn't
        checked is listed at the end. Page Down goes to the next finding, Enter to its cell.
      </p>
      <Select
        label="What to check"
        value={check.scope}
        options={scopes}
        onChoose={(scope) => check.setScope(scope as Scope["kind"])}
      />
      <p class="row">
        <Button main off={progress !== undefined} onPress={() => void check.check()}>
          Check
        </Button>
        {progress && <Button onPress={check.stop}>Stop</Button>}
        <Button off={!check.canUndo} title={check.canUndo} onPress={() => void check.undo()}>
          Undo the fix
        </Button>
        <Button off={!found} onPress={() => void check.report()}>
          Add the report as a sheet
        </Button>
      </p>
      {progress && (
        <p>
          <progress value={progress.done} aria-label="Check progress" /> <span>{progress.what}</span>
        </p>
      )}
      <StatusMessage status={saidOf(check)} />
      {sorted && sorted.open.length > 0 && (
        <FindingList
          findings={sorted.open}
          isBusy={progress !== undefined}
          onFix={(finding) => void check.fix(finding)}
          onDismiss={(finding, reason) => void check.dismiss(finding, reason)}
        />
      )}
      {sorted && sorted.dismissed.length > 0 && (
        <details>
          <summary>Ignored ({sorted.dismissed.length})</summary>
          <ul>
            {sorted.dismissed.map(({ finding, dismissal }) => (
              <li key={finding.key}>
                {finding.title}, {finding.where}: {dismissal.reason} ({dismissal.on}){" "}
                <Button onPress={() => void check.bringBack(dismissal)}>Show again</Button>
              </li>
            ))}
          </ul>
        </details>
      )}
      {found && (
        <section aria-labelledby="unchecked-heading">
          <h2 id="unchecked-heading">Not checked</h2>
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

/** The last action and what the check came to, in one breath; its steps are for the eyes, and not read out one by one. */
function saidOf({ progress, status, sorted }: ReturnType<typeof useCheck>): Status | undefined {
  if (progress) return { kind: "working", text: "Checking…" };
  const summary = sorted ? summaryOf(sorted) : "";
  if (!status) return summary === "" ? undefined : { kind: "done", text: summary };
  return status.kind === "trouble" ? status : { ...status, text: `${status.text} ${summary}`.trim() };
}
