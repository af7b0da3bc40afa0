import { otherProducts } from "../layout/otherProducts";
import { closeCalls } from "../quantities/bed/closeCalls";
import { dollarText } from "./numbers";
import type { PricedPreview } from "./preview";
import { useLater } from "./useLater";

/** What is bought for very little, and what would cost less, each with the saving. Nothing changes by itself. */
export function WorthALook({ preview }: { readonly preview: PricedPreview }) {
  // Each product is an estimate of its own.
  const others = useLater(preview, othersFor);
  const calls = [...closeCalls(preview.bed, preview.estimate), ...(others ?? [])];
  if (calls.length === 0) return null;
  return (
    <section aria-labelledby="worth-a-look-heading">
      <h2 id="worth-a-look-heading">Worth a look</h2>
      {calls.map(({ text, by, saves }) => (
        <p key={text} class="notice">
          {text} {by} saves {dollarText(saves)} in cost.
        </p>
      ))}
    </section>
  );
}

const othersFor = ({ form, estimate }: PricedPreview) => otherProducts(form, estimate);
