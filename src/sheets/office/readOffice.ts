import { type Schema, Validator } from "@cfworker/json-schema";
import { listOf } from "../../quantities/bed/officeLists";
import { pricedRates, type RateKey, rateNames } from "../../quantities/bed/rates";
import { readListed, readRate, readStonePrice, readStoneWeight } from "../../quantities/bed/readRate";
import { readDate } from "../../quantities/dateText";
import { Problem } from "../../quantities/problem";
import { isObject } from "../kept";
import { damageIn, parsedFile, type RefusedFile, refusedFile } from "../ownFile";
import { hiddenCharacter } from "../templates/hiddenCharacters";
import { MOST_CHARACTERS, thousands } from "../templates/limits";
import schema from "./office-settings-1.schema.json";
import { OFFICE_FORMAT, OFFICE_VERSION, type OfficeFile, type OfficeRates, type OfficeRow } from "./officeFile";
import { columnsOf, isFileDay, listNamed } from "./officeRows";
import { officeTextOf } from "./officeTexts";

/** Office settings, or why there are none, in sentences for the person. */
export type ReadOffice = { readonly ok: true; readonly file: OfficeFile } | RefusedFile;

const validator = new Validator(schema as Schema, "2020-12", true);

/** Rates by the lowercase names of their cells. */
const keyOfName: ReadonlyMap<string, RateKey> = new Map(
  Object.entries(rateNames).map(([key, name]) => [name.toLowerCase(), key as RateKey]),
);

/** The rate whose cell has a name; undefined for a name that this version doesn't have. */
export function rateNamed(name: string): RateKey | undefined {
  return keyOfName.get(name.toLowerCase());
}

/**
 * Reads office settings from the text of a file.
 *
 * @param text the file, at most a million characters.
 * @returns settings in which every number is within the limits of the Rates sheet, and no text can turn into a formula;
 *   or why the file is refused. Nothing else comes of it.
 * @example readOffice("[]") // { ok: false, why: ["This isn't a Bedrow office settings file."], more: 0 }
 */
export function readOffice(text: string): ReadOffice {
  if (text.length > MOST_CHARACTERS) {
    return refusedFile([`The file is too large: the limit is ${thousands(MOST_CHARACTERS)} characters.`]);
  }
  try {
    const read = officeOf(parsedFile(text));
    if (!read.ok) return read;
    const { rates, texts, pastJobs } = read.file;
    return rates || texts || pastJobs ? read : refusedFile(["It holds no rates, no letterhead, and no past jobs."]);
  } catch {
    return refusedFile(["The file is damaged, or isn't a Bedrow office settings file: its text can't be read (JSON)."]);
  }
}

/** The same for content that isn't text, which may also be a version alone. */
export function officeOf(content: unknown): ReadOffice {
  const { format, version } = isObject(content) ? content : {};
  if (format !== OFFICE_FORMAT) return refusedFile(["This isn't a Bedrow office settings file."]);
  if (typeof version === "number" && version > OFFICE_VERSION) {
    return refusedFile([
      `A newer version of the add-in saved this file (file version ${version}; this add-in reads ${OFFICE_VERSION}). Update the add-in, then load it again.`,
    ]);
  }
  const damage = damageIn(validator, content, "office settings do");
  if (damage) return refusedFile([damage]);
  const file = content as OfficeFile;
  const faults = [...versionFaults(file), ...ratesFaults(file.rates), ...textFaults(file), ...pastJobFaults(file)];
  return faults.length === 0 ? { ok: true, file } : refusedFile(faults);
}

function versionFaults({ office, saved }: OfficeFile): string[] {
  const isBlank = office.trim() !== office || office === "";
  return [
    ...(isBlank ? ["The office's name is blank, or has spaces around it."] : []),
    ...hiddenIn("The office's name", office),
    ...dayFault("The day it was saved", saved),
  ];
}

