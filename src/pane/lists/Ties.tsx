import { useState } from "preact/hooks";
import { Problem } from "../../quantities/problem";
import { readTape } from "../../quantities/tape";
import { pairsOf, tiedPoint } from "../../quantities/typedList";
import { readsAs, TextField } from "../Field";
import { Group } from "../Group";
import { TextArea } from "../papers/TextArea";

interface TiesProps {
  /** Places of the corners, in feet, as text. */
  readonly onPlace: (places: [string, string][]) => void;
}

/** An odd shape by ties: each corner by its distances from two fixed points, such as the corners of the house. */
export function Ties({ onPlace }: TiesProps) {
  const [apart, setApart] = useState("");
  const [ties, setTies] = useState("");
  const [problem, setProblem] = useState<{ field: "apart" | "ties"; text: string }>();
  const type = (apartText: string, tiesText: string) => {
    setApart(apartText);
    setTies(tiesText);
    setProblem(undefined);
    if (apartText.trim() === "" || tiesText.trim() === "") return;
    try {
      const feet = attempt("apart", () => over0(readTape(apartText, "ft", APART)));
      const places = attempt("ties", () =>
        pairsOf(tiesText).map((tie, index) => tiedPoint(tie, feet, `Corner ${index + 1}`)),
      );
      onPlace(places.map(([x, y]) => [text(x), text(y)]));
    } catch (reason) {
      if (!(reason instanceof Refused)) throw reason;
      setProblem(reason);
    }
  };
  return (
    <Group heading="Corners by two distances" opens={false}>
      <p class="below">
        Pick two fixed points, such as the corners of the house, and face the bed with the first one at your left. Tape
        from both to each corner, in order around the bed.
      </p>
      <TextField
        label={APART}
        unit="ft"
        value={apart}
        note={readsAs(apart, "ft")}
        problem={problem?.field === "apart" ? problem.text : undefined}
        onType={(typed) => type(typed, ties)}
      />
      <TextArea
        label="From the first point, from the second"
        value={ties}
        rows={4}
        note={`one corner a line, such as 12' 6", 8-3`}
        problem={problem?.field === "ties" ? problem.text : undefined}
        onType={(typed) => type(apart, typed)}
      />
    </Group>
  );
}

const APART = "Between the two points";

/** What is wrong, and at which of the two fields. */
class Refused extends Error {
  constructor(
    readonly field: "apart" | "ties",
    readonly text: string,
  ) {
    super(text);
  }
}

function attempt<Result>(field: "apart" | "ties", work: () => Result): Result {
  try {
    return work();
  } catch (reason) {
    throw reason instanceof Problem ? new Refused(field, reason.message) : reason;
  }
}

function over0(feet: number): number {
  if (feet > 0) return feet;
  throw new Problem("value", `${APART}: type more than 0, such as 24' 6".`, APART);
}

const text = (feet: number) => String(Number(feet.toFixed(4)));
