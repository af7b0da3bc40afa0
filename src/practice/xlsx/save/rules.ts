import type { IRange } from "@univerjs/core";
import { addressOf, fixedRange } from "../../../xlsx/addresses";
import type { FileStyle } from "../../../xlsx/style";
import type { NewSheet } from "../../../xlsx/write/sheet";
import { fromRange } from "../../grid/geometry";
import { keptBySheet, type Saving } from "../context";
import { toFile } from "../formulas";
import { argb } from "../styles";

interface KeptShading {
  readonly cfId: string;
  readonly ranges: readonly IRange[];
  readonly stopIfTrue?: boolean;
  readonly rule: {
    readonly type: string;
    readonly subType?: string;
    readonly value?: unknown;
    readonly style?: {
      readonly bg?: { readonly rgb?: string | null };
      readonly cl?: { readonly rgb?: string | null };
      readonly bl?: number;
    };
  };
}

interface KeptList {
  readonly uid: string;
  readonly type?: string;
  readonly ranges: readonly IRange[];
  readonly formula1?: string;
  readonly allowBlank?: boolean;
  readonly showDropDown?: boolean;
  readonly errorStyle?: number;
}

/** A rule as a file has it, and the id that it has in the grid. */
type WithId<List extends "shadings" | "lists"> = NonNullable<NewSheet[List]>[number] & { readonly id: string };

/** The grid's number for a rule that refuses what does not fit. */
const refuses = 1;
/** The longest list of words that a file holds in a rule; from memory. */
const longestList = 255;

/** The rules of a sheet that format its cells while a condition holds, for the file. */
export function shadingsToFile(saving: Saving, id: string): WithId<"shadings">[] {
  const kept = keptBySheet<readonly KeptShading[]>(saving, "SHEET_CONDITIONAL_FORMATTING_PLUGIN")[id] ?? [];
  return kept.flatMap(({ cfId, ranges, rule, stopIfTrue = false }) => {
    if (rule.type !== "highlightCell" || rule.subType !== "formula") {
      saving.findings.count(
        "conditional format of a kind that isn't supported here",
        1,
        "conditional formats of kinds that aren't supported here",
      );
      return [];
    }
    const formula = toFile(String(rule.value), saving.functions);
    return [{ id: cfId, area: listOf(ranges), formula, style: shadingStyle(rule.style ?? {}), stopIfTrue }];
  });
}

function shadingStyle({ bg, cl, bl }: NonNullable<KeptShading["rule"]["style"]>): FileStyle {
  return {
    // A rule's fill is its background color, unlike a cell's.
    ...(bg?.rgb && { fill: { pattern: "solid", bgColor: { argb: argb(bg.rgb) } } }),
    ...((cl?.rgb || bl !== undefined) && {
      font: { ...(cl?.rgb && { color: { argb: argb(cl.rgb) } }), ...(bl !== undefined && { bold: bl === 1 }) },
    }),
  };
}

/** A sheet's lists to choose from, for the file. */
export function listsToFile(saving: Saving, id: string): WithId<"lists">[] {
  const kept = keptBySheet<readonly KeptList[]>(saving, "SHEET_DATA_VALIDATION_PLUGIN")[id] ?? [];
  return kept.flatMap((list) => {
    const source = list.type === "list" ? sourceOf(saving, list.formula1 ?? "") : undefined;
    if (source === undefined) {
      saving.findings.count("data validation rule", 1, "data validation rules");
      return [];
    }
    return [
      {
        id: list.uid,
        area: listOf(list.ranges),
        source,
        allowBlank: list.allowBlank === true,
        hidesArrow: list.showDropDown === false,
        refusesOthers: list.errorStyle === refuses,
      },
    ];
  });
}

function sourceOf({ grid, functions }: Saving, formula: string): string | undefined {
  // The grid names itself before the sheet, and means the same cells wherever the list is opened.
  if (formula.startsWith("=")) return fixedRange(toFile(formula.replace(/\[[^\]]*\]/, ""), functions));
  const words = grid.library.sheets.deserializeListOptions(formula);
  const text = words.join(",");
  const fits = text.length <= longestList && words.every((word) => !word.includes(","));
  return fits ? `"${text.replaceAll('"', '""')}"` : undefined;
}

function listOf(ranges: readonly IRange[]): string {
  return ranges.map((range) => addressOf(fromRange("", range))).join(" ");
}
