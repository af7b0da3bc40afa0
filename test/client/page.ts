import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import vm from "node:vm";

/** Where the package keeps the library. It's read from there and never copied: its license forbids handing it on. */
const LIBRARY = resolve(import.meta.dirname, "../../node_modules/@microsoft/office-js/dist");

export const PAGE_ORIGIN = "https://localhost";

/** The window of a page, as far as the library touches it. */
export interface PageWindow {
  readonly [member: string]: unknown;
  readonly Office?: typeof Office;
  readonly Excel?: typeof Excel;
  readonly OfficeExtension?: typeof OfficeExtension;
  readonly CustomFunctions?: typeof CustomFunctions;
}

export interface Page {
  readonly window: PageWindow;
  /** The library's files that were loaded, in order. */
  readonly scripts: readonly string[];
  /** Hands the page a message from the frame around it. */
  receive(message: { readonly data: string; readonly origin: string; readonly source: unknown }): void;
  /** Loads `office.js`, as the head of the pane's page does; the library fetches the rest by itself. */
  loadLibrary(): void;
}

/** What sets one kind of page apart from another: its address, and what the spreadsheet program puts into its window. */
export interface PageOptions {
  /** What follows the page's own address. */
  readonly query: string;
  readonly userAgent: string;
  readonly platform: string;
  /** Members of the window. `parent` is the frame around the page; the page itself where left out. */
  readonly members: Readonly<Record<string, unknown>>;
}

/** What the language itself defines, such as Array and Error. */
const BUILT_IN = new Set<string | symbol>(vm.runInNewContext("Object.getOwnPropertyNames(globalThis)") as string[]);

/**
 * Opens an empty page in Node. Its scripts see the window as their global object, as in a browser, and nothing else of
 * Node. They run in this realm, so that the library's errors, arrays and promises are those of the add-in's own code.
 */
export function openPage({ query, userAgent, platform, members }: PageOptions): Page {
  const listeners: ((event: object) => void)[] = [];
  const scripts: string[] = [];
  const address = new URL(`/pane.html${query}`, PAGE_ORIGIN);
  const location = { ...partsOf(address.href), href: address.href, search: address.search, hash: address.hash };

  const run = (name: string) => {
    scripts.push(name);
    const filename = resolve(LIBRARY, name);
    const script = `(function (globals) { with (globals) { ${readFileSync(filename, "utf8")}\n} })`;
    vm.runInThisContext(script, { filename }).call(window, globals);
  };
  const head = {
    ...element("head"),
    // A script loads after the one that asked for it is through, as in a browser.
    appendChild(script: Script) {
      const name = script.src.replace(`${PAGE_ORIGIN}/`, "");
      setTimeout(() => {
        if (!existsSync(resolve(LIBRARY, name))) return script.onerror?.();
        run(name);
        script.onload?.();
      });
    },
  };
  const document = {
    ...element("document"),
    body: element("body"),
    cookie: "",
    createElement: element,
    domain: "localhost",
    getElementById: () => null,
    getElementsByTagName: (tag: string) => {
      const officeJs = { ...element("script"), src: `${PAGE_ORIGIN}/office.js` };
      return { script: [officeJs], head: [head] }[tag.toLowerCase()] ?? [];
    },
    hasFocus: () => true,
    head,
    location,
    querySelectorAll: () => [],
    readyState: "complete",
    referrer: "",
    URL: address.href,
  };
  const window: Record<string, unknown> = {
    addEventListener: (type: string, listener: (event: object) => void) => {
      if (type === "message") listeners.push(listener);
    },
    removeEventListener: nothing,
    console: { ...console, log: nothing, info: nothing },
    document,
    history: {},
    localStorage: storage(),
    location,
    name: "",
    navigator: { userAgent, platform, language: "en-US" },
    performance,
    URL,
    sessionStorage: storage(),
    // Looked up at each call: a test may have made the timers faster. How long a script may take to load stays as it is.
    setTimeout: (work: (...given: unknown[]) => void, ms?: number, ...given: unknown[]) =>
      ms === SCRIPT_MS ? usualTimeout(work, ms).unref() : setTimeout(() => work(...given), ms),
    clearTimeout: (timer: number) => clearTimeout(timer),
    // The library checks from time to time for requests that got no answer. That must not keep a test run alive.
    setInterval: (work: () => void, ms?: number) => setInterval(work, ms).unref(),
    clearInterval: (timer: number) => clearInterval(timer),
  };
  Object.assign(window, { window, self: window, parent: window, top: window, ...members });
  // Whatever a script declares or looks up belongs to the window, unless the language defines it.
  const globals = new Proxy(window, { has: (_, name) => !BUILT_IN.has(name) });

  return {
    window,
    scripts,
    receive: (message) => {
      for (const listener of listeners) listener(message);
    },
    loadLibrary: () => run("office.js"),
  };
}

/** When the library gives a script up. */
const SCRIPT_MS = 30_000;
const usualTimeout = globalThis.setTimeout;

interface Script {
  readonly src: string;
  readonly onload?: () => void;
  readonly onerror?: () => void;
}

function nothing(): void {}

/** An element of which nothing shows. A link takes its address apart, which is how the library compares origins. */
function element(tag: string) {
  const made = {
    addEventListener: nothing,
    appendChild: nothing,
    getAttribute: () => null,
    removeEventListener: nothing,
    setAttribute: nothing,
    style: {},
  };
  if (tag !== "a") return made;
  return Object.defineProperty(made, "href", {
    set: (address: string) => Object.assign(made, partsOf(address)),
  });
}

function partsOf(address: string) {
  const { protocol, host, hostname, port, pathname, origin } = new URL(address);
  return { protocol, host, hostname, port, pathname, origin };
}

function storage() {
  const kept = new Map<string, string>();
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, `${value}`),
    removeItem: (key: string) => void kept.delete(key),
  };
}
