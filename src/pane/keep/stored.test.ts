import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { readStored, type StoredThing, writeStored } from "./stored";

type Names = Readonly<Record<string, string>>;
const names: StoredThing<Names> = {
  key: () => "names",
  version: 1,
  read: (content) => (typeof content === "object" && content !== null ? (content as Names) : undefined),
  join: (there, before, now) => ({
    ...there,
    ...Object.fromEntries(Object.entries(now).filter(([key, text]) => before[key] !== text)),
  }),
};

let kept: Map<string, string>;
const getItem = vi.fn((key: string) => kept.get(key) ?? null);
const setItem = vi.fn((key: string, text: string) => void kept.set(key, text));
const removeItem = vi.fn((key: string) => void kept.delete(key));

beforeEach(() => {
  kept = new Map();
  vi.stubGlobal("localStorage", { getItem, setItem, removeItem });
});
afterEach(() => {
  vi.unstubAllGlobals();
  vi.clearAllMocks();
});

describe("what the browser keeps for the pane", () => {
  test("comes back as it was", () => {
    expect(readStored(names)).toEqual({});
    expect(writeStored(names, {}, { customer: "Hollis Vane" }, false)).toBeUndefined();
    expect(readStored(names)).toEqual({ value: { customer: "Hollis Vane" } });
  });

  test("is found where it was before versions were written, and is taken over from there", () => {
    const moved = { ...names, oldKey: "names.1" };
    kept.set("names.1", '{"office":"Fernlea Stone"}');
    const found = readStored(moved).value!;
    expect(found).toEqual({ office: "Fernlea Stone" });
    writeStored(moved, found, { ...found, customer: "Hollis Vane" }, false);
    expect(readStored(moved).value).toEqual({ office: "Fernlea Stone", customer: "Hollis Vane" });
    expect([...kept.keys()]).toEqual(["names"]);
  });

  test("is no longer looked for where it stood once something is kept", () => {
    kept.set("names", '{"version":1,"kept":{"office":"Fernlea Stone"}}');
    kept.set("names.1", '{"office":"Gable End Gardens"}');
    expect(readStored({ ...names, oldKey: "names.1" }).value).toEqual({ office: "Fernlea Stone" });
  });

  test("keeps what another pane has kept meanwhile", () => {
    writeStored(names, {}, { office: "Fernlea Stone" }, false);
    const found = readStored(names).value!;
    // Both panes have found the office; one types a customer, the other a place.
    writeStored(names, found, { ...found, customer: "Hollis Vane" }, false);
    writeStored(names, found, { ...found, place: "12 Quarry Lane" }, false);
    expect(readStored(names).value).toEqual({
      office: "Fernlea Stone",
      customer: "Hollis Vane",
      place: "12 Quarry Lane",
    });
  });

  test("stays where a later version wrote it, also where the person would start again", () => {
    const text = '{"version":2,"kept":{}}';
    kept.set("names", text);
    expect(readStored(names)).toEqual({ trouble: "later" });
    expect(writeStored(names, {}, { a: "b" }, false)).toBe("later");
    expect(writeStored(names, {}, { a: "b" }, true)).toBe("later");
    expect(kept.get("names")).toBe(text);
  });

  test("stays where it is damaged, until the person has it thrown away", () => {
    kept.set("names", "{half");
    expect(writeStored(names, {}, { a: "b" }, false)).toBe("damaged");
    expect(kept.get("names")).toBe("{half");
    expect(writeStored(names, {}, { a: "b" }, true)).toBeUndefined();
    expect(readStored(names).value).toEqual({ a: "b" });
  });

  test("is told to be not kept where the storage is full, and what was kept stays", () => {
    writeStored(names, {}, { a: "b" }, false);
    setItem.mockImplementationOnce(() => {
      throw new DOMException("full", "QuotaExceededError");
    });
    expect(writeStored(names, { a: "b" }, { a: "c" }, false)).toBe("off");
    expect(readStored(names).value).toEqual({ a: "b" });
  });

  test.each([
    ["there is none", undefined],
    ["it is null, as in some web views", null],
    [
      "it is blocked",
      {
        getItem: () => {
          throw new DOMException("blocked", "SecurityError");
        },
      },
    ],
  ])("is told to be not kept where %s", (_what, storage) => {
    vi.stubGlobal("localStorage", storage);
    expect(readStored(names)).toEqual({ trouble: "off" });
    expect(writeStored(names, {}, { a: "b" }, false)).toBe("off");
  });

  test("is told to be not kept where asking for the storage is refused, as for third parties", () => {
    vi.unstubAllGlobals();
    const before = Object.getOwnPropertyDescriptor(globalThis, "localStorage");
    Object.defineProperty(globalThis, "localStorage", {
      configurable: true,
      get: () => {
        throw new DOMException("blocked", "SecurityError");
      },
    });
    expect(readStored(names)).toEqual({ trouble: "off" });
    if (before) Object.defineProperty(globalThis, "localStorage", before);
    else Reflect.deleteProperty(globalThis, "localStorage");
  });
});
