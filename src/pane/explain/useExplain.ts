import { useEffect, useState } from "preact/hooks";
import { SOURCED_SOILS, SOURCED_STONES } from "../../quantities/tableSources";
import { cellAround, explain } from "../../review/explain/explain";
import type { Explanation } from "../../review/explain/explanation";
import { type PriceStrip, priceStrip } from "../../review/explain/strip";
import { knowledgeOf } from "../../review/knowledge";
import { cellAddress } from "../../spreadsheet/areas";
import { WorkbookFailure } from "../../workbook/failure";
import { readWorkbook } from "../../workbook/read/workbook";
import { callFunction } from "../callFunction";

export interface Explained {
  readonly where: string;
  readonly formula: string;
  readonly explanation: Explanation | undefined;
  /** From quantities to the price, where the cell holds one. */
  readonly strip: PriceStrip | undefined;
}

const KNOWLEDGE = knowledgeOf(SOURCED_STONES, SOURCED_SOILS);

/** The selected cell, explained when the screen comes up and whenever the person asks: a large workbook takes a moment. */
export function useExplain() {
  const [answer, setAnswer] = useState<Answer>({});
  useEffect(() => {
    void answerInWords().then(setAnswer);
  }, []);
  return { ...answer, look: () => void answerInWords().then(setAnswer) };
}

interface Answer {
  readonly explained?: Explained;
  readonly trouble?: string;
}

async function answerInWords(): Promise<Answer> {
  try {
    return { explained: await explainSelected() };
  } catch (error) {
    if (!(error instanceof WorkbookFailure)) throw error;
    return { trouble: error.message };
  }
}

async function explainSelected(): Promise<Explained> {
  const { facts, sheet, selection } = await readWorkbook();
  const used = facts.sheets.find(({ name }) => name === sheet)?.used;
  const { row, column } = selection;
  const formula = String(used?.formulas[row - used.row]?.[column - used.column] ?? "");
  const around = cellAround(facts, { sheet, row, column }, KNOWLEDGE, callFunction);
  return {
    where: `${sheet}!${cellAddress(selection)}`,
    formula,
    explanation: formula.startsWith("=") ? explain(formula, around) : undefined,
    strip: priceStrip(facts, { sheet, row, column }),
  };
}
