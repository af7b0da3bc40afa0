import type { IRange } from "@univerjs/core";
import type { ConditionalFormattingRule, Fill, Style, Worksheet } from "exceljs";
import { fromRange } from "../../grid/geometry";
import { addressOf, fixedRange } from "../formula/cellPlace";
import { toFile } from "../formula/toFile";
import { argb } from "../look/toFile";
import { escaped } from "../package/xml";
import { keptBySheet, type Saving } from "./context";

interface KeptShading {
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
  readonly type?: string;
  readonly ranges: readonly IRange[];
  readonly formula1?: string;
  readonly allowBlank?: boolean;
  readonly showDropDown?: boolean;
  readonly errorStyle?: number;
}

/** The grid's number for a rule that refuses what does not fit. */
const refuses = 1;
/** The longest list of words that a file holds in a rule; from memory. */
const longestList = 255;

/** Puts the rules that dress a sheet's cells into the file. */
export function writeShadings(saving: Saving, id: string, file: Worksheet): void {
  const kept = keptBySheet<readonly KeptShading[]>(saving, "SHEET_CONDITIONAL_FORMATTING_PLUGIN")[id] ?? [];
  kept.forEach(({ ranges, rule, stopIfTrue = false }, index) => {
    if (rule.type !== "highlightCell" || rule.subType !== "formula") {
      saving.findings.count(
        "conditional format of a kind that is not made here",
        1,
        "conditional formats of kinds that are not made here",
      );
      return;
    }
    const made = {
      type: "expression",
      priority: index + 1,
      formulae: [toFile(String(rule.value), saving.functions)],
      style: dressOf(rule.style ?? {}),
      ...(stopIfTrue && { stopIfTrue }),
    } satisfies ConditionalFormattingRule & { stopIfTrue?: boolean };
    file.addConditionalFormatting({ ref: listOf(ranges), rules: [made] });
  });
}

function dressOf({ bg, cl, bl }: NonNullable<KeptShading["rule"]["style"]>): Partial<Style> {
  return {
    // The fill of a rule stands in its background, unlike a cell's.
    ...(bg?.rgb && { fill: { type: "pattern", pattern: "solid", bgColor: { argb: argb(bg.rgb) } } satisfies Fill }),
    ...((cl?.rgb || bl !== undefined) && {
      font: { ...(cl?.rgb && { color: { argb: argb(cl.rgb) } }), ...(bl !== undefined && { bold: bl === 1 }) },
    }),
  };
}

/** A sheet's lists to choose from, as the part of the file's text that holds them; "" for none. */
export function listsXml(saving: Saving, id: string): string {
  const kept = keptBySheet<readonly KeptList[]>(saving, "SHEET_DATA_VALIDATION_PLUGIN")[id] ?? [];
  const made = kept.flatMap((list) => {
    const source = list.type === "list" ? sourceOf(saving, list.formula1 ?? "") : undefined;
    if (source === undefined) {
      saving.findings.count("rule for what may be typed", 1, "rules for what may be typed");
      return [];
    }
    const marks = [
      'type="list"',
      ...(list.allowBlank ? ['allowBlank="1"'] : []),
      // In a file this takes the arrow away.
      ...(list.showDropDown === false ? ['showDropDown="1"'] : []),
      ...(list.errorStyle === refuses ? ['showErrorMessage="1"'] : []),
      `sqref="${listOf(list.ranges)}"`,
    ];
    return [`<dataValidation ${marks.join(" ")}><formula1>${escaped(source)}</formula1></dataValidation>`];
  });
  return made.length > 0 ? `<dataValidations count="${made.length}">${made.join("")}</dataValidations>` : "";
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
