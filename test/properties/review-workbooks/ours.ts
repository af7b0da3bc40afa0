import type { BedForm } from "../../../src/quantities/bed/form";
import { blankForm } from "../../../src/quantities/bed/form";
import { estimateBlock } from "../../../src/sheets/estimate/block";
import type { SheetInput, WorkbookInput } from "../../reviewWorkbook";

/** Prices of an office in its second week, which has typed its own over the ones it started with. */
export const ownPrices = {
  haulCost: "52",
  dumpFee: "34",
  pieceCost: "26",
  stakeCost: "3",
  rollCost: "71",
  pinBoxCost: "21",
  stoneCost: "66",
  deliveryCost: "95",
  crewRate: "53",
  materialMarkup: "22%",
  laborMarkup: "40%",
  haulingMarkup: "12%",
  overhead: "11%",
  minimumCharge: "450",
};

/** Estimates of ours as they are inserted, one bed a sheet. */
export function ours(most = Number.POSITIVE_INFINITY): WorkbookInput {
  const beds: BedForm[] = [
    {
      ...blankForm(),
      name: "Front walk",
      typed: { length: `18' 6"`, width: "5", cutAround: "6" },
    },
    {
      ...blankForm(),
      name: "Long border",
      way: "area",
      typed: {
        area: "210",
        edge: "44",
        longest: "30",
        widest: "8",
        corners: "2",
        stone: "crushed limestone",
        stoneSize: "0.75",
      },
    },
    {
      ...blankForm(),
      name: "Corner bed",
      typed: { length: "24", width: `6' 6"`, cornerRadius: `24"`, roundedCorners: "2", waste: "5%" },
    },
    {
      ...blankForm(),
      name: "Bent bed",
      way: "widths",
      typed: { spacing: "4", corners: "2", stone: "pea gravel", stoneSize: "0.375" },
      widths: ["3'", `4' 6"`, "5.5", "4 ft", "3.5"],
    },
  ];
  return { sheets: beds.slice(0, most).map(sheetOf) };
}

function sheetOf(form: BedForm): SheetInput {
  const { formulas: rows, formats } = estimateBlock(
    { ...form, typed: { ...ownPrices, ...form.typed } },
    { row: 0, column: 0 },
  );
  const formatAt: Record<string, string> = {};
  for (const [row, cells] of formats.entries()) {
    for (const [column, format] of cells.entries()) {
      if (format !== "General") formatAt[`${String.fromCharCode(65 + column)}${row + 1}`] = format;
    }
  }
  return { name: form.name, rows, formats: formatAt };
}
