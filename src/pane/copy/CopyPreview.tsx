import type { ComponentChildren } from "preact";
import type { LeftAsValue, PlainCopy, ReplacedInput } from "../../sheets/plain/result";
import { someOf } from "../../sheets/someOf";
import { PanelHeading } from "../PanelHeading";
import { copyName } from "./makeCopy";
import type { Looked } from "./useCopy";

const MOST_NAMED = 12;

/** What will become of the cells, told before anything is written. */
export function CopyPreview({ looked }: { readonly looked: Looked }) {
  const { choice, source, copy } = looked;
  const formulas = source.region.formulas.flat().filter((content) => String(content).startsWith("=")).length;
  const valuesOnly = choice.mode === "values only";
  return (
    <>
      <PanelHeading id="copy-preview">Preview</PanelHeading>
      <p>
        {source.where}, {goal(looked)}.
      </p>
      <ul>
        {valuesOnly ? (
          <li>Formulas that become values: {formulas}. No formulas are left.</li>
        ) : (
          <li>Formulas that become ordinary ones with the same results: {copy.converted.length}.</li>
        )}
        {source.isPlain && <li>There are too many cells to copy formatting, so only contents are copied.</li>}
        {source.hidden.length > 0 && <li>{source.hidden.join(" and ")} are copied too, and show in the copy.</li>}
      </ul>
      {copy.replaced.length > 0 && <Replaced replaced={copy.replaced} />}
      {copy.leftAsValues.length > 0 && <Left left={copy.leftAsValues} />}
      {copy.outside.length > 0 && <Outside copy={copy} isElsewhere={choice.where === "workbook"} />}
      {copy.alsoRead.length > 0 && (
        <Part heading="May show something else">
          <p>These read a taped length as text, which is a number in the copy: {someOf(copy.alsoRead, MOST_NAMED)}.</p>
        </Part>
      )}
    </>
  );
}

function goal({ choice, source }: Looked): string {
  if (choice.where === "workbook") return "as a separate workbook";
  if (choice.where === "cell") return "starting at the cell you select";
  return `on a new sheet, ${copyName(source, choice.mode)}`;
}

function Replaced({ replaced }: { readonly replaced: readonly ReplacedInput[] }) {
  const words = replaced.map(({ from, was, is, unit }) => `${from}: ${was} becomes ${shortNumber(is)} ${unit ?? ""}`);
  return (
    <details>
      <summary>Taped lengths that become numbers ({replaced.length})</summary>
      <ul>
        {words.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </details>
  );
}

function Left({ left }: { readonly left: readonly LeftAsValue[] }) {
  const byReason = new Map<string, string[]>();
  for (const { from, reason } of left) byReason.set(reason, [...(byReason.get(reason) ?? []), from]);
  return (
    <Part heading={`Formulas that become values and no longer update (${left.length})`}>
      <List items={[...byReason].map(([reason, cells]) => `${someOf(cells, MOST_NAMED)}: ${reason}`)} />
    </Part>
  );
}

function Outside({
  copy: { outside, carried },
  isElsewhere,
}: {
  readonly copy: PlainCopy;
  readonly isElsewhere: boolean;
}) {
  const read = (readBy: readonly string[]) => `read by ${someOf(readBy, MOST_NAMED)}`;
  if (!isElsewhere) {
    return (
      <Part heading={`Read from outside the copy and still linked (${outside.length})`}>
        <List items={outside.map(({ what, readBy }) => `${what}, ${read(readBy)}`)} />
      </Part>
    );
  }
  return (
    <Part heading={`Read from outside the copy and brought along as values (${carried.length})`}>
      <p class="below">They're listed below the copied cells, where you can change them.</p>
      <List items={carried.map(({ what, value }) => `${what}: ${value === "" ? "blank" : value}`)} />
    </Part>
  );
}

function Part({ heading, children }: { readonly heading: string; readonly children: ComponentChildren }) {
  return (
    <>
      <h3>{heading}</h3>
      {children}
    </>
  );
}

function List({ items }: { readonly items: readonly string[] }) {
  const more = items.slice(MOST_NAMED);
  return (
    <>
      <ul>
        {items.slice(0, MOST_NAMED).map((item) => (
          <li key={item}>{item}</li>
        ))}
      </ul>
      {more.length > 0 && (
        <details>
          <summary>{more.length} more</summary>
          <ul>
            {more.map((item) => (
              <li key={item}>{item}</li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}

function shortNumber(is: number | string): string {
  return typeof is === "number" ? String(Math.round(is * 1000) / 1000) : is;
}
