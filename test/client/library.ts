import type { HostSession } from "../../src/practice/host/session";
import { openOnDesktop } from "./desktop";
import type { Connection, Program } from "./program";
import { type RequestCounts, Server } from "./server";
import { openOnWeb } from "./web";

/** Which of the library's files: the one that runs in a browser, or the one in the program on Windows. */
export type LibraryFile = "web" | "desktop";

/** The globals of the library, in front of a workbook. */
export interface InstalledLibrary {
  readonly globals: {
    readonly Excel: typeof Excel;
    readonly Office: typeof Office;
    readonly OfficeExtension: typeof OfficeExtension;
  };
  readonly counts: RequestCounts;
}

const opened = new Map<LibraryFile, Promise<Connection>>();
let server: Server | undefined;

/** A page outlives a workbook: its requests go to the workbook that was opened last. */
const currentServer: Program = {
  answer: (request) => server!.answer(request),
  listen: (eventId, isListening) => server?.listen(eventId, isListening),
};

/** Opens a page of its own with the library in it. */
export async function openLibrary(file: LibraryFile, program: Program): Promise<Connection> {
  const connection = file === "web" ? openOnWeb(program) : openOnDesktop(program);
  connection.page.loadLibrary();
  await connection.page.window.Office!.onReady();
  return connection;
}

/** Puts the client library in front of a workbook. It is loaded once in each test file, which takes a third of a second. */
export async function installLibrary(file: LibraryFile, session: HostSession): Promise<InstalledLibrary> {
  server = new Server(session);
  const connection = opened.get(file) ?? openLibrary(file, currentServer);
  opened.set(file, connection);
  server.connect(await connection);
  const { Excel, Office, OfficeExtension } = (await connection).page.window;
  return {
    globals: { Excel: Excel!, Office: Office!, OfficeExtension: OfficeExtension! },
    counts: server.counts,
  };
}

/** The library file that the tests were asked to run on, by the environment variable CLIENT_LIBRARY; none by default. */
export function chosenLibrary(): LibraryFile | undefined {
  const named = process.env.CLIENT_LIBRARY;
  if (!named) return undefined;
  if (named !== "web" && named !== "desktop") throw new Error(`CLIENT_LIBRARY is "web" or "desktop", not "${named}".`);
  return named;
}
