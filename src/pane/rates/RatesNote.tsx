import { Button } from "../Button";
import type { KnownRates } from "./store";
import { ratesSummary } from "./summary";

interface RatesNoteProps {
  readonly rates: KnownRates;
  readonly onShow: () => void;
}

/** Where the prices come from, in one line. */
export function RatesNote({ rates, onShow }: RatesNoteProps) {
  if (!rates) return null;
  const { found } = rates;
  return (
    <p class="row">
      <span class="grow below">{found ? ratesSummary(found) : "Sample prices: add a sheet of your own rates."}</span>
      <Button onPress={onShow}>{found ? "Show the rates" : "Rates…"}</Button>
    </p>
  );
}
