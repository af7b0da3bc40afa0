import { type Amount, lineFormulas, priceAmounts } from "../bed/amounts";
import type { LineKind } from "../bed/lines";
import { SOLD_BY, TON } from "../soldBy";
import { type BedRowKey, type KindOf, kindRows } from "./bedRows";

/*
 * The price of a job, declared once like the estimate of a bed (`bed/amounts.ts`): the lines of the whole job, and from
 * them to the total. In its expressions `{beds.X}` is a row of what the job takes of each bed (`bedRows.ts`). The pane
 * evaluates them (`priceJob.ts`), and the block on the sheet prints them (`sheets/job/jobBlock.ts`). Needs are added
 * before they are rounded to what is sold.
 */

/** What the job takes from its first bed alone: it has one minimum charge, and one crew with one set of trucks. */
export const priceSettings = [
  ...["materialMarkup", "laborMarkup", "haulingMarkup", "overhead", "minimumCharge", "salesTax"],
] as const;
export const workSettings = [
  ...["crewRate", "crewSize", "crewDay", "truckYards", "truckPayload", "deliveryYards", "deliveryPayload"],
  ...["pinsPerBox"],
] as const;
/** Lines of a bed whose unit costs the job takes from its first bed. */
export const firstBedCosts = ["haul", "dump", "pinLine", "delivery"] as const;

/** How the label of a line begins that is there for each kind; the kind follows. */
export const kindLabels = {
  edging: "Edging pieces, ",
  fabric: "Fabric rolls, ",
  stone: "Stone, ",
  delivery: "Delivery, ",
} as const;

/** A priced line of the job. Its label may be an expression, which begins with "=". */
export interface JobLine {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly quantity: string;
  readonly unitCost: string;
  readonly kind: LineKind;
  readonly shows?: Amount["shows"];
}

/** What a line of one kind of stone, edging, or fabric rests on, with keys such as `stone1.needed`. */
export interface JobAmount {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly is: string;
  readonly shows?: Amount["shows"] | "words";
}

/** How many kinds the beds of a job have; of sand there is one, or none. */
export type Kinds = Readonly<Record<Exclude<KindOf, "sand">, number> & { sand?: number }> & {
  /** What each kind of stone is sold by, such as "bags"; left out: tons. */
  readonly stoneUnits?: readonly string[];
};

const unitOfStone = ({ stoneUnits = [] }: Kinds, n: number): string => stoneUnits[n - 1] ?? TON.unit;
/** Whether any stone is sold by something else than tons. */
export const sellsOtherwise = ({ stoneUnits = [] }: Kinds): boolean => stoneUnits.some((unit) => unit !== TON.unit);
/** The unit that a kind of stone says, as `bedRows.ts` words it. */
export const unitOfKind = (kind: string): string =>
  (SOLD_BY.find(({ inKind }) => inKind !== "" && kind.includes(inKind)) ?? TON).unit;

const ofKind = (of: KindOf, key: string) => ({
  /** The row's values of beds of this kind, added up. */
  sum: (values: BedRowKey) => `SUMIF({beds.${kindRows[of]}},{${key}.kind},{beds.${values}})`,
  /** The row's value of the first bed of this kind. */
  first: (values: BedRowKey) =>
    `IF({${key}.kind}="none",0,INDEX({beds.${values}},MATCH({${key}.kind},{beds.${kindRows[of]}},0)))`,
});

