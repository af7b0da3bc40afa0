import { arriving } from "./arriving";
import { Associations } from "./functions/associations";
import { createCustomFunctions } from "./functions/customFunctions";
import { createExcel } from "./host/excel";
import { createOffice } from "./host/office";
import { officeExtension } from "./host/officeExtension";
import { withholdFromPage } from "./host/officePage";
import type { HostSession } from "./host/session";
import { LoadingNote, LoadingTrouble } from "./screen/loadingNote";
import { foldPane } from "./screen/pane";

/**
 * The practice page. The host's globals are there at once, so that the add-in's own scripts, which follow, find them;
 * the grid is fetched after that, and what was asked of the globals meanwhile waits for it. The pane comes last: the
 * first cell does not need it.
 */

const namespace = document.currentScript?.dataset.namespace ?? "";
const associations = new Associations();
const note = new LoadingNote();

const arrived = arriving(namespace, note);
const session: Promise<HostSession> = Promise.all([
  import(/* webpackChunkName: "grid" */ "./start").catch(() => {
    throw new LoadingTrouble("The grid couldn't be loaded. Check your connection, then reload the page.");
  }),
  arrived,
]).then(([{ start }, what]) => start(namespace, associations, what, note));
// A host that does not come up is never ready; the note tells the person why.
const ready = new Promise<void>((resolve) => session.then(() => resolve(), note.fail));

Object.assign(globalThis, {
  CustomFunctions: createCustomFunctions(associations),
  Excel: createExcel(session),
  Office: createOffice(ready),
  OfficeExtension: officeExtension,
});

withholdFromPage(window);
foldPane();
