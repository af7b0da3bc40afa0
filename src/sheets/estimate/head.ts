import { quoted } from "../../quantities/bed/evaluate";
import { type FieldKey, fields } from "../../quantities/bed/fields";
import type { BedForm } from "../../quantities/bed/form";
import { lines } from "../../quantities/bed/lines";
import { rateKeys } from "../../quantities/bed/rates";
import type { DraftRow } from "../compose";
import { remarksRange } from "./lines";
import { isLength } from "./rateFormulas";
import { rateOf, resultRow } from "./rows";

const NO_RATE_WORDS = "No price: a rate is missing or damaged. See its row.";
const NO_VALUE_WORDS = "No price: a cell below has an error. See that cell.";
const SAMPLE_WORDS = "sample prices: set your own in Rates";

/**
 * The price on top of the block, and in words why there is none, or that it rests on sample prices. The price itself
 * stays an error then: words in its place would be passed over by a sum of several blocks.
 */
export function headRow(form: BedForm): DraftRow {
  const said =
    `=IF(ISERROR({price}),${noPriceWords(form)},` +
    `IF(COUNTIF(${remarksRange()},"*sample*")+COUNTIF({materialMarkup.note}:{minimumCharge.note},"sample*")>0,` +
    `${quoted(SAMPLE_WORDS)},""))`;
  const row = resultRow(
    "Price",
    { content: "={price}", key: "headPrice", format: "money", look: "total" },
    "before tax",
  );
  const words = { content: said, key: "headWords", look: "warning" } as const;
  return { cells: [...row.cells.slice(0, 4), words] };
}

function noPriceWords(form: BedForm): string {
  const cells = rateKeys.filter((key) => rateOf(form, key)).map((key) => numberCell(key));
  if (cells.length === 0) return quoted(NO_VALUE_WORDS);
  const areNumbers = cells.map((cell) => `ISNUMBER(${cell})`).join(",");
  return `IF(AND(${areNumbers}),${quoted(NO_VALUE_WORDS)},${quoted(NO_RATE_WORDS)})`;
}

/** The cell that holds a followed rate as a number: a price is in its line, tape text in the cell that reads it. */
function numberCell(key: FieldKey): string {
  const line = lines.find(({ cost }) => cost === key);
  if (line && key !== "crewRate") return `{${line.key}.unitCost}`;
  return isLength(fields[key]) ? `{${key}.decimal}` : `{${key}}`;
}
