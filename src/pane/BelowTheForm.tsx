import { edgingNames, hasPlan, textOf } from "../quantities/bed/form";
import { edgingCautions } from "../quantities/edgingWork";
import { cautionsOf } from "../quantities/tableSources";
import { cautions } from "../sheets/cautions";
import type { ChoicesProps } from "./Choices";
import { CutOuts } from "./CutOuts";
import { Details } from "./Details";
import { Drawing } from "./Drawing";
import type { MeasurementsProps } from "./Measurements";
import { MoreShape } from "./MoreShape";
import type { Preview } from "./preview";
import { Result } from "./Result";
import { RatesNote } from "./rates/RatesNote";
import type { KnownRates } from "./rates/store";
import { WorthALook } from "./WorthALook";

interface BelowProps extends MeasurementsProps, ChoicesProps {
  readonly preview: Preview;
  readonly rates: KnownRates;
  readonly onShowRates: () => void;
}

/** What is below the first view of the estimate: the drawing, and what is folded. It is fetched after the first view. */
export function BelowTheForm(props: BelowProps) {
  const { form, problemAt, preview, onType, onFill, rates, onShowRates } = props;
  const own = [...cautionsOf([textOf(form, "stone")]), ...edgingCautions(edgingNames(form))];
  return (
    <>
      {hasPlan(form.way) && <Drawing preview={preview} onChange={props.onChange} onFill={onFill} />}
      {preview.estimate && <WorthALook preview={preview} />}
      <Result preview={preview} />
      <MoreShape form={form} problemAt={problemAt} onType={onType} onFill={onFill} />
      {hasPlan(form.way) && <CutOuts form={form} problemAt={problemAt} onChange={props.onChange} />}
      <Details
        form={form}
        problemAt={problemAt}
        onType={onType}
        onFill={onFill}
        onUseRate={(field) => onFill({ [field]: undefined })}
      />
      <RatesNote rates={rates} typed={form.typed} onShow={onShowRates} />
      <details>
        <summary>Cautions</summary>
        <p class="below">Local codes, the locate ticket, and licensed professionals come first.</p>
        <dl class="cautions">
          {[...own, ...cautions].map(({ about, text }) => (
            <>
              <dt key={about}>{about}</dt>
              <dd>{text}</dd>
            </>
          ))}
        </dl>
      </details>
    </>
  );
}
