import { describe, expect, test, vi } from "vitest";
import { withholdFromPage } from "../../src/practice/host/officePage";
import { openOnDesktop } from "../client/desktop";
import { chosenLibrary } from "../client/library";
import type { Program } from "../client/program";
import { openOnWeb } from "../client/web";
import { createHost } from "../headlessHost";

/*
 * What an add-in's page finds around it, and what its functions are called with. As in client-differences.test.ts, each
 * test runs on the stand-in and on the unmodified library.
 */
const library = chosenLibrary();

/** A page of its own with the library in it, and a program that does nothing. */
async function openLibrary() {
  const idle: Program = {
    answer: async () => [200, [], JSON.stringify({ Results: [], TraceIds: [] })],
    listen: () => undefined,
  };
  const connection = library === "web" ? openOnWeb(idle) : openOnDesktop(idle);
  connection.page.loadLibrary();
  await connection.page.window.Office!.onReady();
  return connection;
}

/** A page as a browser has it before an add-in's host has touched it. */
function plainPage() {
  const work = vi.fn();
  return { alert: work, confirm: work, prompt: work, history: { pushState: work, replaceState: work } };
}

/** The page of an add-in. */
async function addInPage(): Promise<ReturnType<typeof plainPage>> {
  if (library) return (await openLibrary()).page.window as unknown as ReturnType<typeof plainPage>;
  const page = plainPage();
  withholdFromPage(page);
  return page;
}

test("an add-in's page has no alert, confirm, or prompt, and can't rewrite its history", async () => {
  const page = await addInPage();
  expect(() => page.alert("Saved")).toThrow("Function window.alert is not supported.");
  expect(() => page.confirm("Remove it?")).toThrow("Function window.confirm is not supported.");
  expect(() => page.prompt("Depth?")).toThrow("Function window.prompt is not supported.");
  expect([page.history.pushState, page.history.replaceState]).toEqual([null, null]);
});

describe("a worksheet function", () => {
  const metadata = { id: "SHOW", name: "SHOW", parameters: [{ name: "one" }, { name: "two", optional: true }] };

  /** Calls it from a cell with one argument, as the program does. */
  async function callFromCell(show: () => number) {
    if (library) {
      const { page, send } = await openLibrary();
      page.window.CustomFunctions!.associate("SHOW", show);
      const [category, call] = [1, 1000];
      // The library takes calls a moment after it's ready.
      await vi.waitFor(() => {
        send([[category, call, "", JSON.stringify([1, "SHOW", [5, null], null, 0])]]);
        expect(show).toHaveBeenCalled();
      }, 10_000);
      return;
    }
    const host = await createHost({ functions: { calls: { SHOW: show }, metadata: { functions: [metadata] } } });
    await host.type({ A1: "=BED.SHOW(5)" });
    host.dispose();
  }

  test("gets an invocation object behind all of its arguments, also those left out", async () => {
    const show = vi.fn((..._given: unknown[]) => 1);
    await callFromCell(show);
    expect(show.mock.calls[0]).toEqual([5, null, expect.objectContaining({})]);
    const invocation = show.mock.calls[0]?.[2] as CustomFunctions.Invocation;
    expect([invocation.functionName, invocation.address]).toEqual(["SHOW", undefined]);
  });
});
