import { withoutPrefixes } from "../../../xlsx/read/xml";
import { emusPerPixel } from "../../../xlsx/style";
import { addDrawing, addImage } from "../../../xlsx/write/book";
import { anchorXml, DRAWING_NAMES } from "../../../xlsx/write/drawing";
import type { PackageParts } from "../../../xlsx/write/package";
import type { NewPicture } from "../../../xlsx/write/sheet";
import type { SheetEdits } from "../../../xlsx/write/sheetEdit";
import type { Saving } from "../context";
import { anchorsIn } from "../open/pictures";
import { picturesToFile } from "./pictures";

/** Ids of what is drawn on a sheet, far from those that programs give. */
const firstNumber = 1001;

/**
 * Puts the pictures that came to a sheet into its drawing, and takes those out that went; one that was moved goes and
 * comes.
 */
export function editPictures(
  saving: Saving,
  before: Saving,
  parts: PackageParts,
  sheet: string,
  id: string,
): Pick<SheetEdits, "drawing"> {
  const was = picturesToFile(before, id, before.kept.sheets[id] ?? {});
  const is = picturesToFile(saving, id, saving.kept.sheets[id] ?? {});
  const gone = was.filter((one) => !is.some((other) => other.id === one.id && isSame(one, other)));
  const added = is.filter((one) => !was.some((other) => other.id === one.id && isSame(one, other)));
  if (gone.length === 0 && added.length === 0) return {};
  const drawings = [...parts.pointers(sheet).values()].flatMap(({ kind, target }) =>
    kind === "drawing" ? [target] : [],
  );
  let number = 0;
  for (const drawing of drawings) {
    parts.edit(drawing, (edit) => {
      for (const anchor of anchorsIn(withoutPrefixes(edit.root))) {
        number += 1;
        const own = number;
        if (gone.some((one) => one.id === `${id}-picture-${own}`)) edit.replace(anchor, "");
      }
    });
  }
  const [drawing] = drawings;
  if (added.length === 0) return {};
  if (drawing === undefined) return { drawing: addDrawing(parts, sheet, added) };
  const ids = added.map((picture) => addImage(parts, drawing, picture, "picture"));
  parts.edit(drawing, (edit) => {
    const xmls = added.map((picture, place) =>
      anchorXml(picture, ids[place] ?? "", firstNumber + place, DRAWING_NAMES),
    );
    edit.append(edit.root, xmls.join(""));
  });
  return {};
}

/** Whether a picture is where it was, within a pixel: the grid works its size out from the cells under it. */
function isSame(one: NewPicture, other: NewPicture): boolean {
  const lengths = ({ from, size }: NewPicture) => [
    from.rowOffset,
    from.columnOffset,
    size?.width ?? 0,
    size?.height ?? 0,
  ];
  const [was, is] = [lengths(one), lengths(other)];
  return (
    one.name === other.name &&
    one.altText === other.altText &&
    one.from.row === other.from.row &&
    one.from.column === other.from.column &&
    was.every((length, place) => Math.abs(length - (is[place] ?? 0)) <= emusPerPixel) &&
    one.bytes.length === other.bytes.length &&
    one.bytes.every((byte, place) => byte === other.bytes[place])
  );
}
