import type { IWorksheetData } from "@univerjs/core";
import { bytesOf } from "../../../spreadsheet/base64";
import { emusPerPixel } from "../../../xlsx/style";
import type { NewPicture } from "../../../xlsx/write/sheet";
import { keptBySheet, type Saving } from "../context";
import type { Corner } from "../open/pictures";

interface KeptDrawings {
  readonly order: readonly string[];
  readonly data: Readonly<
    Record<
      string,
      {
        readonly source?: string;
        readonly sheetTransform?: { readonly from: Corner };
        readonly transform?: { readonly width?: number; readonly height?: number };
      }
    >
  >;
}

const kinds = ["png", "jpeg", "gif"] as const;

/** The pictures of a sheet for the file. */
export function picturesToFile(
  saving: Saving,
  id: string,
  data: Partial<IWorksheetData>,
): (NewPicture & { readonly id: string })[] {
  const kept = keptBySheet<KeptDrawings>(saving, "SHEET_DRAWING_PLUGIN")[id];
  const words = (data.custom?.pictures ?? {}) as Readonly<Record<string, Pick<NewPicture, "name" | "altText">>>;
  return Object.entries(kept?.data ?? {}).flatMap(([key, { source = "", sheetTransform, transform }]) => {
    const [, mediaKind = "", base64 = ""] = /^data:image\/(\w+);base64,(.*)$/s.exec(source) ?? [];
    const kind = kinds.find((one) => one === mediaKind);
    if (!kind || !sheetTransform) {
      saving.findings.count("picture that isn't PNG, JPEG, or GIF", 1, "pictures that aren't PNG, JPEG, or GIF");
      return [];
    }
    const { row, rowOffset, column, columnOffset } = sheetTransform.from;
    return [
      {
        id: key,
        bytes: bytesOf(base64),
        kind,
        name: words[key]?.name ?? "",
        altText: words[key]?.altText ?? "",
        from: { row, column, rowOffset: emus(rowOffset), columnOffset: emus(columnOffset) },
        size: { width: emus(transform?.width), height: emus(transform?.height) },
      },
    ];
  });
}

/** A length in pixels as a whole number of the file's units. */
function emus(pixels = 1): number {
  return Math.round(pixels * emusPerPixel);
}
