import type { CellValue } from "../../../src/review/facts";
import type { WorkbookInput } from "../../reviewWorkbook";

/**
 * A sheet that grew over three seasons and is right: merged headings, notes between rows, lump sums without a
 * formula, totals of parts and of the whole, hidden helpers, mixed units that are labelled, and two tables side by
 * side. Nothing in it is a mistake.
 */
export function messy(): WorkbookInput {
  const rows: CellValue[][] = [];
  const put = (...row: CellValue[]) => rows.push(row);
  put("Quail Run HOA — stone beds", "", "", "", "", "", "", "", "", "", "", "", "Crew notes", "");
  put(
    "revised 5/12 by the office, call before you dig: ticket 8842",
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    "",
    "Saw is at shop",
    "",
  );
  put();
  put("", "Bed", "", "", "Stone", "", "", "", "Money", "", "", "", "Helpers", "");
  put(
    "Where",
    "Length (ft)",
    "Width (ft)",
    "Area (sq ft)",
    "Depth (in)",
    "Cubic yards",
    "Tons",
    "Waste",
    "Cost",
    "Markup",
    "Price",
    "Remarks",
    "ft",
    "in",
  );
  const bed = (where: string, length: number, width: number, depth: number, markup: number, remark = "") => {
    const r = rows.length + 1;
    put(
      where,
      length,
      width,
      `=B${r}*C${r}`,
      depth,
      `=D${r}*E${r}/324`,
      `=F${r}*1.35*(1+H${r})`,
      0.07,
      `=G${r}*$N$45+D${r}*$N$46`,
      markup,
      `=I${r}*(1+J${r})`,
      remark,
      `=E${r}/12`,
      `=M${r}*12`,
    );
  };
  const note = (text: string) => put(text);
  bed("Gatehouse left", 24, 3.5, 2.5, 0.35); // 6
  bed("Gatehouse right", 22, 3.5, 2.5, 0.35);
  note("next two only after the sprinkler man is done"); // 8
  bed("Pool fence", 68, 2, 2, 0.35, "narrow gate");
  bed("Pool pump", 9, 9, 3, 0.4, "hand carry");
  put("Permit, one for all", "", "", "", "", "", "", "", 85, "", 85, "at cost"); // 11
  bed("Clubhouse entry", 31, 6, 2.5, 0.35);
  put(
    "Subtotal first phase",
    "",
    "",
    "=SUM(D6:D12)",
    "",
    "=SUM(F6:F12)",
    "=SUM(G6:G12)",
    "",
    "=SUM(I6:I12)",
    "",
    "=SUM(K6:K12)",
  ); // 13
  put();
  note("Second phase, same rates"); // 15
  bed("Mail kiosk", 12, 4, 2, 0.35);
  bed("Tennis west", 54, 2.5, 2, 0.35);
  bed("Tennis east", 54, 2.5, 2, 0.35);
  bed("Dog park gate", 8, 8, 3, 0.4);
  put("Boulder, placed", "", "", "", "", "", "", "", 240, 0.25, "=I20*(1+J20)", "two men, one hour"); // 20
  put(
    "Subtotal second phase",
    "",
    "",
    "=SUM(D16:D20)",
    "",
    "=SUM(F16:F20)",
    "=SUM(G16:G20)",
    "",
    "=SUM(I16:I20)",
    "",
    "=SUM(K16:K20)",
  ); // 21
  put();
  put("All beds", "", "", "=D13+D21", "", "=F13+F21", "=G13+G21", "", "=I13+I21", "", "=K13+K21"); // 23
  put("Largest bed", "", "", "=MAX(D6:D12,D16:D20)"); // 24
  put("Tons to order", "", "", "", "", "", "=CEILING(G23,0.5)"); // 25
  put("Loads", "", "", "", "", "", "=ROUNDUP(G25/N47,0)"); // 26
  put("Stone delivery", "", "", "", "", "", "", "", "=G26*95", "", "=I26*1.15".replace("I26", "I27")); // 27
  put("Haul off spoil and dump", "", "", "", "", "", "", "", 310, 0.2, "=I28*(1+J28)", "lump, from Ray"); // 28
  put("Clean-up and sweeping", "", "", "", "", "", "", "", "=6*49", 0.35, "=I29*(1+J29)"); // 29
  put("Job", "", "", "", "", "", "", "", "=I23+SUM(I27:I29)", "", "=K23+SUM(K27:K29)"); // 30
  put();
  put("Fabric and edging were counted on the plan:"); // 32
  put("Item", "Quantity", "Unit", "Each", "Cost", "", "Ruler", "in", "mm"); // 33
  put("Weed fabric, 6 ft", 4, "rolls", 78, "=B34*D34", "", "Edging high", 4, "=H34*25.4"); // 34
  put("Pins", 7, "boxes", 18, "=B35*D35", "", "Trench deep", 1.5, "=H35*25.4"); // 35
  put("(pins: 100 to the box)"); // 36
  put("Steel edging, 8 ft", 61, "pieces", 24.5, "=B37*D37", "", "Above ground", "=H34-H35", "=H37*25.4"); // 37
  put("Stakes come with edging", 0, "stakes", 2.1, "=B38*D38"); // 38
  put("Digging, with machine", 11, "h", 85, "=B39*D39"); // 39
  put("Total supplies", "", "", "", "=SUM(E34:E39)"); // 40
  put("of that per square foot", "", "", "", "=E40/D23"); // 41
  put();
  put("", "", "", "", "", "", "", "", "", "", "", "", "Rates"); // 43
  put("", "", "", "", "", "", "", "", "", "", "", "", "What", "Value"); // 44
  put("", "", "", "", "", "", "", "", "", "", "", "", "Stone, per ton", 61); // 45
  put("", "", "", "", "", "", "", "", "", "", "", "", "Labor, per sq ft", 4.4); // 46
  put("", "", "", "", "", "", "", "", "", "", "", "", "Truck payload, tons", 8); // 47
  return {
    sheets: [
      {
        name: "Quail Run",
        rows,
        formats: {
          H6: "0%",
          "H7:H19": "0%",
          "J6:J29": "0%",
          "I6:K30": "#,##0.00",
          "D34:E40": "#,##0.00",
        },
        hiddenColumns: ["M", "N"],
        merged: ["A1:L1", "B4:D4", "E4:H4", "I4:K4", "M4:N4", "A15:L15"],
      },
      {
        name: "Old",
        rows: [
          ["Bed", "Length (ft)", "Tons"],
          ["Gatehouse left", 24, 1],
          ["Gatehouse right", 22, 0.9],
        ],
        visibility: "Hidden",
      },
    ],
  };
}
