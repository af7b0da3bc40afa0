import { Associations } from "./functions/associations";
import { createCustomFunctions } from "./functions/customFunctions";
import { createExcel } from "./host/excel";
import { createOffice } from "./host/office";
import type { HostSession } from "./host/session";
import { LoadingNote } from "./screen/loadingNote";
import { foldPane } from "./screen/pane";

/**
 * The practice page. The host's globals are there at once, so that the add-in's own scripts, which follow, find them;
 * the grid is fetched after that, and what was asked of the globals meanwhile waits for it.
 */

const namespace = document.currentScript?.dataset.namespace ?? "";
const associations = new Associations();
const note = new LoadingNote();

const session: Promise<HostSession> = import("./start")
  .then(({ start }) => start(namespace, associations, note))
  .catch((error: unknown) => {
    note.fail(error);
    throw error;
  });
// Whoever waits for the session hears of the failure too; the note has told the person.
session.catch(() => undefined);

Object.assign(globalThis, {
  CustomFunctions: createCustomFunctions(associations),
  Excel: createExcel(session),
  Office: createOffice(session),
});

foldPane();
