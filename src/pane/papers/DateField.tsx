import { useRef } from "preact/hooks";
import { isoDate } from "../../quantities/calendar/calendarDay";
import { dateOrder, readTypedDate, shownDate } from "../../quantities/calendar/typedDate";
import { Problem } from "../../quantities/problem";
import { TextField } from "../Field";
import { today } from "./today";

interface DateFieldProps {
  readonly label: string;
  readonly value: string;
  readonly problem?: string | undefined;
  readonly onType: (text: string) => void;
}

/** A date, typed the way people write it or picked, with the day of the week it falls on. */
export function DateField({ label, value, problem, onType }: DateFieldProps) {
  const picker = useRef<HTMLInputElement>(null);
  const date = dateIn(value, label);
  const shown = date === undefined ? "" : shownDate(date, dateOrder());
  return (
    // What is kept has its year, since 12/7 would be another day next year.
    <div class="dated" onFocusOut={() => shown && value.trim() !== shown && onType(shown)}>
      <TextField
        label={label}
        value={value}
        placeholder="12/7/2026 or Dec 7"
        // A blank line in its place keeps what is below from moving away under a click.
        note={shown && (value.trim() === shown ? "\u00a0" : `= ${shown}`)}
        problem={problem}
        onType={onType}
        button={{ label: "Pick a date", onPress: () => picker.current?.showPicker() }}
      />
      <input
        ref={picker}
        type="date"
        class="picker"
        tabIndex={-1}
        aria-hidden="true"
        value={date === undefined ? "" : isoDate(date)}
        onInput={({ currentTarget: { value: picked } }) => {
          const day = dateIn(picked, label);
          if (day !== undefined) onType(shownDate(day, dateOrder()));
        }}
      />
    </div>
  );
}

/** The day that a text names; undefined where it names none, of which the screen says what is wrong. */
function dateIn(text: string, label: string): number | undefined {
  if (text.trim() === "") return undefined;
  try {
    return readTypedDate(text, label, today(), dateOrder());
  } catch (reason) {
    if (reason instanceof Problem) return undefined;
    throw reason;
  }
}
