import { describe, expect, test } from "vitest";
import { rowHeights } from "../rowHeights";
import { type Proposal, type ProposalOption, proposalSheet } from "./proposal";

/** An invented job. By hand: 2,202.75 − 100 = 2,102.75; with 147.19 tax 2,249.94, of which 30% is 674.98. */
const proposal: Proposal = {
  letterhead: { office: "Elm Stone Co.", address: "14 Quarry Road", phone: "(614) 555-0100", license: "OH 12345" },
  number: "26-014",
  date: "December 7, 2026",
  goodThrough: "January 6, 2027",
  customer: "A. Reed",
  place: "12 Alder Court",
  scope: [
    { name: "Remove old shrubs", text: "", price: 210 },
    { name: "Front", text: "River rock, 2 in deep", price: 1093.5 },
    { name: "Back", text: "Pea gravel, 2 in deep", price: 899.25 },
  ],
  options: [],
  price: {
    discount: { listPrice: 2202.75, label: "Spring discount", amount: 100 },
    ...{ price: 2102.75, salesTax: 147.19, total: 2249.94, deposit: 674.98, balance: 1574.96 },
  },
  notIncluded: ["Permits"],
  terms: "Paid within 10 days.\nLate payments bear interest.",
};

const option = (name: string, total: number, difference: number, isChosen = false): ProposalOption => ({
  ...{ name, differs: `All of ${name}`, price: total - 50, salesTax: 50, total, difference, isChosen },
});

