import { cautions } from "../sheets/cautions";
import { escaped, link } from "./html";

/** Which caution goes with the work that a function counts, by what the caution is about. */
export const CAUTION_OF: Readonly<Record<string, string>> = {
  DIG_DATE: "Buried lines",
  DIG_YARDS: "Buried lines",
  STAKES: "Buried lines",
  PINS: "Buried lines",
  PIN_MAP: "Buried lines",
  LAYOUT_PINS: "Buried lines",
  SPOIL_YARDS: "Trailers and trucks",
  LOADS: "Trailers and trucks",
  STONE_BAGS: "Lifting",
  STONE_BULK_BAGS: "Lifting",
  PAVERS: "Lifting",
  BARROW_TRIPS: "Lifting",
  HAUL_HOURS: "Lifting",
};

/** The caution of a function, as the estimate says it, for those who use functions and lists alone; "" for none. */
export function functionCaution(id: string): string {
  const caution = cautions.find(({ about }) => about === CAUTION_OF[id]);
  if (!caution) return "";
  const all = link("numbers.html#cautions", "All cautions");
  const guide = link("first-estimate.html#before", "The guide, before anyone digs");
  return `<div class="caution">
<p><strong>${escaped(caution.about)}.</strong> ${escaped(caution.text)}</p>
<p>${all}. ${guide}.</p>
</div>`;
}
