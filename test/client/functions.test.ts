import { beforeAll, describe, expect, test, vi } from "vitest";
import * as functions from "../../src/functions/index";
import { functionsFile } from "../../src/functions/metadata";
import { CASES, LIST_SAMPLES } from "../functionCases";
import { chosenLibrary, openLibrary } from "./library";
import type { Connection, Program, ProgramMessage } from "./program";
import type { RequestBody } from "./wire";

/*
 * The worksheet functions as the program calls them: by a message to the library, which looks up the function, hands it
 * the arguments and one object more, and sends the result back in a request.
 */

/** The category of messages about worksheet functions, and the type of those that call one. */
const FUNCTIONS = 1;
const CALL = 1000;
/** The numbers by which the library tells the program which error a function threw. */
const THROWN: Readonly<Record<string, number>> = { "#N/A": 1, "#VALUE!": 7 };

interface Result {
  readonly id: number;
  readonly value: unknown;
  readonly failed?: boolean;
  readonly errorCode?: number;
}

const results = new Map<number, Result>();
let isReady = false;
const program: Program = {
  async answer([, , , , text]) {
    const { Actions } = JSON.parse(text) as RequestBody;
    for (const { Name, ArgumentInfo } of Actions) {
      if (Name === "_SetOsfControlContainerReadyForCustomFunctions") isReady = true;
      if (Name !== "SetInvocationResults") continue;
      const [sent = []] = (ArgumentInfo?.Arguments ?? []) as Result[][];
      for (const result of sent) results.set(result.id, result);
    }
    return [200, [], JSON.stringify({ Results: [] })];
  },
  listen: () => undefined,
};

type Called = (...given: unknown[]) => unknown;
const calls = functions as unknown as Readonly<Record<string, Called>>;
const ids = Object.keys(calls);
const parameterCounts = new Map<string, number>();
let connection: Connection;
let lastId = 0;

beforeAll(async () => {
  for (const { id, parameters } of functionsFile("https://tools.example").functions)
    parameterCounts.set(id, parameters.length);
  connection = await openLibrary(chosenLibrary()!, program);
  // The add-in's own script tells the library about its functions.
  Object.assign(globalThis, { CustomFunctions: connection.page.window.CustomFunctions });
  await import("../../src/functions/entry");
  await vi.waitUntil(() => isReady, { timeout: 60_000 });
});

/** The program has a value for every argument that was declared; null for one that was left out. */
const padded = (id: string, given: readonly unknown[]) =>
  Array.from({ length: parameterCounts.get(id) ?? 0 }, (_, place) => given[place] ?? null);

/** Calls functions all at once, as a recalculation does, and gives what the library sends back. */
async function callByMessages(asked: readonly (readonly [string, readonly unknown[]])[]): Promise<Result[]> {
  const messages = asked.map(([id, given]): ProgramMessage => {
    lastId += 1;
    return [FUNCTIONS, CALL, "", JSON.stringify([lastId, id, padded(id, given), "Sheet1!A1", 0])];
  });
  const first = lastId - asked.length + 1;
  connection.send(messages);
  const wanted = asked.map((_, place) => first + place);
  await expect.poll(() => wanted.filter((id) => !results.has(id))).toEqual([]);
  return wanted.map((id) => results.get(id)!);
}

/** The same call without the library, in the words of its answers. */
function callDirectly(id: string, given: readonly unknown[]): Omit<Result, "id"> {
  try {
    return { value: JSON.parse(JSON.stringify(calls[id]!(...padded(id, given)))) };
  } catch (error) {
    const { code, message } = error as CustomFunctions.Error;
    return { failed: true, value: message, errorCode: THROWN[code]! };
  }
}

const samplesOf = (id: string): readonly unknown[] =>
  (LIST_SAMPLES as Readonly<Record<string, readonly unknown[]>>)[id] ??
  CASES[id as keyof typeof CASES].map(({ sample }) => sample);

async function expectSame(asked: readonly (readonly [string, readonly unknown[]])[]): Promise<Result[]> {
  const answers = await callByMessages(asked);
  asked.forEach(([id, given], place) => {
    expect(answers[place], `${id}(${JSON.stringify(given)})`).toMatchObject(callDirectly(id, given));
  });
  return answers;
}

test("the library knows every function, and each gives what a direct call gives", async () => {
  expect(ids).toHaveLength(47);
  const answers = await expectSame(ids.map((id) => [id, samplesOf(id)]));
  expect(answers.filter(({ failed }) => failed)).toEqual([]);
});

test("a name that nothing was associated with fails, and says so", async () => {
  const [answer] = await callByMessages([["NO_SUCH_FUNCTION", []]]);
  expect(answer).toMatchObject({ failed: true });
});

describe("each function gives what a direct call gives", () => {
  test("for arguments that are left out, one after the other", async () => {
    await expectSame(
      ids.flatMap((id) =>
        samplesOf(id).map((_, place) => [id, samplesOf(id).map((one, at) => (at === place ? null : one))] as const),
      ),
    );
  });

  test.each([
    ["empty text", ""],
    ["text that can't be read", "moon rock"],
    ["a negative number", -1],
    ["TRUE", true],
    ["a blank range", [[null], [""]]],
  ])("for %s in each argument", async (_, value) => {
    await expectSame(
      ids.flatMap((id) =>
        samplesOf(id).map((_, place) => [id, samplesOf(id).map((one, at) => (at === place ? value : one))] as const),
      ),
    );
  });
});

test("what a function says about a wrong value gets to the program, with its error", async () => {
  const [feet, stone] = await callByMessages([
    ["FEET", ["nonsense"]],
    ["STONE_DENSITY", ["moon rock"]],
  ]);
  expect(feet).toMatchObject({
    failed: true,
    errorCode: THROWN["#VALUE!"],
    value: expect.stringContaining("nonsense"),
  });
  expect(stone).toMatchObject({ failed: true, errorCode: THROWN["#N/A"], value: expect.stringContaining("moon rock") });
});

test("the library hands each function one object more than was declared, so all calls above had it", async () => {
  const seen: unknown[][] = [];
  CustomFunctions.associate("SPY", (...given: unknown[]) => {
    seen.push(given);
    return 1;
  });
  parameterCounts.set("SPY", 2);
  await callByMessages([["SPY", [5, "a"]]]);
  expect(seen).toEqual([[5, "a", expect.objectContaining({ address: "Sheet1!A1", functionName: "SPY" })]]);
});
