import { declarations } from "../functions/declarations";
import { kindWords } from "../functions/declare";
import { DEPTH_LIMITS } from "../quantities/bed/depthVerdict";
import { fieldNote } from "../quantities/bed/fieldNotes";
import {
  crewFields,
  depthFields,
  type Field,
  type FieldKey,
  moneyFields,
  secondFields,
  shapeFields,
  supplyFields,
} from "../quantities/bed/fields";
import { must } from "../quantities/must";
import { depthWords, SOURCED_SOILS, SOURCED_STONES } from "../quantities/tableSources";
import {
  CUBIC_FEET_PER_CUBIC_YARD,
  KILOGRAMS_PER_POUND,
  METERS_PER_YARD,
  POUNDS_PER_SHORT_TON,
  SQUARE_FOOT_INCHES_PER_CUBIC_YARD,
} from "../quantities/units";
import { addressOf } from "./functionPage";
import { escaped, link, number, section, table } from "./html";
import { checkingNumbers } from "./numbers/checking";
import { choiceTable, stonePriceTable } from "./numbers/choices";
import { edgingTable } from "./numbers/edging";
import { estimatingNumbers } from "./numbers/estimating";
import { layingNumbers } from "./numbers/laying";
import { cautionTable, holidayTable } from "./numbers/outside";
import { soldByTable } from "./numbers/soldBy";
import { HOW_SURE, OUR_CHOICE, statedTable } from "./numbers/stated";
import { isSilentZero, ZERO_MEANS } from "./numbers/zeros";
import type { Page } from "./page";

/** Where the numbers come from: every value of every table, from the tables themselves. */
export function numbersPage(): Page {
  return {
    address: "numbers.html",
    title: "Where the numbers come from",
    about: "Every built-in value, where it comes from, and how sure we are.",
    content: [
      `<dl>
<dt>read in the source</dt><dd>we read the figure in the publication named</dd>
<dt>from memory</dt><dd>we know the figure from the publication named but didn't look it up again</dd>
<dt>common practice</dt><dd>usual in the trade; no publication behind it</dd>
<dt>${OUR_CHOICE}</dt><dd>someone had to draw a line, and we did</dd>
<dt>sample</dt><dd>a made-up price or pay rate, there until you type your own. An estimate also depends on the weights, paces, laps, waste, and markups in the other tables</dd>
<dt>${MADE_UP}</dt><dd>made up, about the usual size</dd>
</dl>`,
      section("Stone", STONE_NOTE, stoneTable()),
      section("Depths and cautions of coverings", coveringTable()),
      section("Soil", "<p>How much more room soil takes once you dig it.</p>", soilTable()),
      section("Units", unitTable()),
      section("Defaults for omitted arguments", "<p>All common practice.</p>", defaultTable()),
      section("Omitted or blank means 0", ZERO_NOTE, zeroTable()),
      section("Typical ranges", USUAL_NOTE, usualTable()),
      section("Where an estimate starts", STARTING_NOTE, ...startingTables()),
      section("Edging kinds", EDGING_NOTE, edgingTable()),
      section("What stone is sold by", SOLD_BY_NOTE, soldByTable()),
      section("Ready choices", choiceTable(), stonePriceTable()),
      section("Limits in estimates and job documents", statedTable(estimatingNumbers)),
      section("How beds are laid out", statedTable(layingNumbers)),
      section("What the check and job rows use", CHECK_NOTE, statedTable(checkingNumbers)),
      section("Federal holidays", HOLIDAY_NOTE, holidayTable()),
      `<div id="cautions">${section("Cautions", CAUTION_NOTE, cautionTable())}</div>`,
    ].join("\n"),
  };
}

/** Of people, carts and distances. */
const MADE_UP = "sample, of a common size";

/** Stone whose ordinary range is that of its source, dry to wet. */
const RANGE_OF_SOURCE = ["gravel"];

const STONE_NOTE =
  "<p>Loose and dry, as delivered. Your supplier’s scale ticket beats any row: weight changes with the quarry, the size, and how wet the stone is. Wet stone weighs up to a fifth more.</p>";
const USUAL_NOTE = `<p>The check points out anything outside these; it blocks nothing. Common practice. A depth under ${DEPTH_LIMITS.leastIn} in lets fabric show, one over ${DEPTH_LIMITS.mostIn} in wastes stone, and stone larger than two-thirds of the depth lets fabric show, too.</p>`;
const ZERO_NOTE =
  "<p>For these, an omitted argument, a blank cell, and a typed 0 all mean the same. There's no error, so check that it's what you want.</p>";
const CHECK_NOTE = "<p>Anything outside these gets pointed out or asked about. Nothing is blocked.</p>";
const HOLIDAY_NOTE =
  "<p>5 U.S.C. 6103, read in the source. A holiday on Saturday is observed the Friday before, on Sunday the Monday after. First years of two of them are from memory. You can turn them off and add your own.</p>";
const CAUTION_NOTE = "<p>Reminders. Local codes, the locator’s ticket, and licensed practice come first.</p>";
const EDGING_NOTE =
  "<p>What a bed with edging of this kind starts with. Metal edging starts with the defaults above. Joints of pavers are 1/8 in and sand is 1 in deep: Brick Industry Association, Technical Note 14A, 1/16 to 3/16 in and 3/4 to 1 in.</p>";
const SOLD_BY_NOTE =
  "<p>Steps, minimums, and sizes of bags are common practice. Mulch starts with the cubic yard: NIST Handbook 130, Method of Sale of Commodities, has it sold by volume, as the Hamilton County (OH) Auditor states; Ohio has stone sold by weight, and Virginia lets it be sold by the cubic yard (Va. Code 3.2-5622). An order shows tons and cubic yards, so it fits either.</p>";
