import { type Choice, stoneChoices } from "../../quantities/bed/choices";
import { exampleStonePrices } from "../../quantities/bed/examples";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import { listSamples } from "../../quantities/bed/listSamples";
import { listKeys } from "../../quantities/bed/officeLists";
import { isPriced } from "../../quantities/bed/rates";
import { listHeadings } from "../../sheets/rates/listRows";
import { escaped, table } from "../html";

const kinds: readonly { readonly kind: string; readonly choices: readonly Choice[] }[] = [
  { kind: "Stone", choices: stoneChoices },
  ...listKeys.map((key) => ({ kind: listHeadings[key], choices: listSamples[key] })),
];

/** What each ready choice fills in, sizes and prices apart, since they do not rest on the same. */
export function choiceTable(): string {
  const rows = kinds.flatMap(({ kind, choices }) =>
    choices.map(({ name, fills }) => {
      const filled = Object.entries(fills) as [FieldKey, string][];
      const words = (some: typeof filled) =>
        escaped(some.map(([key, text]) => `${fields[key].label} ${text} ${unitOf(key)}`.trim()).join("; "));
      return [
        escaped(kind),
        escaped(name),
        words(filled.filter(([key]) => !isPriced(key))),
        words(filled.filter(([key]) => isPriced(key))),
      ];
    }),
  );
  return table(["Kind", "Choice", "Fills in (common sizes)", "Sample price"], rows);
}

const unitOf = (key: FieldKey) => (fields[key].reads === "name" ? "" : fields[key].unit);

export function stonePriceTable(): string {
  return table(
    ["Stone", "Sample price per ton"],
    exampleStonePrices.map(({ stone, perTon }) => [escaped(stone), escaped(perTon)]),
  );
}
