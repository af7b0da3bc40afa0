import { type DrawingRecord, drawingAt, type KnownDrawings, queueReadDrawings, withCovered } from "./drawingRecords";
import type { Inserted } from "./inserted";
import { queueShapes } from "./pictures";
import { withPatience } from "./writing";

/**
 * Queues that the drawings of parts are no longer noted, where one is.
 *
 * @param known the drawings as they were read last.
 * @returns what takes off, after the sync, a drawing that another pane has made of one of them meanwhile.
 */
export function queueDrawingsOff(context: Excel.RequestContext, known: KnownDrawings, parts: readonly Inserted[]) {
  const covered = queueReadDrawings(context);
  const isGone = ({ shapeName }: DrawingRecord) => parts.some(({ drawing }) => drawing?.shapeName === shapeName);
  const before = known.records();
  const hasWritten = before.some(isGone);
  if (hasWritten) known.queueChange(before.filter((record) => !isGone(record)));
  const lateOf = (records: readonly DrawingRecord[]) =>
    parts.flatMap(
      ({ part }) =>
        drawingAt(
          records.filter((record) => !isGone(record)),
          part.sheetId,
          part.area,
        ) ?? [],
    );
  return {
    takeOff: async (): Promise<void> => {
      const late = lateOf(covered.records());
      const isAlone = !hasWritten || covered.text() === known.text();
      if (isAlone && late.length === 0) return;
      await withPatience(async () => {
        const worksheets = late.map(({ sheetId }) => context.workbook.worksheets.getItemOrNullObject(sheetId));
        const shapes = worksheets.map(queueShapes);
        const now = queueReadDrawings(context);
        await context.sync();
        now.refuseUnchangeable();
        const names = late.map(({ shapeName }) => shapeName);
        worksheets.forEach((worksheet, index) => {
          if (!worksheet.isNullObject) shapes[index]!.remove(({ name }) => names.includes(name));
        });
        const noted = withCovered(now.records(), hasWritten ? covered.records() : [], before);
        now.queueChange(noted.filter((record) => !isGone(record) && !names.includes(record.shapeName)));
        await context.sync();
      });
    },
  };
}