function ratesFaults(rates: OfficeRates | undefined): string[] {
  if (!rates) return [];
  const { values, samples, stones } = rates;
  const single = Object.entries(values).flatMap(([name, value]) => {
    const key = rateNamed(name);
    const hidden = typeof value === "string" ? hiddenIn(name, value) : [];
    if (hidden.length > 0 || !key) return hidden;
    if (name !== rateNames[key]) return [`${name} isn't the name of a rate. Did you mean ${rateNames[key]}?`];
    return problemsOf(readRate(key, value, false));
  });
  const notPriced = samples.filter((name) => {
    const key = rateNamed(name);
    return key !== undefined && !(pricedRates as readonly RateKey[]).includes(key);
  });
  const listed = stones.flatMap(({ name, perTon, soldBy, price, tonsPerYard, orderStep, orderMinimum }) => {
    const isPriced = soldBy === undefined ? price === undefined : perTon === undefined;
    return [
      ...(isPriced ? [] : [`The stone “${name}” has perTon, or soldBy with price, and not both.`]),
      ...problemsOf(readStonePrice(name, soldBy === undefined ? perTon : price, false)),
      ...problemsOf(readStoneWeight(name, tonsPerYard)),
      ...problemsOf(readListed("orderStep", name, orderStep, false)),
      ...problemsOf(readListed("orderMinimum", name, orderMinimum, false)),
    ];
  });
  return [
    ...single,
    ...notPriced.map((name) => `${name} can't be a sample: it isn't a price.`),
    ...nameFaults("stone", stones),
    ...listed,
    ...Object.entries(rates.lists ?? {}).flatMap(([name, rows]) => listFaults(name, rows)),
  ];
}

/** What is wrong with the names of a list's rows. */
function nameFaults(what: string, rows: readonly { readonly name: string }[]): string[] {
  const named = new Set<string>();
  return rows.flatMap(({ name }) => {
    const isTwice = named.has(name.toLowerCase());
    named.add(name.toLowerCase());
    return [
      ...wordFaults(`The ${what} “${name}”`, name),
      ...(/ {2}| $/.test(name) ? [`The ${what} “${name}” has too many spaces in its name.`] : []),
      ...(isTwice ? [`The ${what} ${name} is listed twice.`] : []),
    ];
  });
}

function listFaults(listName: string, rows: readonly OfficeRow[]): string[] {
  const key = listNamed(listName);
  const unread = rows.flatMap(({ cells }) =>
    Object.values(cells).flatMap((value) => hiddenIn(listName, String(value))),
  );
  if (!key || unread.length > 0) return unread;
  const columns = columnsOf(key);
  const cellFaults = rows.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([column, value]) => {
      const known = columns.find((one) => one.name === column);
      if (!known) return [];
      if (known.field) return problemsOf(readListed(known.field, name, value, false));
      const what = `What ${name} has in ${column}`;
      if (isFileDay(key, column, value)) return dayFault(what, value);
      return wordFaults(what, String(value));
    }),
  );
  return [...nameFaults(`row for ${listOf(key).of}`, rows), ...cellFaults];
}

function textFaults({ texts = {} }: OfficeFile): string[] {
  return Object.entries(texts).flatMap(([key, text]) => {
    const known = officeTextOf(key);
    if (!known) return [];
    const { label, most, mayBreak, choices } = known;
    if (text.length > most) return [`${label} is longer than ${thousands(most)} characters.`];
    if (choices && !Object.hasOwn(choices, text)) return [`${label} can't be “${text}”.`];
    return hiddenIn(label, text, mayBreak);
  });
}

function pastJobFaults({ pastJobs = [] }: OfficeFile): string[] {
  return pastJobs.flatMap(({ job, measure, unit, date }, index) => {
    const what = `Past job ${index + 1}`;
    return [
      ...[job, measure, unit].flatMap((text) => wordFaults(`“${text}” of ${what.toLowerCase()}`, text)),
      ...(date === undefined ? [] : dayFault(`The day of ${what.toLowerCase()}`, date)),
    ];
  });
}

/** What begins a formula, also where it is of full width, and what a program may read as an error. */
const COULD_TURN = /^(?:[\s=+\-@'＝＋－＠]|#[A-Za-z])/;

/** Text that goes into a cell has to stay text, whatever a program makes of it. */
function wordFaults(what: string, text: string): string[] {
  const turns = COULD_TURN.test(text) ? [`${what} can't begin with “${text.charAt(0)}”. Change its name.`] : [];
  return [...turns, ...hiddenIn(what, text)];
}

function hiddenIn(what: string, text: string, mayBreak = false): string[] {
  const hidden = hiddenCharacter(text, mayBreak);
  return hidden ? [`${what} has a character that doesn't show (${hidden}).`] : [];
}

function dayFault(what: string, day: string): string[] {
  try {
    readDate(day, what);
    return [];
  } catch (error) {
    if (error instanceof Problem) return [error.message];
    throw error;
  }
}

function problemsOf(rate: { readonly problem?: string | undefined } | undefined): string[] {
  return rate?.problem === undefined ? [] : [rate.problem];
}
