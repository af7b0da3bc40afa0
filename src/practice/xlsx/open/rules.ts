import type { IRange } from "@univerjs/core";
import { cellAddress } from "../../../spreadsheet/areas";
import { fixedRange, type Rectangle, rectanglesOf } from "../../../xlsx/addresses";
import type { SheetPart } from "../../../xlsx/read/bookParts";
import { countOf, elements, firstElement, isTrue, type XmlElement } from "../../../xlsx/read/xml";
import type { FileStyle } from "../../../xlsx/style";
import { toRange } from "../../grid/geometry";
import type { Opening } from "../context";
import { fromFile } from "../formulas";

/** The grid's own records of its rules, as it keeps them with a workbook. */
export interface SheetRules {
  readonly shadings: object[];
  readonly lists: object[];
}

const comparisons: Readonly<Record<string, string>> = {
  greaterThan: ">",
  greaterThanOrEqual: ">=",
  lessThan: "<",
  lessThanOrEqual: "<=",
  equal: "=",
  notEqual: "<>",
};

/** The grid's own numbers: a list that refuses what is not in it, one that takes it, and a list with its arrow. */
const [refuses, takes, arrow] = [1, 2, 1] as const;

/**
 * @param styles those that the file has for rules, by their numbers.
 * @param narrowed an area as far as the grid can hold a rule for it.
 */
export function readRules(
  opening: Opening,
  styles: readonly FileStyle[],
  sheet: SheetPart,
  id: string,
  narrowed: Narrowed,
): SheetRules {
  return {
    shadings: readShadings(opening, styles, sheet, id, narrowed),
    lists: readLists(opening, sheet, id, narrowed),
  };
}

type Narrowed = (area: Rectangle) => Rectangle;

function readShadings(
  opening: Opening,
  styles: readonly FileStyle[],
  sheet: SheetPart,
  id: string,
  narrowed: Narrowed,
): object[] {
  const made: object[] = [];
  let place = 0;
  for (const formatting of elements(sheet.xml, "conditionalFormatting")) {
    const ranges = rangesOf(formatting.attributes.sqref ?? "", narrowed);
    for (const rule of elements(formatting, "cfRule")) {
      // By its place among all of the sheet, so that it's found again in the file.
      place += 1;
      const value = conditionOf(opening, sheet, rule, ranges[0]);
      const style = shadingStyle(opening, styles[Number(rule.attributes.dxfId ?? -1)]);
      if (value === undefined || Object.keys(style).length === 0) {
        opening.findings.count(
          "conditional format that isn't supported here",
          1,
          "conditional formats that aren't supported here",
        );
        continue;
      }
      made.push({
        cfId: `${id}-shading-${place}`,
        ranges,
        rule: { type: "highlightCell", subType: "formula", value, style },
        stopIfTrue: isTrue(rule.attributes.stopIfTrue),
      });
    }
  }
  return made;
}

/** The rule's condition as a formula for the first cell; undefined where it is another kind of rule. */
function conditionOf(
  opening: Opening,
  sheet: SheetPart,
  rule: XmlElement,
  first: IRange | undefined,
): string | undefined {
  const { type, operator = "" } = rule.attributes;
  const texts = [...elements(rule, "formula")].map(({ text }) => text.trim());
  if (!first || texts.length === 0) return undefined;
  const cell = cellAddress({ row: first.startRow, column: first.startColumn });
  const [one = "", other = ""] = texts;
  const text =
    type === "expression"
      ? one
      : type !== "cellIs"
        ? undefined
        : comparisons[operator] !== undefined
          ? `${cell}${comparisons[operator]}(${one})`
          : operator === "between"
            ? `AND(${cell}>=(${one}),${cell}<=(${other}))`
            : operator === "notBetween"
              ? `OR(${cell}<(${one}),${cell}>(${other}))`
              : undefined;
  if (text === undefined) return undefined;
  const read = fromFile(text, { sheetName: sheet.name, row: first.startRow, column: first.startColumn }, opening);
  return "refused" in read || read.foreign.length > 0 ? undefined : read.formula;
}

function shadingStyle({ colorOf }: Opening, style: FileStyle | undefined): object {
  const paint = colorOf(style?.fill?.bgColor) ?? colorOf(style?.fill?.fgColor);
  const ink = colorOf(style?.font?.color);
  return {
    ...(paint && { bg: { rgb: paint } }),
    ...(ink && { cl: { rgb: ink } }),
    ...(style?.font?.bold && { bl: 1 }),
  };
}

function readLists(opening: Opening, sheet: SheetPart, id: string, narrowed: Narrowed): object[] {
  const made: object[] = [];
  let place = 0;
  for (const validation of elements(sheet.xml, "dataValidation")) {
    place += 1;
    const { type = "none", sqref = "", errorStyle = "stop", ...attributes } = validation.attributes;
    const { allowBlank, showErrorMessage, showDropDown } = attributes;
    if (type === "none") continue;
    const source = type === "list" ? (firstElement(validation, "formula1")?.text ?? "").trim() : "";
    const ranges = rangesOf(sqref, narrowed);
    const first = ranges[0];
    const formula1 = first && sourceOf(opening, sheet, source, first);
    if (formula1 === undefined) {
      opening.findings.count("data validation rule", 1, "data validation rules");
      continue;
    }
    made.push({
      uid: `${id}-list-${place}`,
      ranges,
      type: "list",
      formula1,
      // In a file this takes the arrow away.
      showDropDown: !isTrue(showDropDown),
      allowBlank: isTrue(allowBlank),
      errorStyle: isTrue(showErrorMessage) && errorStyle === "stop" ? refuses : takes,
      renderMode: arrow,
    });
  }
  const newer = [...elements(sheet.xml, "ext")].reduce((sum, ext) => sum + countOf(ext, "x14:dataValidation"), 0);
  opening.findings.count("data validation rule", newer, "data validation rules");
  return made;
}

/** A list's source as the grid keeps it: its words, or a reference with "=". */
function sourceOf(opening: Opening, sheet: SheetPart, source: string, first: IRange): string | undefined {
  if (source === "") return undefined;
  const words = /^"([\s\S]*)"$/.exec(source)?.[1];
  if (words !== undefined)
    return JSON.stringify(
      words
        .replaceAll('""', '"')
        .split(",")
        .map((word) => word.trim()),
    );
  const read = fromFile(source, { sheetName: sheet.name, row: first.startRow, column: first.startColumn }, opening);
  return "refused" in read ? undefined : `=${fixedRange(read.formula.slice(1))}`;
}

function rangesOf(list: string, narrowed: Narrowed): IRange[] {
  return rectanglesOf(list).map((rectangle) => toRange({ sheetId: "", ...narrowed(rectangle) }));
}
