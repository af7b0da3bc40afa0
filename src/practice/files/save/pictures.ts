import type { IWorksheetData } from "@univerjs/core";
import type { Workbook, Worksheet } from "exceljs";
import { type Corner, emusPerPixel } from "../open/pictures";
import { escaped } from "../package/xml";
import { keptBySheet, type Saving } from "./context";

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

/** What a picture is called, and what it shows. */
export interface PictureWords {
  readonly name: string;
  readonly altText: string;
}

const kinds = { png: "png", jpeg: "jpeg", gif: "gif" } as const;

/** Puts the pictures of a sheet into the file. Returns their words, in order. */
export function writePictures(
  saving: Saving,
  id: string,
  data: Partial<IWorksheetData>,
  book: Workbook,
  file: Worksheet,
): PictureWords[] {
  const kept = keptBySheet<KeptDrawings>(saving, "SHEET_DRAWING_PLUGIN")[id];
  const words = (data.custom?.pictures ?? {}) as Readonly<Record<string, PictureWords>>;
  return Object.entries(kept?.data ?? {}).flatMap(([key, { source = "", sheetTransform, transform }]) => {
    const [, kind = ""] = /^data:image\/(\w+);base64,/.exec(source) ?? [];
    const extension = Object.values(kinds).find((one) => one === kind);
    if (!extension || !sheetTransform) {
      saving.findings.count(
        "picture that is neither PNG, JPEG nor GIF",
        1,
        "pictures that are neither PNG, JPEG nor GIF",
      );
      return [];
    }
    const { row, rowOffset, column, columnOffset } = sheetTransform.from;
    // The library takes the exact place where these are given; its published types know the others only.
    const corner = {
      col: column,
      row,
      nativeCol: column,
      nativeColOff: Math.round(columnOffset * emusPerPixel),
      nativeRow: row,
      nativeRowOff: Math.round(rowOffset * emusPerPixel),
    };
    const picture = book.addImage({ base64: source, extension });
    file.addImage(picture, { tl: corner, ext: { width: whole(transform?.width), height: whole(transform?.height) } });
    return [words[key] ?? { name: "", altText: "" }];
  });
}

/** A length in pixels that comes to a whole number of the file's units, which the library would round down. */
function whole(pixels = 1): number {
  return (Math.round(pixels * emusPerPixel) + 0.1) / emusPerPixel;
}

/** A sheet's drawing with the pictures' own words in it; the library numbers them and says nothing of what they show. */
export function withWords(drawing: string, words: readonly PictureWords[]): string {
  let place = -1;
  return drawing.replace(/<xdr:cNvPr\b[^>]*?(\/?)>/g, (_, end: string) => {
    place += 1;
    const { name, altText } = words[place] ?? { name: "", altText: "" };
    const called = name || `Picture ${place + 1}`;
    return `<xdr:cNvPr id="${place + 2}" name="${escaped(called)}" descr="${escaped(altText)}"${end}>`;
  });
}
