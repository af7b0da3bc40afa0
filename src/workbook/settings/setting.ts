import { type Keeping, type Kept, readKeptText, textToKeep } from "../../sheets/kept";
import { WorkbookFailure } from "../failure";

/** Something that is kept in the workbook, as the text of one of its settings. */
export interface KeptText<T> extends Keeping<T> {
  readonly key: string;
}

/** What is kept, and added to or changed. */
export interface KeptSetting<T> extends KeptText<T> {
  /** Its name for the person, such as "the list of drawings". */
  readonly what: string;
  /** What the person does to replace it where it is damaged, such as "Press Draw again". */
  readonly again: string;
}

/** What the workbook keeps cannot be read, and was left alone. */
export class KeptFailure extends WorkbookFailure {
  /** @param canStartOver whether the same action again may replace it; what a later version wrote stays. */
  constructor(
    message: string,
    readonly canStartOver: boolean,
  ) {
    super(message);
  }
}

/** Asks for the text of a setting; readable after the request, and "" where there is none. */
export function queueReadText(context: Excel.RequestContext, key: string): () => string {
  const setting = context.workbook.settings.getItemOrNullObject(key);
  setting.load("value");
  return () => (setting.isNullObject ? "" : String(setting.value));
}

/** Asks for what is kept; readable after the request. */
export function queueReadKept<T>(context: Excel.RequestContext, setting: KeptText<T>) {
  const text = queueReadText(context, setting.key);
  return {
    /** As it is kept. */
    text,
    kept: (): Kept<T> => readKeptText(text(), setting),
  };
}

/** @param kept as it is to be read again. */
export function queueWriteKept<T>(context: Excel.RequestContext, setting: KeptText<T>, kept: unknown): void {
  context.workbook.settings.add(setting.key, textToKeep(kept, setting));
}

/**
 * What is kept, where it may be changed; `blank` where nothing is.
 *
 * @param startOver whether what is damaged is replaced.
 * @throws KeptFailure where it has to stay as it is.
 */
export function changeable<T>(kept: Kept<T>, { what, again }: KeptSetting<T>, blank: T, startOver: boolean): T {
  if (kept.state === "kept") return kept.value;
  if (kept.state === "none" || (kept.state === "damaged" && startOver)) return blank;
  if (kept.state === "later") throw new KeptFailure(laterVersionMessage(what), false);
  throw new KeptFailure(`${damagedMessage(what)} ${again} to discard it and start a new one.`, true);
}

export const laterVersionMessage = (what: string): string =>
  `A newer version of this add-in saved ${what} in this workbook. It wasn't changed. Use that version to change it.`;

export const damagedMessage = (what: string): string =>
  `${what.charAt(0).toUpperCase()}${what.slice(1)} in this workbook is damaged and can't be read. It wasn't changed.`;