const STARTING_NOTE =
  "<p>What a new estimate starts with until you type something else. Prices and pay rates are made-up samples.</p>";

function stoneTable(): string {
  return table(
    ["Covering", "Tons per cu yd", "Pounds per cu yd", "Typical range, tons", "Range from", "Source", "How sure"],
    SOURCED_STONES.map(({ name, tonsPerYard, low, high, source, sure }) => [
      escaped(name),
      number(tonsPerYard),
      number(tonsPerYard * POUNDS_PER_SHORT_TON),
      `${number(low)} to ${number(high)}`,
      RANGE_OF_SOURCE.includes(name) ? "the source’s, dry to wet" : HOW_SURE.practice,
      escaped(source),
      HOW_SURE[sure],
    ]),
  );
}

/** How deep each covering usually is, and what to mind about it. */
function coveringTable(): string {
  return table(
    ["Covering", "Usual depth", "Depth from", "Cautions"],
    SOURCED_STONES.map(({ name, usualDepth, cautions }) => [
      escaped(name),
      usualDepth ? depthWords(usualDepth) : "by its size",
      escaped(usualDepth?.source ?? ""),
      escaped(cautions.map(({ about }) => about).join(", ")),
    ]),
  );
}

function soilTable(): string {
  return table(
    ["Soil", "Swell", "Source", "How sure"],
    SOURCED_SOILS.map(({ name, swell, source, sure }) => [
      escaped(name),
      percent(swell),
      escaped(source),
      HOW_SURE[sure],
    ]),
  );
}

const percent = (share: number) => `${number(share * 100)}%`;

function unitTable(): string {
  const exact = "exact: NIST Handbook 44, Appendix C; NIST SP 811";
  const derived = "exact, from the rows above";
  return table(
    ["Relation", "Value", "Source"],
    [
      ["1 yard in meters", number(METERS_PER_YARD), exact],
      ["1 pound in kilograms", String(KILOGRAMS_PER_POUND), exact],
      ["1 short ton in pounds", number(POUNDS_PER_SHORT_TON), exact],
      ["1 cubic yard in cubic feet", number(CUBIC_FEET_PER_CUBIC_YARD), derived],
      ["Square feet a cubic yard covers 1 in deep", number(SQUARE_FOOT_INCHES_PER_CUBIC_YARD), derived],
    ],
  );
}

function defaultTable(): string {
  const taken = new Map<string, { readonly cells: readonly string[]; readonly functions: string[] }>();
  for (const { name, arguments: given } of declarations) {
    for (const { name: argument, fallback, kind } of given) {
      if (fallback === undefined || fallback === "" || fallback === 0) continue;
      const key = `${argument} ${fallback}`;
      const value = typeof fallback === "boolean" ? String(fallback).toUpperCase() : String(fallback);
      const unit = typeof fallback === "number" ? kindWords(kind) : "";
      if (!taken.has(key)) taken.set(key, { cells: [escaped(argument), escaped(value), escaped(unit)], functions: [] });
      must(taken.get(key)).functions.push(link(addressOf(name), name));
    }
  }
  const rows = [...taken.values()].map(({ cells, functions }) => [...cells, functions.join(", ")]);
  return table(["Argument", "Default", "Unit", "Functions"], rows);
}

/** The arguments for which 0 is taken without a word, and what that means. */
function zeroTable(): string {
  const functions = new Map<string, string[]>();
  for (const { name, arguments: given } of declarations)
    for (const argument of given.filter(isSilentZero))
      functions.set(argument.name, [...(functions.get(argument.name) ?? []), link(addressOf(name), name)]);
  return table(
    ["Argument", "What 0 means", "Functions"],
    [...functions].map(([argument, names]) => [
      escaped(argument),
      escaped(ZERO_MEANS[argument] ?? ""),
      names.join(", "),
    ]),
  );
}

function usualTable(): string {
  const rows = new Map<string, string[]>();
  for (const { arguments: given } of declarations)
    for (const { name, kind, usual } of given)
      if (usual) rows.set(`${name} ${usual}`, [escaped(name), `${usual[0]} to ${usual[1]}`, kindWords(kind)]);
  return table(["Argument", "Typical", "Unit"], [...rows.values()]);
}

/** Groups of fields, and what they rest on where a field's own note says nothing else. */
const GROUPS: readonly {
  readonly title: string;
  readonly fields: Readonly<Record<string, Field>>;
  readonly rests: string;
}[] = [
  { title: "Measure", fields: shapeFields, rests: HOW_SURE.practice },
  { title: "Depth, stone, and digging", fields: depthFields, rests: HOW_SURE.practice },
  { title: "Supplies", fields: supplyFields, rests: HOW_SURE.practice },
  { title: "Second edging", fields: secondFields, rests: HOW_SURE.practice },
  { title: "Crew", fields: crewFields, rests: MADE_UP },
  { title: "Money", fields: moneyFields, rests: "sample" },
];

function startingTables(): string[] {
  return GROUPS.map(({ title, fields, rests }) => {
    const rows = Object.entries(fields)
      .filter(([, { initial }]) => initial !== "" && initial !== "0")
      .map(([key, { label, initial, unit }]) => [
        escaped(label),
        escaped(initial),
        escaped(unit),
        escaped(fieldNote(key as FieldKey)),
        rests,
      ]);
    return rows.length === 0
      ? ""
      : `<h3>${title}</h3>\n${table(["Field", "Starts at", "Unit", "Note", "Based on"], rows)}`;
  });
}
