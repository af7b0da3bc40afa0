import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createHost, type HeadlessHost } from "../headlessHost";

let host: HeadlessHost;
beforeEach(async () => {
  host = await createHost();
});
afterEach(() => host.dispose());

/** Does something right when the grid's n-th calculation from now has started, before it works anything out. */
function onceStarted(n: number, happens: () => void): void {
  const { core, sheets } = host.open.library;
  let started = 0;
  host.open.injector.get(core.ICommandService).onCommandExecuted(({ id }) => {
    if (id !== sheets.SetFormulaCalculationStartMutation.id) return;
    started += 1;
    if (started === n) happens();
  });
}

const write = (address: string, value: number | string) => {
  const [, column = "", row = ""] = /^([A-Z])(\d+)$/.exec(address) ?? [];
  const place = { sheetId: host.grid.sheets.list()[0]!.id, row: Number(row) - 1, column: column.charCodeAt(0) - 65 };
  host.grid.cells.write({ ...place, rowCount: 1, columnCount: 1 }, [[value]]);
};

describe("waiting for the results of formulas", () => {
  test("takes in a change that is made while the grid calculates", async () => {
    await host.type({ A1: 1, B1: "=A1*10", A2: 1, B2: "=A2*10" });
    const started = new Promise<void>((resolve) => onceStarted(1, resolve));
    write("A1", 2);
    await started;
    write("A2", 3);
    await host.grid.settled();
    expect([host.value("B1"), host.value("B2")]).toEqual([20, 30]);
  });

  test("takes in changes made at several calculations in a row", async () => {
    await host.type({ A1: 1, B1: "=A1*10", A2: 1, B2: "=A2*10", A3: 1, B3: "=A3*10" });
    onceStarted(1, () => write("A2", 2));
    onceStarted(2, () => write("A3", 3));
    write("A1", 1.5);
    await host.grid.settled();
    expect([host.value("B1"), host.value("B2"), host.value("B3")]).toEqual([15, 20, 30]);
  });

  test("is over at once where nothing changed", async () => {
    await host.type({ A1: 1, B1: "=A1*10" });
    let turns = 0;
    const turn = setInterval(() => {
      turns += 1;
    });
    await host.grid.settled();
    clearInterval(turn);
    expect(turns).toBe(0);
  });
});
