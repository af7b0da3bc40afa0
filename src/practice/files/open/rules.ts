import type { IRange } from "@univerjs/core";
import { toRange } from "../../grid/geometry";
import { addressOf, fixedRange, rectanglesOf } from "../formula/cellPlace";
import { fromFile } from "../formula/fromFile";
import type { SheetPart } from "../package/bookParts";
import { type Element, elements, firstElement, unescaped } from "../package/xml";
import type { Opening } from "./context";

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

export function readRules(opening: Opening, sheet: SheetPart, id: string): SheetRules {
  return { shadings: readShadings(opening, sheet, id), lists: readLists(opening, sheet, id) };
}

function readShadings(opening: Opening, sheet: SheetPart, id: string): object[] {
  const dressings = [...elements(firstElement(opening.book.stylesXml, "dxfs")?.inner ?? "", "dxf")];
  const made: object[] = [];
  for (const { attributes, inner } of elements(sheet.xml, "conditionalFormatting")) {
    const ranges = rangesOf(attributes.sqref ?? "");
    for (const rule of elements(inner, "cfRule")) {
      const value = conditionOf(opening, sheet, rule, ranges[0]);
      const style = dressOf(opening, dressings[Number(rule.attributes.dxfId ?? -1)]);
      if (value === undefined || Object.keys(style).length === 0) {
        opening.findings.count(
          "conditional format that has no like here",
          1,
          "conditional formats that have no like here",
        );
        continue;
      }
      made.push({
        cfId: `${id}-shading-${made.length + 1}`,
        ranges,
        rule: { type: "highlightCell", subType: "formula", value, style },
        stopIfTrue: rule.attributes.stopIfTrue === "1",
      });
    }
  }
  return made;
}

/** The rule's condition as a formula for the first cell; undefined where it is another kind of rule. */
function conditionOf(opening: Opening, sheet: SheetPart, rule: Element, first: IRange | undefined): string | undefined {
  const { type, operator = "" } = rule.attributes;
  const texts = [...elements(rule.inner, "formula")].map(({ inner }) => unescaped(inner).trim());
  if (!first || texts.length === 0) return undefined;
  const cell = addressOf({ row: first.startRow, column: first.startColumn, rowCount: 1, columnCount: 1 });
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

function dressOf({ colorOf }: Opening, dressing: Element | undefined): object {
  if (!dressing) return {};
  const font = firstElement(dressing.inner, "font")?.inner ?? "";
  const fill = firstElement(dressing.inner, "fill")?.inner ?? "";
  const color = (xml: string, name: string) => {
    const { rgb, theme, tint, indexed } = firstElement(xml, name)?.attributes ?? {};
    return colorOf({
      ...(rgb !== undefined && { argb: rgb }),
      ...(theme !== undefined && { theme: Number(theme) }),
      ...(tint !== undefined && { tint: Number(tint) }),
      ...(indexed !== undefined && { indexed: Number(indexed) }),
    });
  };
  const paint = color(fill, "bgColor") ?? color(fill, "fgColor");
  const ink = color(font, "color");
  const bold = firstElement(font, "b");
  return {
    ...(paint && { bg: { rgb: paint } }),
    ...(ink && { cl: { rgb: ink } }),
    ...(bold && bold.attributes.val !== "0" && { bl: 1 }),
  };
}

function readLists(opening: Opening, sheet: SheetPart, id: string): object[] {
  const made: object[] = [];
  for (const { attributes, inner } of elements(sheet.xml, "dataValidation")) {
    const { type = "none", sqref = "", allowBlank, showErrorMessage, errorStyle = "stop", showDropDown } = attributes;
    if (type === "none") continue;
    const source = type === "list" ? unescaped(firstElement(inner, "formula1")?.inner ?? "").trim() : "";
    const ranges = rangesOf(sqref);
    const first = ranges[0];
    const formula1 = first && sourceOf(opening, sheet, source, first);
    if (formula1 === undefined) {
      opening.findings.count("rule for what may be typed", 1, "rules for what may be typed");
      continue;
    }
    made.push({
      uid: `${id}-list-${made.length + 1}`,
      ranges,
      type: "list",
      formula1,
      // In a file this takes the arrow away.
      showDropDown: showDropDown !== "1",
      allowBlank: allowBlank === "1",
      errorStyle: showErrorMessage === "1" && errorStyle === "stop" ? refuses : takes,
      renderMode: arrow,
    });
  }
  const newer = [...elements(sheet.xml, "ext")].reduce((sum, { inner }) => {
    return sum + [...elements(inner, "x14:dataValidation")].length;
  }, 0);
  opening.findings.count("rule for what may be typed", newer, "rules for what may be typed");
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

function rangesOf(list: string): IRange[] {
  return rectanglesOf(list).map((rectangle) => toRange({ sheetId: "", ...rectangle }));
}
