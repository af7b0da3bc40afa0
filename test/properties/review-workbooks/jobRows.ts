import type { CellValue } from "../../../src/review/facts";
import type { WorkbookInput } from "../../reviewWorkbook";

/** Name, length, width, depth, stone, border run, dig depth: invented beds of an invented office. */
const BEDS: readonly (readonly [string, CellValue, CellValue, number, string, number, number])[] = [
  ["Ash Lane, front walk", `18' 6"`, 5, 2.5, "river rock", 28.5, 2.5],
  ["Ash Lane, side yard", 42, 3.5, 2.5, "river rock", 45, 2.5],
  ["Birch Court, mailbox", 8, 4, 2, "pea gravel", 20, 2],
  ["Birch Court, drive", `61'`, `2' 6"`, 3, "crushed limestone", 63.5, 3],
  ["Cedar Hill, patio edge", 33, 4, 2, "river rock", 37, 2.5],
  ["Cedar Hill, north wall", 54.5, 3, 2, "river rock", 57.5, 2.5],
  ["Dogwood Way, entry", `14' 3"`, 7, 2.5, "crushed granite", 28, 2.5],
  ["Dogwood Way, shed", 26, 2, 2, "pea gravel", 30, 2],
  ["Elm Street 9, strip", 75, 2, 2, "pea gravel", 77, 2],
  ["Elm Street 9, corner", 16, 12, 3, "crushed limestone", 40, 3],
  ["Fir Loop, pool side", 38, 6, 2.5, "river rock", 50, 2.5],
  ["Fir Loop, pump pad", 9, 5, 2, "pea gravel", 19, 2],
  ["Gum Tree Road, gate", 21, 3, 2.5, "crushed granite", 24, 2.5],
  ["Gum Tree Road, fence", 88, 2.5, 2, "river rock", 90.5, 2],
];

const HEADINGS = [
  "No.",
  "Bed",
  "Length (ft)",
  "Width (ft)",
  "Depth (in)",
  "Stone",
  "Area (sq ft)",
  "Stone (tons)",
  "Stone to order (tons)",
  "Fabric rolls",
  "Pins",
  "Border run (ft)",
  "Edging pieces",
  "Stakes",
  "Dig depth (in)",
  "Dig (cu yd)",
  "Haul-off loads",
  "Deliveries",
  "Labor (h)",
  "Cost",
  "Markup",
  "Price",
] as const;

const FIRST = 5;
const LAST = FIRST + BEDS.length - 1;

/** One bed a row with our functions, rates on a sheet of their own under names, totals below. */
export function jobRows(): WorkbookInput {
  const rows: CellValue[][] = [
    ["Spring beds, week 14"],
    ["Utility tickets: called in on 3/2, marks due 3/5"],
    [],
    [...HEADINGS],
    ...BEDS.map(([bed, length, width, depth, stone, border, dig], index) => {
      const r = FIRST + index;
      return [
        index + 1,
        bed,
        length,
        width,
        depth,
        stone,
        `=BED.AREA_RECTANGLE(C${r},D${r})`,
        `=BED.STONE_TONS(G${r},E${r},F${r},Waste)`,
        `=BED.ORDER_UP(H${r},0.5,1)`,
        `=BED.FABRIC_ROLLS(C${r},D${r},RollWidth,RollLength,Overlap)`,
        `=BED.PINS(C${r},D${r},RollWidth,Overlap)`,
        border,
        `=BED.EDGING_PIECES(L${r},PieceLength,2)`,
        `=BED.STAKES(L${r},PieceLength,30,2,2)`,
        dig,
        `=BED.DIG_YARDS(G${r},O${r},L${r},4,1.5)`,
        `=BED.LOADS(BED.SPOIL_YARDS(P${r},"clay"),TruckYards,SoilWeight,Payload)`,
        `=ROUNDUP(I${r}/DeliveryTons,0)`,
        `=P${r}*DigHours+L${r}/EdgingRate+G${r}/SpreadRate+CleanUp`,
        `=I${r}*StonePrice+J${r}*RollPrice+ROUNDUP(K${r}/100,0)*PinPrice+M${r}*PiecePrice+Q${r}*LoadPrice+R${r}*DeliveryPrice+S${r}*CrewRate`,
        0.35,
        `=BED.PRICE_MARKUP(T${r},U${r})`,
      ];
    }),
    [
      "",
      "Total",
      "",
      "",
      "",
      "",
      ...["G", "H", "I", "J", "K", "L", "M", "N"].map((c) => `=SUM(${c}${FIRST}:${c}${LAST})`),
      "",
      ...["P", "Q", "R", "S", "T"].map((c) => `=SUM(${c}${FIRST}:${c}${LAST})`),
      "",
      `=SUM(V${FIRST}:V${LAST})`,
    ],
  ];
  const rates: readonly (readonly [label: string, value: number, unit: string, name: string])[] = [
    ["Waste and low spots", 0.07, "share", "Waste"],
    ["Fabric roll width", 6, "ft", "RollWidth"],
    ["Fabric roll length", 100, "ft", "RollLength"],
    ["Overlap", 6, "in", "Overlap"],
    ["Edging piece", 8, "ft", "PieceLength"],
    ["Truck box", 5, "cu yd", "TruckYards"],
    ["Soil weight", 1.45, "tons/cu yd", "SoilWeight"],
    ["Truck payload", 2.6, "tons", "Payload"],
    ["Delivery payload", 8.5, "tons", "DeliveryTons"],
    ["Stone", 58, "per ton", "StonePrice"],
    ["Fabric roll", 83, "per roll", "RollPrice"],
    ["Pins", 17.5, "per box of 100", "PinPrice"],
    ["Edging", 23.4, "per piece", "PiecePrice"],
    ["Haul-off and dump", 71, "per load", "LoadPrice"],
    ["Delivery", 88, "per load", "DeliveryPrice"],
    ["Crew, with burden", 47.5, "per h", "CrewRate"],
    ["Digging", 1.3, "h per cu yd", "DigHours"],
    ["Edging set", 15, "ft per h", "EdgingRate"],
    ["Fabric and stone spread", 55, "sq ft per h", "SpreadRate"],
    ["Clean-up", 0.75, "h", "CleanUp"],
  ];
  return {
    sheets: [
      {
        name: "Jobs",
        rows,
        formats: {
          [`U${FIRST}:U${LAST}`]: "0%",
          [`T${FIRST}:V${LAST + 1}`]: "#,##0.00",
          [`U${FIRST}:U${LAST} `.trim()]: "0%",
        },
      },
      {
        name: "Rates",
        rows: [["Rate", "Value", "Unit"], ...rates.map(([label, value, unit]) => [label, value, unit])],
        formats: { B2: "0%" },
      },
    ],
    names: Object.fromEntries(rates.map(([, , , name], index) => [name, `=Rates!$B$${index + 2}`])),
  };
}