const rowsOf = (change: Partial<Proposal> = {}) =>
  proposalSheet({ ...proposal, ...change }, "letter", { row: 0, column: 0 }).formulas.map((row) =>
    row.map((cell) => (typeof cell === "string" ? cell.replace(/^'/, "") : cell)),
  );
const rowOf = (label: string, change?: Partial<Proposal>) =>
  rowsOf(change)
    .find(([first]) => first === label)
    ?.slice(1)
    .filter((cell) => cell !== "");
const labels = (change?: Partial<Proposal>) => rowsOf(change).map(([first]) => first);

describe("the proposal", () => {
  test("has the letterhead, the number, and the dates on top", () => {
    expect(rowsOf()[0]).toEqual(["Elm Stone Co.", "", "", "Proposal", ""]);
    expect(rowOf("Address")).toEqual(["14 Quarry Road", "Proposal no.", "26-014"]);
    expect(rowOf("Phone")).toEqual(["(614) 555-0100", "Date", "December 7, 2026"]);
    expect(rowOf("License no.")).toEqual(["OH 12345", "Good through", "January 6, 2027"]);
    expect(rowOf("Prepared for")).toEqual(["A. Reed"]);
    expect(rowOf("Job site")).toEqual(["12 Alder Court"]);
  });

  test("gives an address of two lines the room of two", () => {
    const letterhead = { ...proposal.letterhead, address: "14 Quarry Road\nMarysville, OH 43040" };
    const plan = proposalSheet({ ...proposal, letterhead }, "letter", { row: 0, column: 0 });
    const row = plan.formulas.findIndex(([first]) => first === "Address");
    expect(rowHeights(plan)[row]).toBe(30);
  });

  test("leaves a line to write on for what is blank", () => {
    const blank = { office: "", address: "", phone: "", license: "" };
    const { formulas, looks } = proposalSheet({ ...proposal, letterhead: blank, customer: "" }, "a4", {
      row: 0,
      column: 0,
    });
    for (const label of ["Company", "Address", "Phone", "License no.", "Prepared for"]) {
      const row = formulas.findIndex(([first]) => first === label);
      const line = looks.find(
        ({ area, look }) =>
          look === "blankToFill" && area.column === 1 && area.row <= row && row < area.row + area.rows,
      );
      expect(line?.area.columns, label).toBe(2);
    }
  });

  test("lists the scope in order, with the estimator's own lines, priced or not", () => {
    expect(rowOf("Remove old shrubs")).toEqual([210]);
    expect(rowOf("Front")).toEqual(["River rock, 2 in deep", 1093.5]);
    const unpriced = { scope: proposal.scope.map(({ name, text }) => ({ name, text })) };
    expect(rowOf("Front", unpriced)).toEqual(["River rock, 2 in deep"]);
    expect(rowOf("Scope of work", unpriced)).toEqual([]);
  });

  test("goes from list price to balance in the figures that it is given", () => {
    const money = ["Price before discount", "Spring discount", "Price before tax", "Sales tax", "Total due"].map(
      (label) => rowOf(label)?.[0],
    );
    expect(money).toEqual([2202.75, -100, 2102.75, 147.19, 2249.94]);
    expect(rowOf("Deposit, due when you sign")).toEqual([674.98]);
    expect(rowOf("Balance, due when we finish")).toEqual([1574.96]);
  });

  test("shows only what is due where there is no discount, tax, or deposit", () => {
    const price = { price: 900, salesTax: 0, total: 900, deposit: 0, balance: 900 };
    const shown = labels({ price });
    for (const label of ["Price before discount", "Price before tax", "Sales tax", "Deposit, due when you sign"])
      expect(shown).not.toContain(label);
    expect(rowOf("Total due", { price })).toEqual([900]);
  });

  test("shows options side by side with the difference from the first, and says which is chosen", () => {
    const options = [option("River rock", 2249.94, 0), option("Pea gravel", 2105.5, -144.44, true)];
    expect(rowOf("Total with tax", { options })).toEqual([2249.94, 2105.5]);
    expect(rowOf("Difference from River rock", { options })).toEqual([-144.44]);
    expect(rowOf("Your choice", { options })).toEqual(["Chosen"]);
    expect(labels({ options })).toContain("Price of Pea gravel");
  });

  test("has a box to check and no total where no option is chosen", () => {
    const { price: _, ...unpriced } = proposal;
    const options = [option("River rock", 2249.94, 0), option("Pea gravel", 2105.5, -144.44)];
    const rows = proposalSheet({ ...unpriced, options }, "letter", { row: 0, column: 0 }).formulas;
    expect(rows.find(([first]) => first === "Your choice")?.filter((cell) => cell === "☐")).toHaveLength(2);
    expect(rows.map(([first]) => first)).not.toContain("Total due");
  });

  test("says what is not included, the terms, and who signs", () => {
    expect(labels()).toEqual(
      expect.arrayContaining(["• Permits", "Paid within 10 days.", "Late payments bear interest."]),
    );
    expect(labels()).toEqual(expect.arrayContaining(["Elm Stone Co.: signature", "A. Reed: signature"]));
    const without = labels({ notIncluded: [], terms: "" });
    for (const label of ["Not included", "Terms"]) expect(without).not.toContain(label);
  });

  test("always says who calls 811, and that private lines aren't marked", () => {
    const words = labels().join(" ");
    expect(words).toContain("We call 811");
    expect(words).toContain("811 doesn't mark private lines");
    expect(words).toContain("local law");
  });

  test("shows money in dollars, and a discount with a minus", () => {
    const { formulas, formats } = proposalSheet(proposal, "letter", { row: 0, column: 0 });
    const money = formulas.flatMap((row, index) =>
      row.flatMap((cell, column) => (typeof cell === "number" ? [formats[index]![column]] : [])),
    );
    expect(new Set(money)).toEqual(new Set(["$#,##0.00;-$#,##0.00"]));
  });

  test("has no formula", () => {
    const options = [option("=1+1", 10, 0)];
    const hostile = { ...proposal, customer: "=cmd", terms: "=2+2", notIncluded: ["=3"], options };
    const cells = proposalSheet(hostile, "letter", { row: 0, column: 0 }).formulas.flat();
    expect(cells.filter((cell) => typeof cell === "string" && cell.startsWith("="))).toEqual([]);
  });

  test("takes no more than four options", () => {
    const options = Array.from({ length: 5 }, (_, index) => option(`Option ${index + 1}`, 10, 0));
    expect(() => proposalSheet({ ...proposal, options }, "letter", { row: 0, column: 0 })).toThrow("No more than 4");
  });
});
