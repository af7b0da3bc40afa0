import { quoted } from "../../quantities/bed/evaluate";
import { fields } from "../../quantities/bed/fields";
import { edgingOf, secondOf } from "../../quantities/bed/form";
import { lines as bedLines } from "../../quantities/bed/lines";
import { hasPieces } from "../../quantities/edgingKinds";
import {
  asSoldRows,
  type BedRow,
  type BedRowKey,
  bedRows,
  type KindOf,
  kindRows,
  sandRows,
  secondRow,
  soldByRows,
} from "../../quantities/job/bedRows";
import {
  firstBedCosts,
  type JobAmount,
  type Kinds,
  kindAmounts,
  kindLists,
  priceSettings,
  sellsOtherwise,
  workSettings,
} from "../../quantities/job/jobAmounts";
import { must } from "../../quantities/must";
import type { DraftCell, DraftRow } from "../compose";
import { resultRow, sectionRow } from "../estimate/rows";
import type { FormatName } from "../plan";
import { fromBed } from "./bedCells";
import { jobHeadings, SAMPLE_WORDS } from "./jobHeadings";
import { across, printedJob } from "./jobPrinted";
import { type JobColumn, jobColumns, SECOND_EDGING, type SheetBed } from "./sheetBed";

/** A rate of the whole job, which follows its first bed until it is typed over. */
function settingRow(key: (typeof priceSettings | typeof workSettings)[number], [first]: readonly SheetBed[]): DraftRow {
  const { label, unit, reads } = fields[key];
  return resultRow(
    label,
    { content: `=${fromBed(`{${key}}`, must(first))}`, key, format: reads === "share" ? "share" : "general" },
    reads === "share" ? "" : unit,
    "from the first bed",
  );
}

/** Rates of the whole job that its lines rest on. */
export function settingRows(beds: readonly SheetBed[]): DraftRow[] {
  return [
    sectionRow(jobHeadings.settings, "", "Unit"),
    ...[...priceSettings, ...workSettings].map((key) => settingRow(key, beds)),
    ...firstBedCosts.map((key) => {
      const { label } = must(bedLines.find((line) => line.key === key));
      const content = `=${fromBed(`{${key}.unitCost}`, must(beds[0]))}`;
      return resultRow(
        `${label}, each`,
        { content, key: `first.${key}.unitCost`, format: "money" },
        "$",
        "from the first bed",
      );
    }),
  ];
}

/** Blank where a bed was taken out of the job. */
const TYPED_OVER_IF_ANY = "=AND(LEN({self})>0,NOT(ISFORMULA({self})))";

