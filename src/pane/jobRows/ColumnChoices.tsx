import { useId } from "preact/hooks";
import { type UnitName, units } from "../../headings/units";
import { type Correction, type FittedColumn, needsUnit } from "../../sheets/jobRows/fit";
import {
  inputLabels,
  isResult,
  measureOf,
  ownUnit,
  type Role,
  resultLabels,
  roleLabel,
} from "../../sheets/jobRows/roles";
import { columnLetters } from "../../spreadsheet/areas";

interface ColumnChoicesProps {
  /** As they are taken now. */
  readonly columns: readonly FittedColumn[];
  /** As they were proposed. */
  readonly corrected: readonly FittedColumn[];
  readonly onCorrect: (column: number, correction: Correction) => void;
}

const sureWords = { sure: "sure", likely: "likely", ask: "choose", none: "not used" } as const;
const inputs = Object.keys(inputLabels) as Role[];
const outputs = Object.keys(resultLabels) as Role[];

/** What each column is taken for, to be corrected: first those that have to be asked about. */
export function ColumnChoices({ columns, corrected, onCorrect }: ColumnChoicesProps) {
  const wasAsked = new Set(corrected.filter(({ sure }) => sure === "ask").map(({ column }) => column));
  const named = columns.filter(({ heading, facts }) => heading !== "" || facts.filled > 0);
  const asked = named.filter(({ column }) => wasAsked.has(column));
  const others = named.filter(({ column }) => !wasAsked.has(column));
  const used = others.filter(({ role }) => role !== undefined).length;
  const unsure = others.filter(({ sure }) => sure === "likely").length;
  return (
    <section aria-labelledby="columns-heading">
      <h2 id="columns-heading">What the columns hold</h2>
      {asked.length > 0 && (
        <div class="notice trouble">
          <p>
            {asked.length === 1 ? "One heading" : `${asked.length} headings`} can be read more than one way. Choose what{" "}
            {asked.length === 1 ? "it holds" : "they hold"}, or leave {asked.length === 1 ? "it" : "them"} out.
          </p>
        </div>
      )}
      {asked.map((column) => (
        <ColumnChoice key={column.column} column={column} onCorrect={onCorrect} />
      ))}
      <details>
        <summary>
          {used} of {others.length} columns {asked.length > 0 ? "besides " : ""}are used
          {unsure > 0 ? `, ${unsure} of them likely, but not certain` : ""}
        </summary>
        {others.map((column) => (
          <ColumnChoice key={column.column} column={column} onCorrect={onCorrect} />
        ))}
      </details>
    </section>
  );
}

function ColumnChoice({
  column: fitted,
  onCorrect,
}: {
  readonly column: FittedColumn;
  readonly onCorrect: ColumnChoicesProps["onCorrect"];
}) {
  const { column, heading, role, unit, sure, why, asks } = fitted;
  const id = useId();
  const others = (roles: readonly Role[]) => roles.filter((one) => !asks.includes(one));
  const choose = (value: string) => onCorrect(column, { role: value as Role | "none", ...(unit && { unit }) });
  return (
    <div class="field">
      <label for={id}>
        {columnLetters(column)} “{heading || "no heading"}”
      </label>
      <span class="entry">
        <select
          id={id}
          value={role ?? "none"}
          aria-describedby={`${id}-why`}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          <option value="none">not used</option>
          {asks.length > 0 && <RoleGroup label="It may be" roles={asks} />}
          <RoleGroup label="Typed" roles={others(inputs)} />
          <RoleGroup label="Calculated" roles={others(outputs)} />
        </select>
        {role && needsUnit(role) && (
          <UnitChoice
            name={heading}
            role={role}
            unit={unit}
            onChoose={(chosen) => onCorrect(column, { role, unit: chosen })}
          />
        )}
      </span>
      <span id={`${id}-why`} class="below">
        {sureWords[sure]}: {why}
      </span>
    </div>
  );
}

function RoleGroup({ label, roles }: { readonly label: string; readonly roles: readonly Role[] }) {
  return (
    <optgroup label={label}>
      {roles.map((role) => (
        <option key={role} value={role}>
          {roleLabel(role)}
        </option>
      ))}
    </optgroup>
  );
}

interface UnitChoiceProps {
  readonly name: string;
  readonly role: Role;
  readonly unit: UnitName | undefined;
  readonly onChoose: (unit: UnitName) => void;
}

function UnitChoice({ name, role, unit, onChoose }: UnitChoiceProps) {
  const measure = measureOf(role);
  const choices = (Object.keys(units) as UnitName[]).filter((one) => units[one].measures === measure);
  return (
    <select
      class="narrow"
      aria-label={`Unit of ${name}`}
      value={unit ?? ownUnit(role)}
      // A result may be wanted in another unit, too: then its formula converts.
      title={isResult(role) ? "unit of the result" : "unit of plain numbers"}
      onChange={(event) => onChoose(event.currentTarget.value as UnitName)}
    >
      {choices.map((one) => (
        <option key={one} value={one}>
          {one}
        </option>
      ))}
    </select>
  );
}
