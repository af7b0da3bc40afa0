import { exampleStonePrices } from "../../quantities/bed/examples";
import { fields } from "../../quantities/bed/fields";
import { type RateKey, rateLabel } from "../../quantities/bed/rates";
import { rateSections } from "../../sheets/rates/sections";
import { STONE_HEADING } from "../../sheets/rates/stoneRows";
import type { FoundRates } from "../../workbook/read/rates";
import { Button } from "../Button";
import { StatusMessage } from "../StatusMessage";
import { useFocusBack } from "../useFocusBack";
import { useStatus } from "../useStatus";
import { MissingRates } from "./MissingRates";
import { OlderEstimates } from "./OlderEstimates";
import { OfficePanel, OfficePart, OfficeUse } from "./office/OfficeSettings";
import { useOffice } from "./office/useOffice";
import { SampleRows } from "./SampleRows";
import { useRates } from "./store";
import { examplePrices, rateProblems } from "./summary";
import { type RatesSheetWork, useRatesSheet } from "./useRatesSheet";

/** The office's rates: whether the workbook has them, what is wrong with them, and what is still invented. */
export function RatesScreen() {
  const rates = useRates();
  const reporter = useStatus();
  const sheet = useRatesSheet(reporter);
  const office = useOffice(reporter, rates);
  const { status, isWorking: working } = reporter;
  const saveButton = useFocusBack(office.panel !== undefined);
  return (
    <>
      <header>
        <h1>Rates</h1>
      </header>
      <OfficePanel office={office} working={working} />
      {/* What can be undone there stays while a panel shows. */}
      <div hidden={office.panel !== undefined}>
        <OfficeUse office={office} working={working} />
        {rates?.found ? (
          <Found found={rates.found} disabled={working} sheet={sheet} />
        ) : (
          rates && <None disabled={working} onInsert={() => void sheet.insert()} />
        )}
        {sheet.canUndo && (
          <p class="row">
            <Button off={working} onPress={() => void sheet.undo()}>
              Undo adding
            </Button>
          </p>
        )}
        <OfficePart office={office} working={working} at={saveButton} />
      </div>
      <StatusMessage status={status} />
    </>
  );
}

function None({ disabled, onInsert }: { disabled: boolean; onInsert: () => void }) {
  return (
    <>
      <p>This workbook has no rates yet. Add the Rates sheet once, and every new estimate and job row follows it.</p>
      <p class="row">
        <Button main off={disabled} onPress={onInsert}>
          Add the Rates sheet
        </Button>
      </p>
      <h2>What's on it</h2>
      <p class="below">Prices and markups are samples, and marked that way until you type your own.</p>
      <details>
        <summary>{STONE_HEADING}</summary>
        <table>
          <tbody>
            {exampleStonePrices.map(({ stone, perTon }) => (
              <Line key={stone} label={stone} value={perTon} unit={fields.stoneCost.unit} />
            ))}
          </tbody>
        </table>
        <p class="below">and rows for your own stone, with its weight</p>
      </details>
      {rateSections.map(({ heading, rates }) => (
        <details key={heading}>
          <summary>{heading}</summary>
          <table>
            <tbody>
              {(Object.keys(rates) as RateKey[]).map((key) => (
                <Line key={key} label={rateLabel(key)} value={fields[key].initial} unit={fields[key].unit} />
              ))}
            </tbody>
          </table>
        </details>
      ))}
    </>
  );
}

function Line({ label, value, unit }: { label: string; value: string; unit: string }) {
  return (
    <tr>
      <th scope="row">{label}</th>
      <td class="number">
        {value} {unit === "%" ? "" : unit}
      </td>
    </tr>
  );
}

interface FoundProps {
  readonly found: FoundRates;
  readonly disabled: boolean;
  readonly sheet: RatesSheetWork;
}

function Found({ found, disabled, sheet: work }: FoundProps) {
  const [problems, examples] = [rateProblems(found), examplePrices(found)];
  return (
    <>
      {found.sheets.map((sheet) => (
        <p class="row" key={sheet}>
          <span class="grow">Your rates are on the sheet {sheet}.</span>
          <Button main off={disabled} onPress={() => void work.show(sheet)}>
            Go to {sheet}
          </Button>
        </p>
      ))}
      {problems.length > 0 && (
        <div class="notice trouble">
          <p>Estimates that need these have no price until they're fixed:</p>
          <ul>
            {problems.map((problem) => (
              <li key={problem}>{problem}</li>
            ))}
          </ul>
        </div>
      )}
      <MissingRates found={found} disabled={disabled} sheet={work} />
      {examples.length > 0 ? (
        <>
          <h2>Still samples</h2>
          <p class="below">Estimates that use them say so. Type your own on the sheet.</p>
          <ul>
            {examples.map((label) => (
              <li key={label}>{label}</li>
            ))}
          </ul>
        </>
      ) : (
        <p>Every price and markup is your own.</p>
      )}
      <SampleRows />
      <OlderEstimates />
      <p class="below">
        A change on the sheet goes to every estimate and row that follows it. Values you typed over stay.
      </p>
    </>
  );
}
