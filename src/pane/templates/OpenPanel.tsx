import { contentsOf, type TypedIn } from "../../sheets/templates/contents";
import { Button } from "../Button";
import { InTheWayNotice } from "../InTheWayNotice";
import { onEscape } from "../onEscape";
import { PanelHeading } from "../PanelHeading";
import { Grid } from "./Grid";
import { isThereIn } from "./opening";
import { PartList } from "./PartList";
import { ReadsOutside } from "./ReadsOutside";
import type { Looking, Opening } from "./useOpening";
import { counted, savedWords, sizeWords } from "./words";

interface OpenPanelProps {
  readonly opening: Opening;
  readonly looking: Looking;
  readonly working: boolean;
  readonly selected: string;
}

/** What a template holds, before anything of it is written. */
export function OpenPanel({ opening, looking, working, selected }: OpenPanelProps) {
  const { template, there } = looking;
  const contents = contentsOf(template);
  const isThere = isThereIn(there);
  const missing = contents.rates.filter(({ name }) => !isThere(name));
  const newSheet = { kind: "new sheet", name: template.name } as const;
  return (
    <section aria-labelledby="template-held" onKeyDown={onEscape(opening.cancel, working)}>
      <PanelHeading id="template-held">{template.name}</PanelHeading>
      {template.note && <p class="breaks">{template.note}</p>}
      <p class="below">
        {sizeWords(template)}, {counted(contents.formulas, "formula")}. {savedWords(template)} Nothing is written yet.
      </p>
      <Grid template={template} />
      <PartList summary="Prices and markups in it" items={contents.prices.map(typedWords)} open />
      <PartList summary="Other inputs" items={contents.inputs.map(typedWords)} />
      <ReadsOutside opening={opening} outside={contents.outside} isThere={isThere} selected={selected} />
      <PartList
        summary="Office rates it follows"
        items={contents.rates.map(({ name, formulas }) => `${name}, in ${counted(formulas, "formula")}`)}
      />
      <PartList summary="Functions it uses" items={contents.functions} />
      {contents.functions.includes("OFFSET") && (
        <p class="notice">OFFSET decides which cells it reads as it runs. Check the formulas that use it.</p>
      )}
      {missing.length > 0 && (
        <p class="notice trouble">
          This workbook has no {missing.map(({ name }) => name).join(", ")}. The cells that follow{" "}
          {missing.length === 1 ? "it" : "them"} will say so until the rates are there (Rates).
        </p>
      )}
      {opening.inTheWay ? (
        <InTheWayNotice
          inTheWay={opening.inTheWay}
          what="block"
          onPlace={(place) => void opening.write(place.kind === "cell" ? place : newSheet)}
          onCancel={opening.cancel}
        />
      ) : (
        <p class="insert-bar row">
          <Button main off={working} onPress={() => void opening.write({ kind: "selection" })}>
            Put it at {selected || "the selected cell"}
          </Button>
          <Button off={working} onPress={() => void opening.write(newSheet)}>
            On a new sheet
          </Button>
          <Button off={working} onPress={opening.cancel}>
            Cancel
          </Button>
        </p>
      )}
    </section>
  );
}

function typedWords({ at, label, shows }: TypedIn): string {
  return `${at}${label ? ` ${label}` : ""}: ${shows}`;
}
