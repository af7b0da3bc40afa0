import { amounts, lineFormulas } from "../../quantities/bed/amounts";
import { quoted } from "../../quantities/bed/evaluate";
import type { FieldKey } from "../../quantities/bed/fields";
import { type BedForm, edgingOf, secondOf, soldByIn, textOf } from "../../quantities/bed/form";
import { type EstimateLine, lineKinds, lines, linesOf } from "../../quantities/bed/lines";
import { isExamplePrice } from "../../quantities/bed/listSamples";
import { must } from "../../quantities/must";
import { type DraftCell, type DraftRow, TYPED_OVER } from "../compose";
import { headings } from "./headings";
import { printed, SPARE_LINES, withKeys } from "./printed";
import { isStillExample, rateRemark } from "./rateFormulas";
import { fieldContent, fieldLook, rateOf, sectionRow } from "./rows";

const SAMPLE_WORDS = "sample price";
const SAMPLE_PRICE = quoted(SAMPLE_WORDS);

/** The priced lines of the block, a few spare ones that the sums already include, and their sums. */
export function lineRows(form: BedForm): DraftRow[] {
  const spares = Array.from({ length: SPARE_LINES }, (_, index) => spareRow(`spare${index + 1}`));
  return [
    sectionRow(headings.lines, "Quantity", "Unit", "Unit cost", "Cost", "Markup", "Price", "Kind", "Remarks"),
    ...linesOf(edgingOf(form), soldByIn(form), secondOf(form)).map((line) => lineRow(form, line)),
    ...spares,
    {
      look: "total",
      cells: [
        { content: "Totals" },
        undefined,
        undefined,
        undefined,
        sumCell(form, "directCost"),
        undefined,
        sumCell(form, "linePrices"),
      ],
    },
  ];
}

function sumCell(form: BedForm, key: "directCost" | "linePrices"): DraftCell {
  return { content: printed(form, amounts[key].is), key, format: "money" };
}

function lineRow(form: BedForm, { key, label, unit, quantity, cost, kind }: EstimateLine): DraftRow {
  return {
    cells: [
      { content: label, look: "label" },
      {
        content: form.quantities?.[key] ?? `={${quantity}}`,
        ...{ key: `${key}.quantity`, format: "two", look: "result", warnWhen: TYPED_OVER },
      },
      { content: unit, look: "note" },
      unitCostCell(form, key, cost),
      ...pricedCells(key),
      kindCell(key, kind),
      remarkCell(form, key, cost),
    ],
  };
}

/** The remarks of all lines, which say in words what the colors show. */
export function remarksRange(): string {
  return `{${must(lines[0]).key}.remark}:{${must(lines.at(-1)).key}.remark}`;
}

/** Labor is paid at the crew rate; everything else has its own price, typed here or from the office's rates. */
function unitCostCell(form: BedForm, key: string, cost: FieldKey): DraftCell {
  const place = { key: `${key}.unitCost`, format: "money" } as const;
  if (cost === "crewRate") return { ...place, content: "={crewRate}", look: "result", warnWhen: TYPED_OVER };
  return { ...place, content: fieldContent(form, cost), ...fieldLook(form, cost) };
}

function spareRow(key: string): DraftRow {
  return {
    cells: [
      { content: "", look: "inputWords" },
      { content: "", key: `${key}.quantity`, format: "two", look: "input" },
      { content: "", look: "inputWords" },
      { content: "", format: "money", look: "input", key: `${key}.unitCost` },
      ...pricedCells(key),
      kindCell(key, "material"),
    ],
  };
}

function pricedCells(key: string): DraftCell[] {
  const own = new Set(["quantity", "unitCost", "kind", "cost", "markup"]);
  const cell = (part: keyof typeof lineFormulas): DraftCell => ({
    content: withKeys(lineFormulas[part], (name) => (own.has(name) ? `{${key}.${name}}` : undefined)),
    key: `${key}.${part}`,
    format: part === "markup" ? "share" : "money",
    look: "result",
    ...(part === "markup" && { warnWhen: TYPED_OVER }),
  });
  return [cell("cost"), cell("markup"), cell("price")];
}

function kindCell(key: string, kind: string): DraftCell {
  return { content: kind, key: `${key}.kind`, look: "note", choices: lineKinds };
}

/** Says in words what was typed over, whether the price is an example, and why there is none. */
function remarkCell(form: BedForm, key: string, cost: FieldKey): DraftCell {
  const isGiven = cost !== "crewRate" && !rateOf(form, cost);
  const typedOver = [
    [`${key}.quantity`, "quantity"],
    [`${key}.markup`, "markup"],
    ...(isGiven ? [] : [[`${key}.unitCost`, "price"]]),
  ].map(([cell, what]) => `IF(ISFORMULA({${cell}}),"","${what} typed over. ")`);
  const content = `=TRIM(${[...typedOver, priceRemark(form, key, cost)].join("&")})`;
  const warnWhen = `=AND(LEN({self})>0,LEFT({self},${SAMPLE_WORDS.length})<>${SAMPLE_PRICE})`;
  return { content, key: `${key}.remark`, look: "note", warnWhen };
}

function priceRemark(form: BedForm, key: string, cost: FieldKey): string {
  const price = `{${key}.unitCost}`;
  if (cost === "crewRate") {
    // The row of the crew rate says what there is to say; here is no room for its note.
    const said = `IF(LEFT({crewRate.note},6)="sample",${SAMPLE_PRICE},IF(ISNUMBER(${price}),"",{crewRate.note}))`;
    return `IF(ISFORMULA(${price}),${said},"")`;
  }
  const rate = rateOf(form, cost);
  if (rate) return `IF(ISFORMULA(${price}),${rateRemark(rate, price, SAMPLE_PRICE, '""')},"")`;
  const content = fieldContent(form, cost);
  const isExample = typeof content === "number" && isExamplePrice(cost, textOf(form, cost));
  const said = isExample ? `IF(${isStillExample(price, content)},${SAMPLE_PRICE},"")` : '""';
  return `IF(ISNUMBER(${price}),${said},"no price")`;
}
