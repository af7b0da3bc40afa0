import type { BedForm } from "../../quantities/bed/form";
import type { DraftRow } from "../compose";
import { laborHoursFormula } from "./lines";
import { fieldRow, resultRow } from "./rows";

/** Markups by kind, overhead and the smallest charge, and the price that follows, as markup and as margin. */
export function priceRows(form: BedForm): DraftRow[] {
  return [
    fieldRow(form, "materialMarkup"),
    fieldRow(form, "laborMarkup"),
    fieldRow(form, "haulingMarkup"),
    fieldRow(form, "overhead"),
    fieldRow(form, "minimumCharge"),
    fieldRow(form, "salesTax"),
    resultRow(
      "Overhead",
      { content: "={overhead}*{directCost}", key: "overheadCost", format: "money" },
      "",
      "share of the sum of costs",
    ),
    resultRow("Cost with overhead", { content: "={directCost}+{overheadCost}", key: "fullCost", format: "money" }, ""),
    resultRow(
      "Price",
      {
        // A text among the things compared would be passed over; added to 0 it is an error.
        content: "=ROUND(MAX({minimumCharge}+0,{linePrices}+{overheadCost}),2)",
        key: "price",
        format: "money",
        look: "total",
      },
      "before tax",
      "sum of prices and overhead, or the smallest charge where that is more",
    ),
    resultRow("Sales tax", { content: "=ROUND({salesTax}*{price},2)", key: "taxSum", format: "money" }, ""),
    resultRow("Price with tax", { content: "={price}+{taxSum}", key: "priceWithTax", format: "money" }, ""),
    resultRow(
      "Markup, on cost",
      { content: '=IF({fullCost}>0,{price}/{fullCost}-1,"")', key: "markupOnCost", format: "share" },
      "",
      "profit ÷ cost: what is added",
    ),
    resultRow(
      "Margin, on price",
      { content: '=IF({price}>0,1-{fullCost}/{price},"")', key: "marginOnPrice", format: "share" },
      "",
      "profit ÷ price: what is kept; always less than the markup",
    ),
    resultRow("Labor", { content: laborHoursFormula(), key: "laborHours" }, "person-h"),
    resultRow(
      "Crew time",
      { content: "={laborHours}/({crewSize}*{crewDay})", key: "crewDays" },
      "days",
      "for the whole crew together",
    ),
  ];
}
