import type { FoundBlock } from "../../sheets/estimate/readBlock";
import { isObject, type Kept } from "../../sheets/kept";
import { type KeptList, listToKeep, NO_ITEMS, readList } from "../../sheets/keptList";
import type { Anchor } from "../../spreadsheet/areas";
import { changeable, type KeptSetting, queueReadKept, queueWriteKept } from "../settings/setting";

/** Which picture belongs to which block, kept with the workbook. */
export interface DrawingRecord {
  readonly shapeName: string;
  readonly sheetId: string;
  readonly bedName: string;
  /** The block's first cell when it was drawn, to tell blocks of one name apart. */
  readonly row: number;
  readonly column: number;
  /** The inputs it was drawn from, as text; another text means that it is out of date. */
  readonly drawnFrom: string;
}

export const DRAWINGS: KeptSetting<KeptList<DrawingRecord>> = {
  key: "Bedrow.drawings",
  what: "the list of drawings",
  again: "Press Draw again",
  version: 1,
  read: (content) => readList(content, isRecord),
};

/** Asks for the records of drawings; readable after the request. */
export function queueReadDrawings(context: Excel.RequestContext) {
  const read = queueReadKept(context, DRAWINGS);
  const list = (startOver: boolean) => changeable(read.kept(), DRAWINGS, NO_ITEMS, startOver);
  return {
    /** None where they can't be read. */
    records: (): readonly DrawingRecord[] => itemsOf(read.kept()),
    /** As they are kept. */
    text: read.text,
    /**
     * Checks whether other records may be queued: before anything else is queued, which would be done all the same.
     *
     * @param startOver whether a list that can't be read is replaced.
     * @throws KeptFailure where it can't be read and has to stay.
     */
    refuseUnchangeable: (startOver = false): void => {
      list(startOver);
    },
    /** Queues other records in the place of those that were read. Throws as `refuseUnchangeable` does. */
    queueChange: (records: readonly DrawingRecord[], startOver = false): void => {
      queueWriteKept(context, DRAWINGS, listToKeep(list(startOver), records));
    },
    /** Queues what was kept when they were read. */
    queuePutBack: (): void => {
      context.workbook.settings.add(DRAWINGS.key, read.text());
    },
  };
}

/** A workbook's drawings, as they were read. */
export type KnownDrawings = ReturnType<typeof queueReadDrawings>;

/** A list that can't be read only loses the tie between a picture and its block, until it is to be changed. */
function itemsOf(kept: Kept<KeptList<DrawingRecord>>): readonly DrawingRecord[] {
  return kept.state === "kept" ? kept.value.items : [];
}

/** The record of the picture of the block at a cell. */
export function drawingAt(records: readonly DrawingRecord[], sheetId: string, { row, column }: Anchor) {
  return records.find((record) => record.sheetId === sheetId && record.row === row && record.column === column);
}

/**
 * The record of a block's picture: the one drawn where the block is, or, where it was moved since and no other block of
 * the sheet has its name, the one with its name.
 *
 * @param blocks all blocks of its sheet.
 */
export function drawingOf(
  records: readonly DrawingRecord[],
  sheetId: string,
  block: FoundBlock,
  blocks: readonly FoundBlock[],
): DrawingRecord | undefined {
  const { name } = block.form;
  const here = drawingAt(records, sheetId, block.area);
  if (here?.bedName === name) return here;
  const isOnly = blocks.filter(({ form }) => form.name === name).length === 1;
  return isOnly ? records.find((record) => record.sheetId === sheetId && record.bedName === name) : undefined;
}

/**
 * The records as they are now, with those that a write has overwritten: another pane had added them right before.
 *
 * @param known what that write went by; what is missing of it now was removed since.
 */
export function withOverwritten(
  now: readonly DrawingRecord[],
  overwritten: readonly DrawingRecord[],
  known: readonly DrawingRecord[],
): DrawingRecord[] {
  const names = new Set([...now, ...known].map(({ shapeName }) => shapeName));
  return [...now, ...overwritten.filter(({ shapeName }) => !names.has(shapeName))];
}

function isRecord(value: unknown): value is DrawingRecord {
  if (!isObject(value)) return false;
  const { shapeName, sheetId, bedName, drawnFrom, row, column } = value;
  const isText = [shapeName, sheetId, bedName, drawnFrom].every((text) => typeof text === "string");
  return isText && [row, column].every((place) => typeof place === "number");
}