/** What the job takes of each bed, a column a bed. */
export function workingRows(beds: readonly SheetBed[], kinds: Kinds): DraftRow[] {
  const columns = jobColumns(beds);
  const perBed = (
    label: string,
    unit: string,
    key: string,
    content: (column: JobColumn, n: number) => string,
    format: FormatName = "two",
    look: DraftCell["look"] = "result",
  ): DraftRow => ({
    id: key,
    cells: [
      { content: label, look: "label" },
      { content: unit, look: "note" },
      ...columns.map(
        (column, index): DraftCell => ({
          content: content(column, index + 1),
          key: `${key}.${index + 1}`,
          format,
          look,
          warnWhen: TYPED_OVER_IF_ANY,
        }),
      ),
    ],
  });
  const has = (of: KindOf) => of !== "sand" || (kinds.sand ?? 0) > 0;
  const asSold = sellsOtherwise(kinds);
  const isTaken = ([key]: [string, BedRow]) =>
    (has("sand") || !sandRows.includes(key as BedRowKey)) && (asSold || !soldByRows.includes(key as BedRowKey));
  const taken = Object.entries(bedRows)
    .filter(isTaken)
    .map(([key, { shows, is, ...usual }]: [string, BedRow]) => {
      const second = secondRow(key as BedRowKey);
      const { label, unit } = (asSold && asSoldRows[key as BedRowKey]) || usual;
      return perBed(
        label,
        unit,
        `beds.${key}`,
        (column) => `=${fromBed(column.isSecond ? second : is, column)}`,
        ...formatOf(shows),
      );
    });
  const ranks = Object.entries(kindRows)
    .filter(([of]) => has(of as KindOf))
    .map(([of, row]) =>
      perBed(
        `Which kind of ${of}`,
        "",
        `kinds.${of}`,
        (column, n) => (hasKind(of as KindOf, column) ? rankFormula(of, row, n) : "=0"),
        "whole",
      ),
    );
  const lists = (Object.keys(kindLists) as (keyof typeof kindLists)[]).flatMap((of) =>
    Array.from({ length: kinds[of] }, (_, index) => `${of}${index + 1}`).flatMap((key) =>
      Object.entries(kindLists[of]).map(([list, { label, is }]) =>
        perBed(`${label} (${key})`, "", `${key}.${list}`, (_, n) => {
          const own = is.replace(/\{(\w+)\}/g, (_whole: string, name: string) => `{beds.${name}.${n}}`);
          return `=IF({beds.${kindRows[of]}.${n}}={${key}.kind},${own},0)`;
        }),
      ),
    ),
  );
  const without = (Object.keys(kindRows) as KindOf[])
    .filter(has)
    .map((of) => [of, kinds[of]] as const)
    .map(([of, count]) => `MAX(0,MAX(${across(`kinds.${of}`, beds)})-${count})`);
  return [
    {
      look: "section",
      id: "working",
      cells: [
        { content: jobHeadings.working },
        { content: "Unit", look: "textHeading" },
        ...columns.map((column): DraftCell => {
          const name = `{bed${beds.findIndex((bed) => isSameBed(bed, column)) + 1}.name}`;
          return { content: column.isSecond ? `=${name}&${quoted(SECOND_EDGING)}` : `=${name}`, look: "textHeading" };
        }),
      ],
    },
    ...taken,
    perBed(
      SAMPLE_WORDS,
      "",
      "beds.words",
      (bed) => (bed.isSecond ? '=""' : `=${fromBed("{headWords}", bed)}`),
      ...formatOf("words"),
    ),
    ...ranks,
    ...lists,
    sectionRow(jobHeadings.kinds, "", "Unit"),
    ...kindAmounts(kinds).map((amount) => kindRow(amount, beds)),
    resultRow("Kinds without a line", { content: `=${without.join("+")}`, key: "newKinds", format: "whole" }, "kinds"),
  ];
}

function formatOf(shows: BedRow["shows"]): [FormatName, DraftCell["look"]] {
  // A column is narrow, so it shows how the words begin.
  if (shows === "words") return ["general", "note"];
  return [shows ?? "two", "result"];
}

/** Whether a bed has a kind: one with a spade-cut edge has no edging to order, and only pavers have sand. */
function hasKind(of: KindOf, { form, isSecond }: JobColumn): boolean {
  const [first, second] = [edgingOf(form), secondOf(form)];
  if (of === "edging") return hasPieces(isSecond ? second : first);
  if (isSecond) return false;
  return of !== "sand" || first.inSand === true || second.inSand === true;
}

const isSameBed = (one: SheetBed, other: SheetBed) => one.cells === other.cells;

/** Numbers the kinds as they first come up; a bed of a kind that was there has none. */
function rankFormula(of: string, row: string, n: number): string {
  if (n === 1) return "=1";
  const before = `{beds.${row}.1}:{beds.${row}.${n - 1}}`;
  return `=IF(COUNTIF(${before},{beds.${row}.${n}})>0,0,MAX({kinds.${of}.1}:{kinds.${of}.${n - 1}})+1)`;
}

function kindRow({ key, label, unit, is, shows }: JobAmount, beds: readonly SheetBed[]): DraftRow {
  const [format] = formatOf(shows);
  return resultRow(`${label} (${key.split(".")[0]})`, { content: printedJob(is, beds), key, format }, unit);
}