/** The amounts behind the lines of each kind. */
export function kindAmounts(kinds: Kinds): JobAmount[] {
  const amount = (key: string, label: string, unit: string, is: string, shows?: JobAmount["shows"]): JobAmount => ({
    key,
    label,
    unit,
    is,
    ...(shows && { shows }),
  });
  const kindOf = (of: KindOf, key: string, n: number) =>
    amount(
      `${key}.kind`,
      "Kind",
      "",
      // Beds may come to have fewer kinds than lines.
      `IF(MAX({kinds.${of}})<${n},"none",INDEX({beds.${kindRows[of]}},MATCH(${n},{kinds.${of}},0)))`,
      "words",
    );
  return [
    ...each(kinds.stone, "stone", (key, n) => {
      const { sum, first } = ofKind("stone", key);
      const unit = unitOfStone(kinds, n);
      const sold = (needed: string) =>
        `IF(${needed}>0,BED.ORDER_UP(${needed},${first("stoneStep")},${first("stoneMinimum")}),0)`;
      return [
        kindOf("stone", key, n),
        amount(`${key}.needed`, "Stone needed together", unit, sum("stoneTons")),
        amount(`${key}.order`, "Stone to order together", unit, sold(`{${key}.needed}`)),
        amount(`${key}.density`, "Stone weight", "tons/cu yd", first("stoneDensity")),
        amount(
          `${key}.toDeliver`,
          "Stone to deliver",
          unit,
          // A bed's own block counts loads of what it works out, also where others are typed. What is typed on the job's
          // line is delivered.
          `MAX(0,${sold(sum("tonsToBring"))}+{stoneLine${n}.quantity}-{${key}.order}-${sum("stoneTyped")})`,
        ),
        amount(
          `${key}.yards`,
          "Order volume",
          "cu yd",
          `({${key}.order}+${sum("stoneTyped")})${volumeOf(kinds, key, n)}`,
        ),
        amount(`${key}.tons`, "Order weight", "tons", `{${key}.yards}*{${key}.density}`),
      ];
    }),
    ...each(kinds.edging, "edging", (key, n) => {
      const { sum, first } = ofKind("edging", key);
      const stakes = (pieces: string) =>
        `(MAX(0,${sum("stakes")}-(${pieces}+${sum("piecesTyped")}-${sum("piecesOfTyped")})*${first("stakesPerPiece")})+${sum("stakesTyped")})`;
      const cost = (pieces: string) => `${pieces}*${first("pieceCost")}+${stakes(pieces)}*${first("stakeCost")}`;
      return [
        kindOf("edging", key, n),
        amount(`${key}.beds`, "Beds with this edging", "beds", `SUM({${key}.has})`, "whole"),
        amount(`${key}.apart`, "Pieces, bed by bed", "pieces", sum("ownPieces"), "whole"),
        amount(
          `${key}.together`,
          "Pieces, cut together",
          "pieces",
          `IF({${key}.beds}<2,{${key}.apart},MIN({${key}.apart},BED.JOB_PIECES({${key}.open},${first("pieceLength")},${first("pieceLap")},{${key}.closed})))`,
          "whole",
        ),
        amount(
          `${key}.pieces`,
          "Pieces, the cheaper way with its stakes",
          "pieces",
          `IF(${cost(`{${key}.together}`)}>${cost(`{${key}.apart}`)},{${key}.apart},{${key}.together})`,
          "whole",
        ),
        amount(`${key}.stakes`, "Extra stakes", "stakes", stakes(`{${key}.pieces}`), "whole"),
      ];
    }),
    ...each(kinds.fabric, "fabric", (key, n) => {
      const { sum, first } = ofKind("fabric", key);
      return [
        kindOf("fabric", key, n),
        amount(`${key}.beds`, "Beds with this fabric", "beds", `SUM({${key}.has})`, "whole"),
        amount(`${key}.apart`, "Rolls, bed by bed", "rolls", sum("ownRolls"), "whole"),
        amount(
          `${key}.rolls`,
          "Rolls, cut together",
          "rolls",
          `IF({${key}.beds}<2,{${key}.apart},MIN({${key}.apart},BED.JOB_ROLLS({${key}.strips},${first("rollLength")},${first("endLap")})))`,
          "whole",
        ),
      ];
    }),
    ...each(kinds.sand, "sand", (key, n) => {
      const { sum, first } = ofKind("sand", key);
      return [
        kindOf("sand", key, n),
        amount(`${key}.needed`, "Sand needed together", "cu yd", sum("sand")),
        amount(
          `${key}.order`,
          "Sand to order together",
          "cu yd",
          `IF({${key}.needed}>0,BED.ORDER_UP({${key}.needed},${first("sandStep")}),0)`,
        ),
      ];
    }),
  ];
}

/** The cubic yards of an amount of a kind of stone, as what comes after it. */
const volumeOf = (kinds: Kinds, key: string, n: number): string =>
  unitOfStone(kinds, n) === TON.unit ? `/{${key}.density}` : `*${ofKind("stone", key).first("yardsEach")}`;

function each<T>(kinds: number | undefined, name: KindOf, make: (key: string, n: number) => readonly T[]): T[] {
  return Array.from({ length: kinds ?? 0 }, (_, index) => make(`${name}${index + 1}`, index + 1)).flat();
}

