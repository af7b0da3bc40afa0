import type { CellValue } from "../../../src/review/facts";
import type { WorkbookInput } from "../../reviewWorkbook";

/** Item, quantity (a formula or a number), unit, unit cost. */
type Line = readonly [item: string, quantity: CellValue, unit: string, each: number];

/** One job on a sheet in plain arithmetic: takeoff above, lines in sections with subtotals, price below. */
export function sections(): WorkbookInput {
  const rows: CellValue[][] = [];
  const put = (...row: CellValue[]) => rows.push(row);
  put("Job", "Maple Terrace 14, back garden");
  put("Dig ticket", "called in, clear on 4/9");
  put();
  put("Takeoff", "Value", "Unit");
  put("Length", 46, "ft"); // B5
  put("Width", 6.5, "ft"); // B6
  put("Area", "=B5*B6", "sq ft"); // B7
  put("Stone depth", 2.5, "in"); // B8
  put("Scrape depth", 3, "in"); // B9
  put("Border run", "=B5+2*B6", "ft"); // B10
  put("Waste", 0.06, "share"); // B11
  put("Stone", "=B7*B8/12/27*(1+B11)", "cu yd"); // B12
  put("Stone weighs", 1.35, "tons/cu yd"); // B13
  put("Stone", "=B12*B13", "tons"); // B14
  put("Soil in the ground", "=B7*B9/324", "cu yd"); // B15
  put("Swell", 0.25, "share"); // B16
  put("Soil, loose", "=B15*(1+B16)", "cu yd"); // B17
  put("Roll width", 4, "ft"); // B18
  put("Overlap", 6, "in"); // B19
  put();
  put("Item", "Quantity", "Unit", "Unit cost", "Cost");
  const subtotals: string[] = [];
  const section = (title: string, lines: readonly Line[]) => {
    put(title);
    const first = rows.length + 1;
    for (const [item, quantity, unit, each] of lines)
      put(item, quantity, unit, each, `=B${rows.length + 1}*D${rows.length + 1}`);
    put(`Subtotal ${title.toLowerCase()}`, "", "", "", `=SUM(E${first}:E${rows.length})`);
    subtotals.push(`E${rows.length}`);
    put();
  };
  section("Materials", [
    ["River rock", "=CEILING(B14,0.5)", "tons", 61],
    ["Weed fabric", "=ROUNDUP(B7/(B18*100)*1.15,0)", "rolls", 47.5],
    ["Pins", "=ROUNDUP(B7*0.45/100,0)", "boxes", 18.25],
    ["Steel edging", "=ROUNDUP(B10/8,0)", "pieces", 24.8],
    ["Edging stakes", "=ROUNDUP(B10/2.5,0)+1", "stakes", 2.15],
  ]);
  section("Labor", [
    ["Scrape and load", "=B15*1.3", "h", 47.5],
    ["Set edging", "=B10/15", "h", 47.5],
    ["Lay and pin fabric", "=B7/130", "h", 47.5],
    ["Barrow and spread stone", "=B14*0.9", "h", 47.5],
    ["Clean-up", 1.5, "h", 47.5],
  ]);
  section("Hauling", [
    ["Haul off and dump", "=ROUNDUP(B17/5,0)", "loads", 72],
    ["Stone delivery", "=ROUNDUP(B14/8.5,0)", "loads", 91],
    ["Small dozer, brought and fetched", 1, "trip", 140],
  ]);
  put("Cost", "", "", "", `=${subtotals.join("+")}`);
  const cost = rows.length;
  put("Overhead", 0.12, "share", "", `=E${cost}*B${cost + 1}`);
  put("Cost with overhead", "", "", "", `=E${cost}+E${cost + 1}`);
  put("Margin", 0.22, "share");
  put("Price", "", "", "", `=ROUND(E${cost + 2}/(1-B${cost + 3}),0)`);
  return {
    sheets: [
      {
        name: "Maple Terrace",
        rows,
        formats: {
          B11: "0%",
          B16: "0%",
          [`B${cost + 1}`]: "0%",
          [`B${cost + 3}`]: "0%",
          [`D22:E${cost + 4}`]: "#,##0.00",
        },
      },
    ],
  };
}
