import type { IStyleData } from "@univerjs/core";
import type { Style } from "exceljs";
import { type MarkedStyles, styleNumber } from "../look/formats";
import { styleFromFile } from "../look/fromFile";
import type { FileCellModel } from "./cells";
import type { Opening } from "./context";
import type { Findings } from "./findings";

/** The grid's styles for those of the file, by their numbers; undefined for one that changes nothing. */
export function readStyles(
  { library, colorOf, findings }: Opening,
  { formats }: MarkedStyles,
  styleModels: readonly FileCellModel[],
  models: readonly FileCellModel[][],
) {
  const used = new Set(models.flatMap((cells) => cells.map(({ style }) => styleNumber(style?.numFmt))));
  const ids: (string | undefined)[] = [];
  const styles: Record<string, IStyleData> = {};
  for (const model of styleModels) {
    const number = styleNumber(model.style?.numFmt);
    const style = (model.style ?? {}) as Partial<Style>;
    if (used.has(number)) noteLost(style, findings);
    const made = styleFromFile(library, style, formats[number] ?? "General", colorOf);
    if (Object.keys(made).length === 0) continue;
    ids[number] = `style-${number}`;
    styles[`style-${number}`] = made;
  }
  return { ids, styles };
}

function noteLost({ fill, alignment }: Partial<Style>, findings: Findings): void {
  const isPlain = !fill || (fill.type === "pattern" && (fill.pattern === "none" || fill.pattern === "solid"));
  if (!isPlain) findings.fact("patterns and shades of color in cells, which become one color each");
  if (alignment?.textRotation) findings.fact("turned text in cells, which stands upright here");
}
