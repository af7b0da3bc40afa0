import { openPage, PAGE_ORIGIN } from "./page";
import {
  type Connection,
  EXECUTE_REQUEST,
  MESSAGE,
  type Program,
  type RequestArray,
  SELECTION_CHANGED,
  SETS,
} from "./program";

/** The message that the page and the frame around it exchange, as JSON. */
interface FrameMessage {
  readonly _messageType: number;
  readonly _actionType: number;
  readonly _actionName: string;
  readonly _conversationId: string;
  readonly _correlationId: number;
  readonly _data: unknown;
}
interface ExecuteData {
  readonly ArrayData: RequestArray;
  readonly DdaMethod: { readonly DispatchId: number };
}
interface EventData {
  readonly eventDispId: number;
}

const RESPONSE = 1;
const [INVOKE, REGISTER, UNREGISTER] = [0, 1, 2];
const [FOR_CALLING, FOR_EVENTING] = [0, 1];
const VERSION = 1;

/**
 * Opens a page as the program in a browser does: in a frame. All that passes between them are messages of text. The
 * library trusts a frame of the page's own domain.
 */
export function openOnWeb(program: Program): Connection {
  const listening = new Map<number, FrameMessage>();
  const frame = { postMessage: (text: string) => void received(JSON.parse(text)) };
  const page = openPage({
    // The last number says that one page runs the pane and the worksheet functions.
    query: `?_host_Info=Excel$Web$16.00$en-US$$$$3#&_xdm_Info=conversation|add-in|${PAGE_ORIGIN}`,
    userAgent: "Mozilla/5.0 (X11; Linux x86_64) Chrome/120.0 Safari/537.36",
    platform: "Linux x86_64",
    members: { parent: frame, top: frame },
  });

  /** A message arrives later, as in a browser, and not while the sender is still at work. */
  const post = (to: FrameMessage, data: unknown, responseType = FOR_CALLING) => {
    const response = { ...to, _messageType: RESPONSE, _responseType: responseType, _errorCode: 0, _data: data };
    const text = JSON.stringify(response);
    setImmediate(() => page.receive({ data: text, origin: PAGE_ORIGIN, source: frame }));
  };

  async function received(message: FrameMessage): Promise<void> {
    const { _actionType: type, _actionName: name } = message;
    if (type === REGISTER || type === UNREGISTER) {
      const { eventDispId } = message._data as EventData;
      if (type === REGISTER) listening.set(eventDispId, message);
      else listening.delete(eventDispId);
      program.listen(eventDispId, type === REGISTER);
      return post(message, { Version: VERSION, Error: 0 });
    }
    if (type !== INVOKE) throw new Error(`The frame is sent an action of type ${type}.`);
    if (name === "ContextActivationManager_getAppContextAsync") return post(message, aboutProgram);
    if (name === "ContextActivationManager_notifyHost") return post(message, null);
    const { DdaMethod, ArrayData } = message._data as ExecuteData;
    if (name !== "executeMethod" || DdaMethod.DispatchId !== EXECUTE_REQUEST) {
      throw new Error(`The frame is asked for ${name} ${DdaMethod?.DispatchId}.`);
    }
    post(message, { Version: VERSION, Error: 0, Data: await program.answer(ArrayData) });
  }

  const raise = (eventId: number, data: unknown) => {
    const registered = listening.get(eventId);
    if (registered) post(registered, data, FOR_EVENTING);
  };
  return {
    page,
    selectionChanged: () => raise(SELECTION_CHANGED, {}),
    send: (messages) => raise(MESSAGE, { ArrayData: messages }),
  };
}

/** What the program says about itself and the workbook that is open. */
const aboutProgram = {
  _appMinorVersion: 0,
  _appName: 16,
  _appUILocale: "en-US",
  _appVersion: 16,
  _clientMode: 0,
  _dataLocale: "en-US",
  _docUrl: "Workbook.xlsx",
  _id: "add-in",
  _osfControlType: 1,
  _reason: "inserted",
  _requirementMatrix: JSON.stringify(SETS),
  _settings: [],
};
