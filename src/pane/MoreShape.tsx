import { type FieldKey, fields } from "../quantities/bed/fields";
import { shapeFieldsOf, textOf } from "../quantities/bed/form";
import { changedWords } from "./changedWords";
import { BedField } from "./Field";
import { Group } from "./Group";
import { type MeasurementsProps, sideFields, tapedFields } from "./Measurements";
import { Select } from "./Select";

/** By how many there are, in the order in which the layout rounds them. */
const ROUNDED = ["None", "1, front left", "2, both in front", "3, all but back right", "4, all of them"];

/** What few beds have: rounded corners, areas to deduct. */
export function MoreShape({ form, problemAt, onType }: Omit<MeasurementsProps, "onChange">) {
  const shown: readonly FieldKey[] = [...tapedFields[form.way], ...sideFields[form.way]];
  const keys = shapeFieldsOf(form.way).filter((key) => !shown.includes(key));
  return (
    <Group
      heading={
        form.way === "rectangle"
          ? "Rounded corners, areas to deduct"
          : form.way === "area"
            ? "Corners, areas to deduct"
            : "Areas to deduct"
      }
      changed={changedWords(form, keys)}
      opens={keys.some((key) => problemAt(key))}
    >
      <div class="pairs">
        {keys.map((key) => {
          const value = textOf(form, key);
          return key === "roundedCorners" && ROUNDED[Number(value || "none")] ? (
            <Select
              key={key}
              label={fields[key].label}
              value={String(Number(value))}
              options={ROUNDED.map((label, count) => ({ value: String(count), label }))}
              note="all of the same radius"
              onChoose={(count) => onType(key, count)}
            />
          ) : (
            <BedField key={key} field={key} value={value} problem={problemAt(key)} onType={onType} />
          );
        })}
      </div>
    </Group>
  );
}
