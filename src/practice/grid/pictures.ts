import type { CustomData } from "@univerjs/core";
import { pixelsToPoints, pointsToPixels } from "./lengths";
import type { OpenGrid } from "./library";
import type { Picture, PicturesPort } from "./port";
import { sheetOf } from "./sheetOf";

type Words = Pick<Picture, "name" | "altText">;

/** Pictures over the cells. The grid has no room for a picture's name and words; they are kept with the sheet. */
export class GridPictures implements PicturesPort {
  constructor(private readonly grid: OpenGrid) {}

  list(sheetId: string): Picture[] {
    const { injector, library, workbook } = this.grid;
    const drawings = injector.get(library.drawing.ISheetDrawingService);
    const words = this.words(sheetId);
    const sheet = sheetOf(this.grid, sheetId);
    return sheet.getImages().map((image) => {
      const id = image.getId();
      const drawing = drawings.getDrawingByParam({ unitId: workbook.getId(), subUnitId: sheetId, drawingId: id });
      const { width = 0, height = 0 } = drawing?.transform ?? {};
      // The grid's own coordinates count its headings in; the cell at the corner does not.
      const { row = 0, rowOffset = 0, column = 0, columnOffset = 0 } = drawing?.sheetTransform.from ?? {};
      return {
        id,
        name: words[id]?.name ?? id,
        altText: words[id]?.altText ?? "",
        left: pixelsToPoints(distanceTo(column, (index) => sheet.getColumnWidth(index)) + columnOffset),
        top: pixelsToPoints(distanceTo(row, (index) => sheet.getRowHeight(index)) + rowOffset),
        width: pixelsToPoints(width),
        height: pixelsToPoints(height),
      };
    });
  }

  async add(sheetId: string, dataUrl: string, { width, height }: Pick<Picture, "width" | "height">): Promise<string> {
    const sheet = this.measured(sheetId);
    const image = await sheet
      .newOverGridImage()
      .setSource(dataUrl, this.grid.library.core.ImageSourceType.BASE64)
      .setWidth(pointsToPixels(width))
      .setHeight(pointsToPixels(height))
      .buildAsync();
    sheet.insertImages([image]);
    return image.drawingId;
  }

  async update(sheetId: string, id: string, change: Partial<Omit<Picture, "id">>): Promise<void> {
    const before = this.list(sheetId).find((picture) => picture.id === id);
    const sheet = this.measured(sheetId);
    const image = sheet.getImageById(id);
    if (!before || !image) throw new Error(`The picture ${id} is gone.`);
    const picture = { ...before, ...change };
    this.setWords(sheetId, { ...this.words(sheetId), [id]: { name: picture.name, altText: picture.altText } });
    const row = cellAt(pointsToPixels(picture.top), (index) => sheet.getRowHeight(index));
    const column = cellAt(pointsToPixels(picture.left), (index) => sheet.getColumnWidth(index));
    const moved = await image
      .toBuilder()
      .setRow(row.index)
      .setRowOffset(row.offset)
      .setColumn(column.index)
      .setColumnOffset(column.offset)
      .setWidth(pointsToPixels(picture.width))
      .setHeight(pointsToPixels(picture.height))
      .buildAsync();
    sheet.updateImages([moved]);
  }

  remove(sheetId: string, id: string): void {
    const sheet = sheetOf(this.grid, sheetId);
    const image = sheet.getImageById(id);
    if (image) sheet.deleteImages([image]);
    const { [id]: _gone, ...rest } = this.words(sheetId);
    this.setWords(sheetId, rest);
  }

  /**
   * A sheet whose rows and columns the grid has measured as they are now. It ties a picture to the cells at its corners
   * by what it measured last, and of a sheet that was never in front that is the sheet as it was made: a picture on
   * columns that have been widened since would be drawn stretched.
   */
  private measured(sheetId: string) {
    const { injector, library, workbook } = this.grid;
    const measures = injector.get(library.sheets.SheetSkeletonService).getSkeleton(workbook.getId(), sheetId);
    measures?.makeDirty(true);
    measures?.calculate();
    return sheetOf(this.grid, sheetId);
  }

  private words(sheetId: string): Record<string, Words> {
    return (sheetOf(this.grid, sheetId).getCustomMetadata()?.pictures as Record<string, Words> | undefined) ?? {};
  }

  private setWords(sheetId: string, pictures: Record<string, Words>): void {
    const sheet = sheetOf(this.grid, sheetId);
    const custom: CustomData = { ...sheet.getCustomMetadata(), pictures };
    sheet.setCustomMetadata(custom);
  }
}

/** The row or column that lies at a distance from the sheet's corner, and how far into it. */
function cellAt(distance: number, sizeOf: (index: number) => number): { index: number; offset: number } {
  let index = 0;
  let offset = Math.max(0, distance);
  while (sizeOf(index) > 0 && offset >= sizeOf(index)) {
    offset -= sizeOf(index);
    index += 1;
  }
  return { index, offset };
}

function distanceTo(index: number, sizeOf: (index: number) => number): number {
  return Array.from({ length: index }, (_, before) => sizeOf(before)).reduce((sum, size) => sum + size, 0);
}
