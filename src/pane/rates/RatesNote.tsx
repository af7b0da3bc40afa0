import type { BedForm } from "../../quantities/bed/form";
import { Button } from "../Button";
import type { KnownRates } from "./store";
import { ratesSummary } from "./summary";

interface RatesNoteProps {
  readonly rates: KnownRates;
  readonly typed: BedForm["typed"];
  readonly onShow: () => void;
}

/** Where the prices come from, in one line. */
export function RatesNote({ rates, typed, onShow }: RatesNoteProps) {
  if (!rates) return null;
  const { found } = rates;
  return (
    <p class="row">
      <span class="grow below">
        {found ? ratesSummary(found, typed) : "Sample prices: add a sheet of your own rates."}
      </span>
      <Button onPress={onShow}>{found ? "Show the rates" : "Rates…"}</Button>
    </p>
  );
}
