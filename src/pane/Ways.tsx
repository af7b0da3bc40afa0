import type { Way } from "../quantities/bed/form";
import { ways } from "../quantities/bed/form";

interface WaysProps {
  readonly way: Way;
  readonly onChoose: (way: Way) => void;
}

/** What is taped in each way: the bed as a thin outline, the tape as thick lines. */
const pictures: Readonly<Record<Way, { readonly bed: string; readonly tape: string; readonly short: string }>> = {
  rectangle: { short: "Rectangle", bed: "M4 6h40v20h-40z", tape: "M4 26h40M44 6v20" },
  round: { short: "Round or ring", bed: "M24 3a13 13 0 1 1 0 26a13 13 0 1 1 0-26", tape: "M11 16h26" },
  widths: {
    short: "Widths",
    bed: "M4 28h40v-12q-8-14-18-8t-22 6z",
    tape: "M4 28v-14M17 28v-16M31 28v-21M44 28v-12",
  },
  points: { short: "Outline points", bed: "M5 27L9 6L27 12L43 5L40 27z", tape: "M5 27h0M9 6h0M27 12h0M43 5h0M40 27h0" },
  area: { short: "Known area", bed: "M6 20q0-16 18-14t18 8t-14 14t-22-8", tape: "M15 14h16M15 20h16" },
};

/** How the bed was measured, chosen by a picture of what was taped. */
export function Ways({ way, onChoose }: WaysProps) {
  return (
    <fieldset class="ways" aria-describedby="way-hint">
      <legend>How it was measured</legend>
      {(Object.keys(ways) as Way[]).map((one) => (
        <label key={one}>
          <input
            type="radio"
            name="way"
            value={one}
            aria-label={ways[one].label}
            checked={one === way}
            onChange={() => onChoose(one)}
          />
          <svg viewBox="0 0 48 32" aria-hidden="true">
            <path d={pictures[one].bed} />
            <path class="thick" d={pictures[one].tape} />
          </svg>
          {pictures[one].short}
        </label>
      ))}
      <p id="way-hint" class="below">
        {ways[way].hint}
      </p>
    </fieldset>
  );
}
