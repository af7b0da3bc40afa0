import { useState } from "preact/hooks";
import type { WorkbookFacts } from "../../review/facts";
import type { CellContent, Surroundings } from "../../sheets/plain/region";
import type { PlainCopy } from "../../sheets/plain/result";
import { sheetRegion } from "../../sheets/plain/sheetRegion";
import { type CopyMode, toPlain } from "../../sheets/plain/toPlain";
import { copyLooks } from "../../workbook/copyLooks";
import { insertPlan } from "../../workbook/insert";
import { readWorkbook } from "../../workbook/readWorkbook";
import { WorkbookTrouble } from "../../workbook/trouble";

export interface Made {
  readonly sheetName: string;
  readonly copy: PlainCopy;
}

/** Copies the sheet in front so that it works without the add-in. */
export function useCopy() {
  const [mode, setMode] = useState<CopyMode>("formulas");
  const [working, setWorking] = useState(false);
  const [made, setMade] = useState<Made>();
  const [trouble, setTrouble] = useState<string>();

  const make = async () => {
    setWorking(true);
    setMade(undefined);
    setTrouble(undefined);
    try {
      setMade(await copySheet(mode));
    } catch (error) {
      if (!(error instanceof WorkbookTrouble)) throw error;
      setTrouble(error.message);
    } finally {
      setWorking(false);
    }
  };
  return { mode, setMode, working, made, trouble, make };
}

async function copySheet(mode: CopyMode): Promise<Made> {
  const { facts, sheet } = await readWorkbook();
  const used = facts.sheets.find(({ name }) => name === sheet)?.used;
  if (!used) throw new WorkbookTrouble(`Nothing stands on ${sheet}. Bring the sheet to copy to the front.`);
  const region = sheetRegion(sheet, used);
  const copy = toPlain(region, surroundingsOf(facts), { at: region, sameSheet: false, wholeSheet: true }, mode);
  const ending = mode === "formulas" ? "plain" : "values";
  const inserted = await insertPlan(() => copy.plan, { kind: "new sheet", name: `${sheet} ${ending}` });
  if (!inserted.done) throw new WorkbookTrouble("The new sheet was not free. Try again.");
  await copyLooks(sheet, inserted.sheetName, {
    rows: region.formulas.length,
    columns: region.formulas[0]?.length ?? 1,
  });
  return { sheetName: inserted.sheetName, copy };
}

function surroundingsOf({ sheets, names, tables }: WorkbookFacts): Surroundings {
  const bySheet = new Map(sheets.map((one) => [one.name, one.used]));
  return {
    valueAt: (sheetName, row, column): CellContent | undefined => {
      const used = bySheet.get(sheetName);
      return used?.values[row - used.row]?.[column - used.column];
    },
    names: Object.fromEntries(names.map(({ name, formula }) => [name, formula.replace(/^=/, "")])),
    tables: tables.map(({ name, sheet, area, columnNames, headingRow, totalsRow }) => ({
      name,
      headings: columnNames,
      data: {
        sheetName: sheet,
        row: area.row + (headingRow ? 1 : 0),
        column: area.column,
        rows: area.rows - (headingRow ? 1 : 0) - (totalsRow ? 1 : 0),
        columns: area.columns,
      },
    })),
  };
}