/** Rows of one kind of edging or fabric: the values of its beds, and nothing for the others. */
export const kindLists = {
  edging: {
    open: { label: "Runs with two ends", is: "{openRun}" },
    closed: { label: "Closed runs", is: "{closedRun}" },
    // Right below the closed runs: both are one range.
    inner: { label: "Closed runs inside", is: "{innerRun}" },
    has: { label: "Has runs to cut", is: "IF({ownPieces}>0,1,0)" },
  },
  fabric: {
    strips: { label: "Strips to cut", is: "{strips}" },
    has: { label: "Has strips to cut", is: "IF({ownRolls}>0,1,0)" },
  },
} as const;

/** The standard lines of a job, in the order in which the work is done. */
export function jobLines(kinds: Kinds): JobLine[] {
  const labor = (key: string, label: string, quantity: string): JobLine => ({
    key,
    label,
    unit: "labor hours",
    quantity,
    unitCost: "{crewRate}",
    kind: "labor",
  });
  const spoilLoads = (yards: BedRowKey, typed: BedRowKey) =>
    `IF(SUM({beds.${yards}})>0,BED.LOADS(SUM({beds.${yards}}),{truckYards},SUM({beds.spoilTons})/SUM({beds.spoil}),{truckPayload}),0)` +
    `+SUM({beds.${typed}})`;
  const hauling = { unit: "loads", kind: "hauling", shows: "whole" } as const;
  const buy = (unit: string) => ({ unit, kind: "material", shows: "whole" }) as const;
  return [
    labor("setUp", jobInputs.setUpHours.label, "{setUpHours}"),
    labor("scrape", "Scrape and load", "SUM({beds.scrapeTime})"),
    {
      ...hauling,
      key: "haul",
      label: "Haul off",
      quantity: spoilLoads("spoilHauled", "haulsTyped"),
      unitCost: "{first.haul.unitCost}",
    },
    {
      ...hauling,
      key: "dump",
      label: "Dump fee",
      quantity: spoilLoads("spoilDumped", "dumpsTyped"),
      unitCost: "{first.dump.unitCost}",
    },
    ...each(kinds.edging, "edging", (key, n): JobLine[] => {
      const { sum, first } = ofKind("edging", key);
      return [
        {
          ...buy("pieces"),
          key: `edgingLine${n}`,
          label: `="${kindLabels.edging}"&{${key}.kind}`,
          quantity: `{${key}.pieces}+${sum("piecesTyped")}`,
          unitCost: first("pieceCost"),
        },
        {
          ...buy("stakes"),
          key: `stakeLine${n}`,
          label: "Extra stakes",
          quantity: `{${key}.stakes}`,
          unitCost: first("stakeCost"),
        },
      ];
    }),
    ...each(kinds.sand, "sand", (key, n): JobLine[] => {
      const { sum, first } = ofKind("sand", key);
      return [
        {
          key: `sandLine${n}`,
          label: "Sand",
          unit: "cu yd",
          quantity: `{${key}.order}+${sum("sandTyped")}`,
          unitCost: first("sandCost"),
          kind: "material",
        },
      ];
    }),
    labor("setEdging", "Set edging", "SUM({beds.edgingTime})"),
    ...each(kinds.fabric, "fabric", (key, n): JobLine[] => {
      const { sum, first } = ofKind("fabric", key);
      return [
        {
          ...buy("rolls"),
          key: `fabricLine${n}`,
          label: `="${kindLabels.fabric}"&{${key}.kind}`,
          quantity: `{${key}.rolls}+${sum("rollsTyped")}`,
          unitCost: first("rollCost"),
        },
      ];
    }),
    {
      ...buy("boxes"),
      key: "pinLine",
      label: "Pins",
      quantity: "BED.ORDER_UP(SUM({beds.pins}),{pinsPerBox})/{pinsPerBox}+SUM({beds.boxesTyped})",
      unitCost: "{first.pinLine.unitCost}",
    },
    labor("layFabric", "Lay and pin fabric", "SUM({beds.fabricTime})"),
    ...each(kinds.stone, "stone", (key, n): JobLine[] => {
      const { sum, first } = ofKind("stone", key);
      const inYards = volumeOf(kinds, key, n);
      return [
        {
          key: `stoneLine${n}`,
          label: `="${kindLabels.stone}"&{${key}.kind}`,
          unit: unitOfStone(kinds, n),
          quantity: `{${key}.order}+${sum("stoneTyped")}`,
          unitCost: first("stoneCost"),
          kind: "material",
        },
        {
          ...hauling,
          key: `deliveryLine${n}`,
          label: `="${kindLabels.delivery}"&{${key}.kind}`,
          quantity:
            `IF({${key}.toDeliver}>0,BED.LOADS({${key}.toDeliver}${inYards},{deliveryYards},{${key}.density},{deliveryPayload}),0)` +
            `+${sum("loadsTyped")}`,
          unitCost: "{first.delivery.unitCost}",
        },
      ];
    }),
    labor("spread", "Wheelbarrow and spread", "SUM({beds.spreadTime})"),
    // One clean-up for the job: the longest that any of its beds asks for.
    labor("cleanUp", "Clean up", "MAX({beds.cleanUpTime})"),
  ];
}

