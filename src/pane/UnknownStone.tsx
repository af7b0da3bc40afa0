import { useState } from "preact/hooks";
import { type BedForm, textOf } from "../quantities/bed/form";
import { STONES } from "../quantities/stone";
import { isKnownStone } from "../sheets/rates/stoneNames";
import { undoChanges, type WrittenChanges } from "../workbook/change/cells";
import { Button } from "./Button";
import type { ChoicesProps } from "./Choices";
import { StoneNames } from "./jobRows/StoneNames";
import { rememberedWords, rememberStones } from "./rates/rememberStones";
import { refreshRates } from "./rates/store";
import { StatusMessage } from "./StatusMessage";
import { useStatus } from "./useStatus";

/** The bed's stone, where it's a name that no one has explained yet. */
export function unknownStone(form: BedForm): string | undefined {
  const name = textOf(form, "stone").trim();
  return name === "" || isKnownStone(name, form.rates) ? undefined : name;
}

/** Asks once what the bed's stone is. Rates keeps the answer; without rates it holds for this bed. */
export function UnknownStone({ form, onFill }: Pick<ChoicesProps, "form" | "onFill">) {
  const { status, isWorking, attempt } = useStatus();
  const [written, setWritten] = useState<WrittenChanges>();
  const name = unknownStone(form);
  const { rates } = form;
  return (
    <>
      <StoneNames
        names={name === undefined ? [] : [{ name, rows: [] }]}
        stones={[...new Set([...(rates?.stones ?? []), ...STONES].map((stone) => stone.name))]}
        hasRates={rates !== undefined}
        off={isWorking}
        onUse={({ is }) => onFill({ stone: String(is) })}
        onRemember={(answers) =>
          attempt("Writing…", async () => {
            setWritten(await rememberStones(answers));
            return rememberedWords(answers.length);
          })
        }
      />
      {written && (
        <p class="row">
          <Button
            off={isWorking}
            onPress={() =>
              attempt("Undoing…", async () => {
                await undoChanges(written);
                setWritten(undefined);
                await refreshRates();
                return `Undone: ${written.title}.`;
              })
            }
          >
            Undo the name
          </Button>
        </p>
      )}
      <StatusMessage status={status} />
    </>
  );
}
