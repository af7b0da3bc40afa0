import { openPage } from "./page";
import {
  type Connection,
  EXECUTE_REQUEST,
  MESSAGE,
  type Program,
  type RequestArray,
  SELECTION_CHANGED,
  SETS,
} from "./program";

/** What the program hands over is a native array, which the library unpacks. */
interface NativeArray {
  toArray(): readonly unknown[];
}
type Callback = (result: NativeArray | number) => void;
type EventHandler = (eventId: number, payload: unknown) => void;

const native = (...items: readonly unknown[]): NativeArray => ({ toArray: () => items });
const SUCCESS = 0;

/** What a page in the program on Windows finds at `window.external`: methods of the program's own. */
class External {
  private readonly handlers = new Map<number, EventHandler>();

  constructor(private readonly program: Program) {}

  GetContext() {
    return aboutProgram;
  }

  Execute(methodId: number, [request]: readonly [RequestArray], callback: Callback): void {
    if (methodId !== EXECUTE_REQUEST) throw new Error(`The desktop program is asked for method ${methodId}.`);
    this.program.answer(request).then((answer) => callback(native(SUCCESS, answer)));
  }

  RegisterEvent(eventId: number, _target: string, handler: EventHandler, callback: Callback): void {
    this.handlers.set(eventId, handler);
    this.program.listen(eventId, true);
    callback(SUCCESS);
  }

  UnregisterEvent(eventId: number, _target: string, callback: Callback): void {
    this.handlers.delete(eventId);
    this.program.listen(eventId, false);
    callback(SUCCESS);
  }

  raise(eventId: number, payload: unknown): void {
    this.handlers.get(eventId)?.(eventId, payload);
  }
}

/** Opens a page as the program on Windows does. */
export function openOnDesktop(program: Program): Connection {
  const external = new External(program);
  const page = openPage({
    query: "?_host_Info=Excel$Win32$16.01$en-US$$$$3",
    userAgent: "Mozilla/5.0 (Windows NT 10.0; Win64; x64) Chrome/120.0 Safari/537.36 Edg/120.0",
    platform: "Win32",
    members: { external },
  });
  return {
    page,
    selectionChanged: () => external.raise(SELECTION_CHANGED, native()),
    send: (messages) => external.raise(MESSAGE, native(...messages)),
  };
}

/** Colors as the program gives them: whole numbers. */
const THEME = {
  bodyBackgroundColor: 0xffffff,
  bodyForegroundColor: 0x000000,
  controlBackgroundColor: 0xffffff,
  controlForegroundColor: 0x000000,
};

/** The settings of the older interface, which the add-in does not use. */
const noSettings = { Read: () => undefined };

/** What the program says about itself and the workbook that is open. */
const aboutProgram = {
  GetActivationMode: () => 1,
  GetAppCapabilities: () => 0,
  GetAppDataLocale: () => 0x409,
  GetAppType: () => 1,
  GetAppUILocale: () => 0x409,
  GetAppVersionMajor: () => 16,
  GetAppVersionMinor: () => 1,
  GetControlIntegrationLevel: () => 1,
  GetDocUrl: () => "Workbook.xlsx",
  GetHostFullVersion: () => "16.0.17328.20000",
  GetOfficeThemeInfo: () => JSON.stringify(THEME),
  GetSettings: () => noSettings,
  GetSolutionRef: () => "add-in",
  GetSolutionToken: () => "",
  GetSupportedMatrix: () => JSON.stringify(SETS),
};