/** What a line works out: as a bed's line does, less its own discount. Over 1 that is dollars, else a share: 100% or less. */
export const jobLineFormulas = {
  ...lineFormulas,
  price: `IF({discount}>1,${lineFormulas.price}-{discount},${lineFormulas.price}*(1-{discount}))`,
} as const;

/** From the lines to the total, in order. */
export const jobPrice = {
  directCost: { label: "Cost of the lines", unit: "", shows: "money", is: priceAmounts.directCost.is },
  linePrices: { label: "Prices of the lines", unit: "", shows: "money", is: priceAmounts.linePrices.is },
  overheadCost: {
    label: "Overhead",
    unit: "",
    how: "% of the cost of the lines",
    shows: "money",
    is: priceAmounts.overheadCost.is,
  },
  fullCost: priceAmounts.fullCost,
  listPrice: {
    label: "Price before discount",
    unit: "",
    how: "prices and overhead, or the minimum charge where that is more",
    shows: "money",
    is: "ROUND(MAX({minimumCharge}+0,{linePrices}+{overheadCost}),2)",
  },
  discountSum: {
    label: "Discount",
    unit: "",
    shows: "money",
    is: "ROUND({discountShare}*{listPrice}+{discountAmount},2)",
  },
  price: { label: "Price", unit: "before tax", shows: "money", is: "ROUND({listPrice}-{discountSum},2)" },
  profit: { label: "Profit", unit: "", how: "price less cost with overhead", shows: "money", is: "{price}-{fullCost}" },
  marginOnPrice: {
    label: "Margin on price",
    unit: "",
    how: "profit ÷ price",
    shows: "share",
    is: 'IF({price}>0,{profit}/{price},"")',
  },
  markupOnCost: {
    label: "Markup on cost",
    unit: "",
    how: "profit ÷ cost; always more than the margin",
    shows: "share",
    is: 'IF({fullCost}>0,{profit}/{fullCost},"")',
  },
  pricePerSqFt: { label: "Price per sq ft", unit: "", shows: "money", is: "{price}/SUM({beds.area})" },
  taxSum: { label: "Sales tax", unit: "", shows: "money", is: priceAmounts.taxSum.is },
  priceWithTax: { label: "Total due", unit: "", shows: "money", is: "ROUND({price}+{taxSum},2)" },
  depositSum: { label: "Deposit", unit: "", shows: "money", is: "ROUND({depositShare}*{priceWithTax},2)" },
  balance: { label: "Balance", unit: "", shows: "money", is: "ROUND({priceWithTax}-{depositSum},2)" },
  laborHours: { label: "Labor", unit: "labor hours", is: priceAmounts.laborHours.is },
  crewDays: priceAmounts.crewDays,
} as const satisfies Record<string, Amount>;
export type JobPriceKey = keyof typeof jobPrice;

/** What is typed about the job as a whole, each with what it starts as. */
export const jobInputs = {
  setUpHours: { label: "Set up and travel", unit: "labor hours", initial: 0 },
  discountShare: { label: "Discount, %", unit: "%", initial: 0 },
  discountAmount: { label: "Discount, amount", unit: "$", initial: 0 },
  depositShare: { label: "Deposit, %", unit: "%", initial: 0 },
} as const satisfies Record<string, { label: string; unit: string; initial: number }>;
export type JobInputKey = keyof typeof jobInputs;
