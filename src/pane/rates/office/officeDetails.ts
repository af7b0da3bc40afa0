import { type OfficeTextKey, officeTextKeys, officeTexts, shownText } from "../../../sheets/office/officeTexts";
import { withoutHidden } from "../../../sheets/templates/hiddenCharacters";
import { readStored, type StoreTrouble, writeStored } from "../../keep/stored";
import { type JobDetails, startingDetails, storedDetails } from "../../papers/details";

/** What of a job's details belongs to the office: every text of its file is one of them. */
const carried: readonly (keyof JobDetails & OfficeTextKey)[] = officeTextKeys;

type Texts = Readonly<Record<string, string>>;

/** The letterhead and terms of this browser, and why they can't be read, if they can't. */
export function storedTexts(): { readonly details: JobDetails; readonly trouble?: StoreTrouble } {
  const { value, trouble } = readStored(storedDetails);
  return { details: value ?? startingDetails, ...(trouble && { trouble }) };
}

/** The letterhead and terms for a file, without characters that don't show; what belongs to one job stays behind. */
export function textsToSave(details: JobDetails): Texts {
  return Object.fromEntries(carried.map((key) => [key, withoutHidden(details[key].replaceAll("\t", " "))]));
}

/** What a file would change in the letterhead and terms, in words. */
export function textDifferences(texts: Texts, details: JobDetails): string[] {
  return changedKeys(texts, details).map(
    (key) => `${officeTexts[key].label}: ${shownText(key, details[key])} → ${shownText(key, texts[key] ?? "")}`,
  );
}

/** Texts in a file that this version doesn't have. */
export function unknownTexts(texts: Texts): string[] {
  return Object.keys(texts).filter((key) => !(carried as readonly string[]).includes(key));
}

function changedKeys(texts: Texts, details: JobDetails) {
  return carried.filter((key) => Object.hasOwn(texts, key) && texts[key] !== details[key]);
}

/** Letterhead and terms that were loaded: what they were, and what they became. */
export interface LoadedTexts {
  readonly before: JobDetails;
  readonly after: JobDetails;
}

/** Keeps a file's letterhead and terms in this browser. @returns why not, if it can't. */
export function loadTexts(texts: Texts): LoadedTexts | { readonly trouble: StoreTrouble } {
  const { details: before } = storedTexts();
  const taken = Object.fromEntries(changedKeys(texts, before).map((key) => [key, texts[key]]));
  const after: JobDetails = { ...before, ...taken };
  const trouble = writeStored(storedDetails, before, after, false);
  return trouble ? { trouble } : { before, after };
}

/** Puts the letterhead and terms back; what was typed since stays. */
export function unloadTexts({ before, after }: LoadedTexts): void {
  const { details: there } = storedTexts();
  const loaded = carried.filter((key) => before[key] !== after[key] && there[key] === after[key]);
  const back: JobDetails = { ...there, ...Object.fromEntries(loaded.map((key) => [key, before[key]])) };
  writeStored(storedDetails, there, back, false);
}
