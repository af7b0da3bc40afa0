import type { PointText } from "../../quantities/bed/form";
import { FEWEST_POINTS, FEWEST_WIDTHS } from "../../quantities/bed/read";
import { listOf, pairsOf } from "../../quantities/typedList";
import { Button } from "../Button";
import { readsAs, TextField } from "../Field";
import type { ListProps } from "../Measurements";
import { AllAtOnce } from "./AllAtOnce";
import { Ties } from "./Ties";

/** What was taped one after another: the widths or the corners of a bed. */
export function Lists(props: ListProps) {
  return props.form.way === "widths" ? <Widths {...props} /> : <Points {...props} />;
}

function Widths({ form, problemAt, onChange }: ListProps) {
  const change = (index: number, text: string) =>
    onChange({ widths: form.widths.map((width, at) => (at === index ? text : width)) });
  return (
    <fieldset>
      <legend>Widths, from one end to the other</legend>
      <AllAtOnce
        label="All widths at once"
        example={`3', 4' 6", 5`}
        now={form.widths.filter((width) => width.trim() !== "").join(", ")}
        onType={(text) => onChange({ widths: atLeast(FEWEST_WIDTHS, listOf(text), "") })}
      />
      <div class="pairs">
        {form.widths.map((width, index) => (
          <TextField
            // biome-ignore lint/suspicious/noArrayIndexKey: a width is its place along the base line
            key={index}
            label={`Width ${index + 1}`}
            unit="ft"
            value={width}
            note={readsAs(width, "ft")}
            problem={problemAt(`width${index + 1}`)}
            onType={(text) => change(index, text)}
          />
        ))}
      </div>
      <p class="row">
        <Button onPress={() => onChange({ widths: [...form.widths, ""] })}>Add a width</Button>
        <Button
          off={form.widths.length <= FEWEST_WIDTHS}
          onPress={() => onChange({ widths: form.widths.slice(0, -1) })}
        >
          Remove
        </Button>
      </p>
      <p class="below">Type 0 where the bed comes to a point.</p>
    </fieldset>
  );
}

function Points({ form, problemAt, onChange }: ListProps) {
  const change = (index: number, point: PointText) =>
    onChange({ points: form.points.map((other, at) => (at === index ? point : other)) });
  return (
    <fieldset>
      <legend>Corners, in order around the bed</legend>
      <AllAtOnce
        label="All corners at once"
        example={`0, 0; 12' 6", 0; 12-6, 4`}
        now={form.points
          .filter(([x, y]) => `${x}${y}`.trim() !== "")
          .map(([x, y]) => `${x}, ${y}`)
          .join("; ")}
        onType={(text) => onChange({ points: pointsFrom(pairsOf(text), form.points) })}
      />
      <Ties onPlace={(places) => onChange({ points: pointsFrom(places, form.points) })} />
      {form.points.map(([x, y, border], index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a corner is its place in the order
        <div class="pairs" key={index}>
          <TextField
            label={`Point ${index + 1}, x`}
            unit="ft"
            value={x}
            note={readsAs(x, "ft")}
            problem={problemAt(`point${index + 1}.x`)}
            onType={(text) => change(index, [text, y, border])}
          />
          <TextField
            label={`Point ${index + 1}, y`}
            unit="ft"
            value={y}
            note={readsAs(y, "ft")}
            problem={problemAt(`point${index + 1}.y`)}
            onType={(text) => change(index, [x, text, border])}
          />
          <label class="tick">
            <input
              type="checkbox"
              checked={border === "1"}
              onChange={(event) => change(index, [x, y, event.currentTarget.checked ? "1" : "0"])}
            />
            Edging from point {index + 1} to {index + 1 < form.points.length ? `point ${index + 2}` : "point 1"}
          </label>
        </div>
      ))}
      <p class="row">
        <Button onPress={() => onChange({ points: [...form.points, ["", "", "1"]] })}>Add a corner</Button>
        <Button
          off={form.points.length <= FEWEST_POINTS}
          onPress={() => onChange({ points: form.points.slice(0, -1) })}
        >
          Remove
        </Button>
      </p>
    </fieldset>
  );
}

const atLeast = <Item,>(fewest: number, items: readonly Item[], blank: Item): Item[] => [
  ...items,
  ...Array<Item>(Math.max(0, fewest - items.length)).fill(blank),
];

/** Corners by their places; whether there's border behind one stays as it was. */
function pointsFrom(places: readonly (readonly [string, string])[], before: readonly PointText[]): PointText[] {
  return atLeast<readonly [string, string]>(FEWEST_POINTS, places, ["", ""]).map(([x, y], index) => [
    x,
    y,
    before[index]?.[2] ?? "1",
  ]);
}
