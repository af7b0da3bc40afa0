import { createWorkbook } from "../../src/practice/host/createWorkbook";
import type { HostError } from "../../src/practice/host/error";
import type { RequestContext } from "../../src/practice/host/requestContext";
import type { HostSession } from "../../src/practice/host/session";
import type { WorksheetChange } from "../../src/practice/host/worksheet";
import { answerOf, Batch } from "./batch";
import { KeptObjects } from "./kept";
import { type AnswerArray, type Connection, type Program, type RequestArray, SELECTION_CHANGED } from "./program";
import {
  type Action,
  ActionType,
  type AnswerBody,
  DELAY_FOR_CELL_EDIT,
  PathType,
  type RequestBody,
  type StandIn,
} from "./wire";

/** What the library calls the event that cells changed, the category of such messages, and whom they are for. */
const CELLS_CHANGED = 10;
const EVENT = 65_536;
const WHOLE_WORKBOOK = "Workbook";

/** How the library marks the requests of an `Excel.run`. */
const OF_A_RUN = "IterativeExecutor";

/** What `Excel.createWorkbook` asks for in a browser; on the desktop it is a method of the application. */
const OPEN_ON_WEB = "CreateAndOpenWorkbook";

/** How many requests came over the wire. */
export interface RequestCounts {
  /** Those that the add-in waits for. */
  awaited: number;
  /** Those by which the library only lets go of ranges, after a run and without waiting. */
  cleanup: number;
  /** What the library sends for itself: that it is up, and telemetry. They are taken, and nothing comes of them. */
  own: number;
}

const NO_RESULTS: AnswerBody = { Results: [], TraceIds: [] };

/** Whether a request is for a service of the program and not for the workbook. */
const usesService = ({ ObjectPaths }: RequestBody) =>
  Object.values(ObjectPaths).some(({ ObjectPathType }) => ObjectPathType === PathType.Service);

/** The spreadsheet program for the library: does its requests on the stand-in's objects, and tells it of events. */
export class Server implements Program {
  readonly counts: RequestCounts = { awaited: 0, cleanup: 0, own: 0 };
  private readonly kept = new KeptObjects();
  private readonly context: RequestContext;
  private selectionWatch: { stop(): void } | undefined;
  private connection: Connection | undefined;

  constructor(private readonly session: HostSession) {
    this.context = session.newContext(true);
  }

  /** @param connection The page that is told of events. */
  connect(connection: Connection): void {
    this.connection = connection;
  }

  async answer([mark, , , , text, , flags]: RequestArray): Promise<AnswerArray> {
    const body = JSON.parse(text) as RequestBody;
    const created = body.Actions.find(({ Name }) => Name === OPEN_ON_WEB);
    if (created) return [200, [], JSON.stringify(await this.openWorkbook(created))];
    if (mark !== OF_A_RUN || usesService(body)) {
      this.counts.own += 1;
      return [200, [], JSON.stringify(NO_RESULTS)];
    }
    return [200, [], JSON.stringify(await this.perform(body, (flags & DELAY_FOR_CELL_EDIT) !== 0))];
  }

  private async perform(body: RequestBody, waits: boolean): Promise<AnswerBody> {
    const actions = body.Actions.filter(({ ActionType: type }) => type !== ActionType.Instantiate);
    if (actions.length > 0 && actions.every(({ Name }) => Name === "_RemoveReference")) {
      this.counts.cleanup += 1;
      for (const { ArgumentInfo } of actions) this.kept.forget(ArgumentInfo?.Arguments?.[0]);
      return NO_RESULTS;
    }
    this.counts.awaited += 1;
    try {
      await this.session.editingOver(waits);
    } catch (error) {
      return { ...NO_RESULTS, Error: answerOf(error as HostError, 0) };
    }
    return new Batch(this.context, body, this.kept, (object) => this.tellOfChanges(object)).run();
  }

  /** Opens a workbook beside this one, as the program in a browser is asked to. */
  private async openWorkbook({ ArgumentInfo }: Action): Promise<AnswerBody> {
    this.counts.awaited += 1;
    const [base64] = (ArgumentInfo?.Arguments ?? []) as readonly (string | null)[];
    try {
      await createWorkbook(this.session, base64 ?? undefined);
      return NO_RESULTS;
    } catch (error) {
      return { ...NO_RESULTS, Error: answerOf(error as HostError, 0) };
    }
  }

  /** Tells of cells that change on a sheet, or on any sheet of a collection. */
  private tellOfChanges(object: StandIn): void {
    const { onChanged } = object as { readonly onChanged?: { add(handler: (args: WorksheetChange) => void): unknown } };
    const isSheet = object.constructor.name === "Worksheet";
    onChanged?.add((args) => {
      const target = isSheet ? args.worksheetId : WHOLE_WORKBOOK;
      this.connection?.send([[EVENT, CELLS_CHANGED, target, JSON.stringify(args)]]);
    });
  }

  listen(eventId: number, isListening: boolean): void {
    if (eventId !== SELECTION_CHANGED) return;
    this.selectionWatch?.stop();
    this.selectionWatch = isListening
      ? this.session.grid.watch.selection(() => setTimeout(() => this.connection?.selectionChanged(), 0))
      : undefined;
  }
}
