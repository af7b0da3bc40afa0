import { insertEstimate } from "../../../../src/pane/insertEstimate";
import { redrawSelectedBlock } from "../../../../src/workbook/drawing/drawing";
import { select } from "../bench";
import { addFixtures, office, PNG } from "../office";
import type { Operation } from "../operation";
import { bed } from "./inserts";
import { done, written } from "./said";

const onNotes = { office, front: "Notes", selected: "D14", sheet: "Notes", bySelection: true } as const;

export const draw = async () => ({ png: PNG, widthPoints: 300, heightPoints: 200, altText: "A bed in plan" });

/** The drawing of an estimate. */
export const drawn: readonly Operation[] = [
  {
    title: "Draw the bed of an estimate",
    writers: ["redrawSelectedBlock"],
    ...onNotes,
    ready: async (host) => {
      await addFixtures(host);
      await insertBlock();
      return async () => {
        await redrawSelectedBlock(draw);
        return done;
      };
    },
  },
  {
    title: "Redraw in place of the last drawing",
    writers: ["redrawSelectedBlock"],
    ...onNotes,
    ready: async (host) => {
      await addFixtures(host);
      await insertBlock();
      await redrawSelectedBlock(draw);
      await host.type({ "Notes!E16": "19" });
      return async () => {
        await redrawSelectedBlock(draw);
        return done;
      };
    },
  },
];

/** Puts the estimate onto Notes at D12, and selects a cell of it. */
export async function insertBlock(): Promise<string> {
  await select("Notes", "D12");
  const { id } = await written(insertEstimate(bed, { kind: "selection" }));
  await select("Notes", "D14");
  return id;
}
