import { describe, expect, test } from "vitest";
import { cellsFound, findWith, type Input } from "../../../test/findWith";
import type { CellText } from "../../../test/reviewWorkbook";
import { buriedRate } from "./rates";

const RATES: readonly (readonly CellText[])[] = [
  ["Crew rate", 46.5],
  ["Waste", 0.08],
  ["Dump fee", 35],
];
/** A formula in C2, beside hours in B2, and a sheet of rates. */
const job = (formula: CellText, rates = RATES, sheet = "Rates"): Input => ({
  sheets: [
    {
      name: "Jobs",
      rows: [
        ["Bed", "Hours", "Labor"],
        ["Front walk", 5, formula],
      ],
    },
    { name: sheet, rows: rates },
  ],
});
const fixOf = (input: Input) => findWith(buriedRate, input)[0]?.fix?.C2;

describe("a rate that is typed into a formula", () => {
  test("is found, and read from its cell instead", () => {
    expect(findWith(buriedRate, job("=B2*46.5"))).toMatchObject([
      {
        level: "warning",
        rank: 20,
        cells: ["C2"],
        related: ["Rates!B1"],
        seen: "“Front walk”, “Labor” has 46.5 typed into =B2*46.5; “Crew rate” in Rates!B1 is 46.5.",
        todo: "Read Rates!$B$1 instead.",
        fix: { C2: "=B2*Rates!$B$1" },
      },
    ]);
  });

  test.each([
    ["=B2*46.5", "=B2*Rates!$B$1"],
    ["=46.5*B2", "=Rates!$B$1*B2"],
    ["=B2*46.5+35", "=B2*Rates!$B$1+35"],
    ["=B2+35", "=B2+Rates!$B$3"],
    ["=B2*(1+0.08)", "=B2*(1+Rates!$B$2)"],
    ["=B2*(1+8%)", "=B2*(1+Rates!$B$2)"],
    ["=B2*1.08", "=B2*(1+Rates!$B$2)"],
    ["=ROUND(35*B2,0)", "=ROUND(Rates!$B$3*B2,0)"],
    ["=ROUND(35,B2)", "=ROUND(Rates!$B$3,B2)"],
    ["=MAX(B2,35)", "=MAX(B2,Rates!$B$3)"],
    ["=-(35)+B2", "=-(Rates!$B$3)+B2"],
    ["=B2*2.08", undefined],
    ["=B2*46", undefined],
    ["=B2*350%", undefined],
    // Digits, columns, and codes are no amounts.
    ["=ROUND(B2,35)", undefined],
    ["=MROUND(B2,35)", undefined],
    ["=CEILING(B2,35)", undefined],
    ["=INDEX(B1:B2,35)", undefined],
    ["=LEFT(A2,35)", undefined],
    ["=B2*Rates!B3+35", undefined],
    ["=B2", undefined],
  ])("%s", (formula, fixed) => {
    expect(fixOf(job(typeof formula === "string" ? { f: formula, v: 1 } : formula))).toBe(fixed);
  });

  test.each([
    ["Rates", true],
    ["Rate", true],
    ["Price list", true],
    ["Cost", true],
    ["Assumption", true],
    ["Input", true],
    ["Our prices", true],
    ["Unit costs", true],
    ["Assumptions", true],
    ["Inputs", true],
    ["Settings", true],
    ["Markup", true],
    ["Corporate", false],
    ["List", false],
  ])("may be kept on a sheet called %s", (sheet, isFound) => {
    expect(cellsFound(buriedRate, job("=B2*46.5", RATES, sheet))).toEqual(isFound ? ["C2"] : []);
  });

  test("of a share more is meant between 1 and 2 only", () => {
    expect(cellsFound(buriedRate, job("=B2*2.08", [["Factor", 1.08]]))).toEqual([]);
    expect(cellsFound(buriedRate, job("=B2*0.7", [["Discount", -0.3]]))).toEqual([]);
  });

  test("has to be labeled, and typed", () => {
    expect(cellsFound(buriedRate, job("=B2*46.5", [["", 46.5]]))).toEqual([]);
    expect(cellsFound(buriedRate, job("=B2*46.5", [["Crew rate", "=40+6.5"]]))).toEqual([]);
  });

  test.each([0, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 24, 27, 36, 60, 100, 144, 200, 324, 1000, 2000, 43560])(
    "is not %f, which belongs to the arithmetic of beds",
    (number) => {
      expect(cellsFound(buriedRate, job(`=B2*${number}`, [["Rate", number]]))).toEqual([]);
    },
  );

  test("could be either of two rates of the same amount, and then isn't told", () => {
    expect(cellsFound(buriedRate, job("=B2*46.5", [...RATES, ["Helper", 46.5]]))).toEqual([]);
    expect(cellsFound(buriedRate, job("=B2*46.5", [["Crew and helper", 46.5, 46.5]]))).toEqual([]);
  });

  test("on its own sheet is read without the sheet's name", () => {
    const rows = (formula: string) => [
      ["Crew rate", 46.5, "", ""],
      ["", "", "", ""],
      ["Bed", "Hours", "Labor", "Again"],
      ["Walk", 5, formula, "=B4*46.5"],
    ];
    expect(findWith(buriedRate, rows("=B4*$B$1"))).toMatchObject([
      {
        cells: ["D4"],
        related: ["B1"],
        seen: "“Walk”, “Again” has 46.5 typed into =B4*46.5; “Crew rate” in B1 is 46.5.",
        fix: { D4: "=B4*$B$1" },
      },
    ]);
    // Without a "$" it is a number like any other.
    expect(cellsFound(buriedRate, rows("=B4*B1"))).toEqual([]);
    expect(cellsFound(buriedRate, rows("=B4*B$1"))).toEqual([]);
    expect(cellsFound(buriedRate, rows("=B4*$B1"))).toEqual([]);
    expect(cellsFound(buriedRate, rows("=B4*SUM($B$1:$B$2)"))).toEqual([]);
  });

  test("has to be typed where a formula reads it by $", () => {
    const rows = [
      ["Crew rate", "=40+6.5"],
      ["Walk", "=5*$B$1"],
      ["Yard", "=5*46.5"],
    ];
    expect(cellsFound(buriedRate, rows)).toEqual([]);
  });

  test("is read by its name", () => {
    const named = (target: string, value: CellText = 46.5) => ({
      sheets: [
        {
          name: "Jobs",
          rows: [
            ["Bed", "Hours", "Labor"],
            ["Walk", 5, "=B2*46.5"],
          ],
        },
        { name: "Tape", rows: [["Crew", value]] },
      ],
      names: { CrewRate: target },
    });
    expect(findWith(buriedRate, named("=Tape!$B$1"))).toMatchObject([
      {
        seen: "“Walk”, “Labor” has 46.5 typed into =B2*46.5; CrewRate in Tape!B1 is 46.5.",
        todo: "Read CrewRate instead.",
        fix: { C2: "=B2*CrewRate" },
      },
    ]);
    expect(cellsFound(buriedRate, named("=Tape!$B$1:$B$2"))).toEqual([]);
    expect(cellsFound(buriedRate, named("=Tape!$B$1", "=40+6.5"))).toEqual([]);
    expect(cellsFound(buriedRate, named("=46.5"))).toEqual([]);
  });

  test("that a formula reads, too, is something else", () => {
    expect(cellsFound(buriedRate, job("=B2*Rates!B1+46.5"))).toEqual([]);
  });

  test("of a share is said in percent", () => {
    expect(findWith(buriedRate, job("=B2*1.08"))[0]!.seen).toBe(
      "“Front walk”, “Labor” has 8% typed into =B2*1.08; “Waste” in Rates!B2 is 8%.",
    );
  });

  test("is quoted where its sheet has a space in its name", () => {
    expect(fixOf(job("=B2*46.5", RATES, "Our rates"))).toBe("=B2*'Our rates'!$B$1");
  });

  test("filled down is one finding, each line with its own fix", () => {
    const sheets = [
      {
        name: "Jobs",
        rows: [
          ["Bed", "Hours", "Labor"],
          ...Array.from({ length: 9 }, (_, at) => ["Bed", 5, `=B${at + 2}*46.5`]),
          ["Bed", 5, "=46.5*B11"],
        ],
      },
      { name: "Rates", rows: RATES },
    ];
    const found = findWith(buriedRate, { sheets });
    expect(found.map(({ cells }) => cells.length)).toEqual([9, 1]);
    expect(found[0]!.fix).toMatchObject({ C2: "=B2*Rates!$B$1", C10: "=B10*Rates!$B$1" });
  });

  test("is left alone on a protected sheet, and where there are no rates", () => {
    const { sheets } = job("=B2*46.5") as { sheets: { name: string; rows: CellText[][] }[] };
    expect(cellsFound(buriedRate, { sheets: [{ ...sheets[0]!, protected: true }, sheets[1]!] })).toEqual([]);
    expect(cellsFound(buriedRate, { sheets: [sheets[0]!] })).toEqual([]);
  });
});
