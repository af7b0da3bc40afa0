import { type FieldKey, fields } from "../../quantities/bed/fields";
import { firstBedCosts, priceSettings, workSettings } from "../../quantities/job/jobAmounts";
import { amountText, dollarText, shareText } from "../numbers";
import type { FoundBed } from "./readJob";

const SETTINGS: readonly FieldKey[] = [...priceSettings, ...workSettings];
const MONEY: readonly FieldKey[] = ["minimumCharge", "crewRate"];

/**
 * What beds have of their own that a job's price doesn't take from them: the job has one crew, one set of trucks, and one
 * set of markups, those of its first bed, and a line's markup is typed on the job's own line.
 *
 * @param beds all worked out.
 * @returns a line for each, which names the bed and the setting.
 */
export function ownTerms(beds: readonly FoundBed[]): string[] {
  const [first, ...others] = beds;
  if (!first) return [];
  const differs = (bed: FoundBed, label: string, own: string, used: string) =>
    `${nameOf(bed)} has ${label} ${own}. The job takes ${used} from ${nameOf(first)}.`;
  const settings = others.flatMap((bed) =>
    SETTINGS.flatMap((key) => {
      const [own, used] = [numbersOf(bed)[key], numbersOf(first)[key]];
      return own === undefined || used === undefined || own === used
        ? []
        : [differs(bed, fields[key].label, shownAs(key, own), shownAs(key, used))];
    }),
  );
  const costs = others.flatMap((bed) =>
    firstBedCosts.flatMap((key) => {
      const [own, used] = [bed, first].map(({ block }) => block.lines.find((line) => line.key === key));
      return own?.unitCost === undefined || used?.unitCost === undefined || own.unitCost === used.unitCost
        ? []
        : [differs(bed, `${own.label}, unit cost`, dollarText(own.unitCost), dollarText(used.unitCost))];
    }),
  );
  const markups = beds.flatMap((bed) =>
    bed.block.lines.flatMap(({ key, label, typedMarkup }) =>
      key === undefined || typedMarkup === undefined
        ? []
        : [
            `${nameOf(bed)} has a markup of ${shareText(typedMarkup)} typed on its line ${label}. Type it on the job's line, too.`,
          ],
    ),
  );
  return [...settings, ...costs, ...markups];
}

const nameOf = ({ block: { name }, where }: FoundBed) => name || where;

const numbersOf = ({ worked }: FoundBed): Readonly<Partial<Record<FieldKey, number>>> => worked?.bed.numbers ?? {};

function shownAs(key: FieldKey, value: number): string {
  const { reads, unit } = fields[key];
  if (reads === "share") return shareText(value);
  return MONEY.includes(key) ? dollarText(value) : `${amountText(value)} ${unit}`;
}
