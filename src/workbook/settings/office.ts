import { readKeptText, textToKeep } from "../../sheets/kept";
import { type OfficeRecord, officeRecordOf } from "../../sheets/office/record";
import { changeSetting } from "../change/changeSetting";
import { inWorkbook } from "../failure";
import { changeable, damagedMessage, type KeptSetting, laterVersionMessage, queueReadKept } from "./setting";

export const OFFICE: KeptSetting<OfficeRecord> = {
  key: "Bedrow.office",
  what: "the note of which office settings it uses",
  again: "Do it again",
  // 1 had none of the office's lists, and 2 no units of stone.
  version: 3,
  read: officeRecordOf,
};

/** Which office settings a workbook uses; or why that can't be read. */
export interface KnownOffice {
  readonly record?: OfficeRecord;
  readonly why?: string;
  /** Whether loading settings may replace what can't be read. */
  readonly mayReplace?: boolean;
}

/** Which office settings this workbook uses. One request. */
export async function readOfficeRecord(): Promise<KnownOffice> {
  return inWorkbook(async (context) => {
    const read = queueReadKept(context, OFFICE);
    await context.sync();
    const kept = read.kept();
    if (kept.state === "kept") return { record: kept.value };
    if (kept.state === "none") return {};
    const isLater = kept.state === "later";
    return { why: isLater ? laterVersionMessage(OFFICE.what) : damagedMessage(OFFICE.what), mayReplace: !isLater };
  });
}

/**
 * Keeps which office settings the workbook uses. Two requests.
 *
 * @param startOver whether a note that can't be read is replaced.
 * @returns the text of the one before, for {@link restoreOfficeText}.
 * @throws KeptFailure where it can't be read and has to stay.
 */
export async function keepOfficeRecord(record: OfficeRecord, startOver: boolean): Promise<string> {
  return inWorkbook((context) =>
    changeSetting(context, OFFICE.key, (text) => {
      changeable<OfficeRecord | undefined>(readKeptText(text, OFFICE), OFFICE, undefined, startOver);
      return { text: textToKeep(record, OFFICE), result: text };
    }),
  );
}

/**
 * Puts the text of a note back, unless another pane has changed it since. Two requests.
 *
 * @param after the text that is there now.
 */
export async function restoreOfficeText(before: string, after: string): Promise<void> {
  await inWorkbook((context) =>
    changeSetting(context, OFFICE.key, (text) => ({ text: text === after ? before : text, result: undefined })),
  );
}
