import { results } from "../../sheets/jobRows/results";
import { type ResultRole, type Role, roleLabel } from "../../sheets/jobRows/roles";
import { offeredFor } from "../../sheets/jobRows/wanted";
import { Button } from "../Button";
import { Select } from "../Select";

interface ResultPickerProps {
  readonly chosen: readonly ResultRole[];
  /** Columns that are there, by what they hold. */
  readonly existing: ReadonlyMap<Role, string>;
  /** Columns that are to be typed. */
  readonly inputs?: readonly Role[];
  /** Columns that come along, since a chosen one rests on them. */
  readonly added: readonly ResultRole[];
  readonly onChange: (chosen: readonly ResultRole[]) => void;
}

/** Which results are wanted, and in which order their new columns stand. */
export function ResultPicker({ chosen, existing, inputs = [], added, onChange }: ResultPickerProps) {
  const open = offeredFor((role) => existing.has(role) || inputs.includes(role)).filter(
    (role) => !chosen.includes(role),
  );
  const earlier = (index: number) => {
    const order = [...chosen];
    const [one] = order.splice(index, 1);
    if (one) order.splice(index - 1, 0, one);
    onChange(order);
  };
  return (
    <section aria-labelledby="results-heading">
      <h2 id="results-heading">What to calculate</h2>
      <ol class="picked">
        {chosen.map((role, index) => (
          <li key={role}>
            <div class="row small">
              <span class="grow">
                {roleLabel(role)}
                {existing.size > 0 && (
                  <span class="below"> {existing.has(role) ? `in ${existing.get(role)}` : "new column"}</span>
                )}
              </span>
              <Button off={index === 0} label={`Move ${roleLabel(role)} earlier`} onPress={() => earlier(index)}>
                Earlier
              </Button>
              <Button
                label={`Remove ${roleLabel(role)}`}
                onPress={() => onChange(chosen.filter((other) => other !== role))}
              >
                Remove
              </Button>
            </div>
          </li>
        ))}
      </ol>
      {added.length > 0 && (
        <p class="below">
          Added because other results need them: {added.map((role) => results[role].heading).join("; ")}.
        </p>
      )}
      <Select
        label="Add a result"
        value=""
        options={[
          { value: "", label: "choose…" },
          ...open.map((role) => ({ value: role, label: `${roleLabel(role)}: ${results[role].note}` })),
        ]}
        onChoose={(value) => value !== "" && onChange([...chosen, value as ResultRole])}
      />
    </section>
  );
}
