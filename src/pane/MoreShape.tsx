import type { FieldKey } from "../quantities/bed/fields";
import { cornerFields, shapeFieldsOf, textOf } from "../quantities/bed/form";
import { pickedCorners, sideFieldsOf } from "../quantities/bed/pickSides";
import { feetIn } from "../quantities/tape";
import type { ChoicesProps } from "./Choices";
import { changedWords } from "./changedWords";
import { BedField } from "./Field";
import { Group } from "./Group";
import { type MeasurementsProps, tapedFields } from "./Measurements";
import { Ticks } from "./Sides";

/** What few beds have: rounded corners, areas to deduct. */
export function MoreShape({
  form,
  problemAt,
  onType,
  onFill,
}: Omit<MeasurementsProps, "onChange"> & Pick<ChoicesProps, "onFill">) {
  const shown: readonly FieldKey[] = [...tapedFields[form.way], ...sideFieldsOf(form)];
  const keys = shapeFieldsOf(form).filter((key) => !shown.includes(key));
  const corners = pickedCorners(form);
  const picked: readonly FieldKey[] = ["roundedCorners", ...cornerFields];
  const needsRadius = corners.some(({ isOn }) => isOn) && feetIn(textOf(form, "cornerRadius")) === 0;
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
      opens={needsRadius || keys.some((key) => problemAt(key))}
    >
      {corners.length > 0 && <Ticks legend="Rounded corners, or click the drawing" picks={corners} onFill={onFill} />}
      {needsRadius && <p class="below">Type the radius of the rounded corners. At 0 they are square.</p>}
      <div class="pairs">
        {keys
          .filter((key) => !picked.includes(key) || problemAt(key))
          .map((key) => (
            <BedField key={key} field={key} value={textOf(form, key)} problem={problemAt(key)} onType={onType} />
          ))}
      </div>
    </Group>
  );
}
