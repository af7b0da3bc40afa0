import type { CutOutText } from "../quantities/bed/form";
import type { CutOut } from "../quantities/bed/read";
import { Button } from "./Button";
import { readsAs, TextField } from "./Field";
import { Group } from "./Group";
import type { ListProps } from "./Measurements";

const parts: readonly { readonly part: keyof CutOut; readonly label: string }[] = [
  { part: "x", label: "along, to center" },
  { part: "y", label: "out, to center" },
  { part: "across", label: "across" },
  { part: "deep", label: "deep" },
];

/** What is in the bed and gets no stone, by its place from the bed's zero point. */
export function CutOuts({ form, problemAt, onChange }: ListProps) {
  const change = (index: number, part: keyof CutOut, text: string) =>
    onChange({ cutOuts: form.cutOuts.map((cutOut, at) => (at === index ? withPart(cutOut, part, text) : cutOut)) });
  return (
    <Group
      heading="Cut-outs: meter pad, plant, post"
      changed={form.cutOuts.length > 0 ? `${form.cutOuts.length} in this bed` : ""}
      opens={form.cutOuts.length > 0}
    >
      <p class="below">
        Measure from the bed's zero point: the left end of the house side or base line, corner (0, 0) of an outline, or
        the center of a round bed. Leave “deep” blank for a round one.
      </p>
      {form.cutOuts.map((cutOut, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a cut-out is its place in the list
        <fieldset key={index}>
          <legend>Cut-out {index + 1}</legend>
          <div class="pairs">
            {parts.map(({ part, label }, place) => (
              <TextField
                key={part}
                label={`Cut-out ${index + 1}, ${label}`}
                unit="ft"
                value={cutOut[place] ?? ""}
                note={readsAs(cutOut[place] ?? "", "ft")}
                problem={problemAt(`cutOut${index + 1}.${part}`)}
                onType={(text) => change(index, part, text)}
              />
            ))}
          </div>
          <p class="row">
            <Button onPress={() => onChange({ cutOuts: form.cutOuts.filter((_, other) => other !== index) })}>
              Remove cut-out {index + 1}
            </Button>
          </p>
        </fieldset>
      ))}
      <p class="row">
        <Button onPress={() => onChange({ cutOuts: [...form.cutOuts, ["", "", "", ""]] })}>Add a cut-out</Button>
      </p>
    </Group>
  );
}

function withPart([x, y, across, deep]: CutOutText, part: keyof CutOut, text: string): CutOutText {
  const changed = { x, y, across, deep, [part]: text };
  return [changed.x, changed.y, changed.across, changed.deep];
}
