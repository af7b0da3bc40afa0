import { useState } from "preact/hooks";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import { SOLD_BY } from "../../quantities/soldBy";
import { STONES } from "../../quantities/stone";
import type { JobOnSheet } from "../../sheets/job/readJobBlock";
import { MOST_OPTIONS } from "../../sheets/papers/proposal";
import { Button } from "../Button";
import { TextField } from "../Field";
import { Group } from "../Group";
import { dollarText } from "../numbers";
import { differenceLabel } from "./jobTogether";
import type { Papers } from "./usePapers";

/** What another version of a job usually changes. */
const DIFFERENCES = [
  ...[
    "stone",
    "stoneSize",
    "soldBy",
    "stoneCost",
    "borderHeight",
    "trenchDepth",
    "borderFinish",
    "pieceLength",
    "pieceCost",
  ],
  ...["rollWidth", "rollLength", "rollCost", "waste"],
] as const satisfies readonly FieldKey[];

const NAMES: Readonly<Partial<Record<FieldKey, readonly string[]>>> = {
  stone: STONES.map(({ name }) => name),
  soldBy: SOLD_BY.map(({ name }) => name),
};

interface JobOptionsProps {
  readonly addOption: Papers["addOption"];
  readonly options: readonly JobOnSheet[];
  readonly disabled: boolean;
}

/** The versions of a job side by side, and a way to add another. */
export function JobOptions({ addOption, options, disabled }: JobOptionsProps) {
  const [name, setName] = useState("");
  const [typed, setTyped] = useState<Readonly<Partial<Record<FieldKey, string>>>>({});
  const given = Object.fromEntries(Object.entries(typed).filter(([, text]) => text.trim() !== ""));
  const isFull = options.length >= MOST_OPTIONS;
  const first = options[0]?.amounts.priceWithTax;
  const most = Math.max(...options.map(({ beds }) => beds.length));
  /** A version may have been given other beds on purpose. */
  const bedsSaid = (beds: number) => beds < most && `has ${beds} of ${most} beds`;
  const add = async () => {
    await addOption({ name: name.trim() || `Option ${options.length + 1}`, differences: given });
    setName("");
    setTyped({});
  };
  return (
    <>
      {options.length > 1 && (
        <table>
          <thead>
            <tr>
              <th scope="col">Option</th>
              <th scope="col" class="number">
                Total due
              </th>
              <th scope="col" class="number">
                Difference
              </th>
            </tr>
          </thead>
          <tbody>
            {options.map(({ sheet, option, differs, isChosen, beds, amounts: { priceWithTax } }) => (
              <tr key={sheet}>
                <th scope="row">
                  {option || sheet}{" "}
                  <span class="below">
                    {[isChosen && "chosen", differs, bedsSaid(beds.length)].filter(Boolean).join("; ")}
                  </span>
                </th>
                <td class="number">{priceWithTax === undefined ? "no price" : dollarText(priceWithTax)}</td>
                <td class="number">
                  {priceWithTax === undefined || first === undefined ? "" : dollarText(priceWithTax - first)}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <Group heading="Add an option" opens={false}>
        <p class="below">
          Another version of this job on a sheet of its own, priced in full. Its beds follow these; type only what
          changes. To leave a line out, type 0 over its quantity there.
        </p>
        <TextField label="Option name" value={name} placeholder={`Option ${options.length + 1}`} onType={setName} />
        {DIFFERENCES.map((key) => (
          <TextField
            key={key}
            label={differenceLabel(key)}
            unit={fields[key].unit}
            value={typed[key] ?? ""}
            placeholder="no change"
            names={NAMES[key]}
            onType={(text) => setTyped((now) => ({ ...now, [key]: text }))}
          />
        ))}
        <p class="row">
          <Button
            off={disabled || isFull || Object.keys(given).length === 0}
            title={isFull ? `${MOST_OPTIONS} options fit side by side` : "Type at least one change"}
            onPress={() => void add()}
          >
            Add option
          </Button>
        </p>
      </Group>
    </>
  );
}
