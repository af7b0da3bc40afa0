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
  again: "Press Draw once more",
  version: 1,
  read: (content) => readList(content, isRecord),
};

/** What is known of a workbook's drawings; readable after a sync. */
export interface KnownDrawings {
  /** None where they cannot be read. */
  readonly records: () => readonly DrawingRecord[];
  /**
   * Whether other records may be queued: asked before anything else is queued, which would be carried out all the same.
   *
   * @throws KeptFailure as {@link queueChange} does.
   */
  readonly refuseUnchangeable: (startOver?: boolean) => void;
  /**
   * Queues other records in the place of those that were read.
   *
   * @param startOver whether a list that cannot be read gives way.
   * @throws KeptFailure where it cannot be read and has to stay.
   */
  readonly queueChange: (records: readonly DrawingRecord[], startOver?: boolean) => void;
  /** As they stand there. */
  readonly text: () => string;
  /** Queues what stood there when they were read. */
  readonly queuePutBack: () => void;
}

/** Asks for the records of drawings. */
export function queueReadDrawings(context: Excel.RequestContext): KnownDrawings {
  const read = queueReadKept(context, DRAWINGS);
  const list = (startOver: boolean) => changeable(read.kept(), DRAWINGS, NO_ITEMS, startOver);
  return {
    records: () => itemsOf(read.kept()),
    text: read.text,
    refuseUnchangeable: (startOver = false) => {
      list(startOver);
    },
    queueChange: (records, startOver = false) => {
      queueWriteKept(context, DRAWINGS, listToKeep(list(startOver), records));
    },
    queuePutBack: () => context.workbook.settings.add(DRAWINGS.key, read.text()),
  };
}

/** What cannot be read loses no more than the tie between a picture and its block, until it is to be changed. */
function itemsOf(kept: Kept<KeptList<DrawingRecord>>): readonly DrawingRecord[] {
  return kept.state === "kept" ? kept.value.items : [];
}

/** The record of the picture of the block that stands at a cell. */
export function drawingAt(records: readonly DrawingRecord[], sheetId: string, { row, column }: Anchor) {
  return records.find((record) => record.sheetId === sheetId && record.row === row && record.column === column);
}

/**
 * The record of a block's picture: the one drawn where it stands, or, where it was moved since and no other block of
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
 * The records as they are now, with those that a write covered: another pane had noted them right before.
 *
 * @param known what that write went by; what is missing of it now was taken off since.
 */
export function withCovered(
  now: readonly DrawingRecord[],
  covered: readonly DrawingRecord[],
  known: readonly DrawingRecord[],
): DrawingRecord[] {
  const names = new Set([...now, ...known].map(({ shapeName }) => shapeName));
  return [...now, ...covered.filter(({ shapeName }) => !names.has(shapeName))];
}

function isRecord(value: unknown): value is DrawingRecord {
  if (!isObject(value)) return false;
  const { shapeName, sheetId, bedName, drawnFrom, row, column } = value;
  const isText = [shapeName, sheetId, bedName, drawnFrom].every((text) => typeof text === "string");
  return isText && [row, column].every((place) => typeof place === "number");
}
