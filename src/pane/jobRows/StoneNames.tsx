import { useState } from "preact/hooks";
import { messages } from "../../quantities/messages";
import { nearestName } from "../../quantities/nearestName";
import { MOST_TONS_PER_YARD, weightAsName } from "../../quantities/stone";
import { stoneOfYard } from "../../quantities/yardStones";
import type { StoneAnswer } from "../../sheets/rates/stoneNames";
import { Button } from "../Button";
import { TextField } from "../Field";

interface StoneNamesProps {
  /** Names that aren't known, with the rows of the list that have them: none for a single bed. */
  readonly names: readonly { readonly name: string; readonly rows: readonly number[] }[];
  /** What they can be. */
  readonly stones: readonly string[];
  /** Whether the workbook has the office's rates, where the names are kept. */
  readonly hasRates: boolean;
  readonly off: boolean;
  readonly onRemember: (answers: readonly StoneAnswer[]) => void;
  /** For a single bed: uses the answer there alone. */
  readonly onUse?: (answer: StoneAnswer) => void;
}

/** Asks once what a yard's name for a stone is; the answer is kept with the office's rates. */
export function StoneNames({ names, stones, hasRates, off, onRemember, onUse }: StoneNamesProps) {
  const [typed, setTyped] = useState<Readonly<Record<string, string>>>({});
  if (names.length === 0) return null;
  const answers = names.map(({ name }) => ({ name, ...answerFrom(typed[name] ?? stoneOfYard(name) ?? "", stones) }));
  const given = answers.flatMap(({ name, is }) => (is === undefined ? [] : [{ name, is }]));
  return (
    <fieldset>
      <legend>Unknown stone names</legend>
      <p class="below">
        {hasRates
          ? "Say which stone each one is, or its tons per cubic yard. Your answer is saved in Rates."
          : onUse
            ? "Say which stone it is, or its tons per cubic yard. Rates would keep the answer: add a Rates sheet first."
            : "They can be kept once this workbook has the office's rates: open Rates, insert them, then read the list again."}
      </p>
      {names.map(({ name, rows }, index) => (
        <TextField
          key={name}
          label={`“${name}” is`}
          value={typed[name] ?? stoneOfYard(name) ?? ""}
          names={stones}
          note={
            rows.length === 0
              ? "a kind of stone, or tons per cubic yard"
              : rows.length === 1
                ? `row ${(rows[0] ?? 0) + 1}`
                : `${rows.length} rows, the first is ${(rows[0] ?? 0) + 1}`
          }
          problem={answers[index]?.problem}
          onType={(text) => setTyped({ ...typed, [name]: text })}
        />
      ))}
      {(hasRates || onUse) && (
        <p class="row">
          {onUse && (
            <Button off={off || given.length === 0} onPress={() => given[0] && onUse(given[0])}>
              Use it for this bed
            </Button>
          )}
          {hasRates && (
            <Button off={off || given.length === 0} onPress={() => onRemember(given)}>
              {given.length === 1 ? "Remember this name" : "Remember these names"}
            </Button>
          )}
        </p>
      )}
    </fieldset>
  );
}

/** Which stone or weight a text is; nothing for a blank, and what is wrong with any other. */
function answerFrom(text: string, stones: readonly string[]): { is?: string | number; problem?: string } {
  const plain = text.trim().toLowerCase();
  if (plain === "") return {};
  const stone = stones.find((one) => one.toLowerCase() === plain);
  if (stone) return { is: stone };
  const weight = weightAsName(plain);
  if (weight === undefined) {
    return { problem: messages.unknownName("Stone", text, nearestName(plain, stones), "its tons per cubic yard") };
  }
  return weight > 0 && weight <= MOST_TONS_PER_YARD
    ? { is: weight }
    : { problem: messages.tooHeavy("Stone", text, MOST_TONS_PER_YARD) };
}
