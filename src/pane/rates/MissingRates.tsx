import { listOf } from "../../quantities/bed/officeLists";
import type { FoundRates } from "../../workbook/read/rates";
import { Button } from "../Button";
import { counted } from "../templates/words";
import { missingRates } from "./missing";
import type { RatesSheetWork } from "./useRatesSheet";

const anyOf = new Intl.ListFormat("en-US", { type: "disjunction" });

interface MissingRatesProps {
  readonly found: FoundRates;
  readonly disabled: boolean;
  readonly sheet: RatesSheetWork;
}

/** Brings a Rates sheet that lacks lists or single rates up to the form of a new one, once what it gets was shown. */
export function MissingRates({ found, disabled, sheet }: MissingRatesProps) {
  const { keys, stones, lists } = missingRates(found);
  const { proposed } = sheet;
  if (keys.length === 0 && lists.length === 0 && !stones) return null;
  const named = anyOf.format([...(stones ? ["stone"] : []), ...lists.map((key) => listOf(key).of)]);
  const rates = keys.length > 0 ? counted(keys.length, "rate") : "";
  return (
    <section aria-labelledby="missing-rates-heading">
      <h2 id="missing-rates-heading">Missing from the sheet</h2>
      {proposed ? (
        <>
          <p>
            These go below everything on {proposed.sheet}, at {proposed.address}, where the cells are blank. Nothing
            else changes. Sample rows are marked as samples until you type your own.
          </p>
          <ul>
            {proposed.parts.map(({ label, address, starts }) => (
              <li key={label}>
                {label}, {address}: {starts.join("; ")}
              </li>
            ))}
          </ul>
          <p class="row">
            <Button main off={disabled} onPress={() => void sheet.addProposed()}>
              Add {proposed.parts.length === 1 ? "it" : `these ${proposed.parts.length}`}
            </Button>
            <Button off={disabled} onPress={sheet.leave}>
              Leave as is
            </Button>
          </p>
        </>
      ) : (
        <p class="row">
          <span class="grow below">
            {named && `No list of ${named}. `}
            {rates && `${rates} without a cell. `}
            You'll see what goes where before anything is written.
          </span>
          <Button off={disabled} onPress={() => void sheet.propose(found)}>
            Preview
          </Button>
        </p>
      )}
    </section>
  );
}
