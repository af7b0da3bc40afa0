import type { DeclaredArgument, Kind } from "../../src/functions/declare";
import type { Chance } from "./random";

/** Values that a cell, a data type or a broken host may send, from plain to hostile. */
const HOSTILE: readonly unknown[] = [
  null,
  undefined,
  "",
  "  ",
  "\u00a0",
  0,
  -0,
  1,
  -1,
  0.1 + 0.2,
  5e-324,
  1e-300,
  1e15,
  2 ** 53,
  1e100,
  1e308,
  Number.MAX_VALUE,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  true,
  false,
  "TRUE",
  "NaN",
  "Infinity",
  "1e309",
  "1e5",
  "0x10",
  "0b1",
  "1_000",
  "１２",
  "٣",
  "𝟙",
  "12\u200b",
  "\u202e12",
  "\ud800",
  "🪨",
  "#VALUE!",
  "#N/A",
  "#REF!",
  "=1+1",
  "+1",
  "@x",
  "-3'",
  "1/0",
  "0/0",
  "1/3/5",
  "1,2,3",
  "1.2.3",
  "1,234",
  "1.234,5",
  "5' 14\"",
  "'",
  '"',
  "''''",
  "ft",
  "12 cows",
  "18' 6\"",
  "9,8 m",
  "75 mm",
  "½",
  "100%",
  "8 %",
  "-5%",
  "%",
  "river rock",
  "__proto__",
  "constructor",
  "toString",
  "clay",
  "simpson",
  "2026-03-02",
  "2026-02-30",
  "9999-12-31",
  "0001-01-01",
  "3/4/2026",
  "'".repeat(500),
  "1 ".repeat(400),
  "1/".repeat(400),
  "1,".repeat(400),
  "9".repeat(400),
  "1-".repeat(30),
  "a".repeat(100_000),
  {},
  [],
  [[]],
  [[null]],
  [[[1]]],
  [[1], [2, 3], []],
  { basicValue: 12 },
  { basicValue: "12 cows" },
  { basicValue: { basicValue: 12 } },
  { type: "Error", basicType: "Error", basicValue: "#VALUE!" },
  { type: "Entity", text: "river rock", properties: {} },
  Symbol("stone"),
  10n,
  new Date(0),
  () => 1,
  /x/,
];

/** Values that are fine for a kind, so that a call gets past its first argument. */
const FINE: Readonly<Partial<Record<Kind, (chance: Chance) => unknown>>> = {
  ft: (chance) => chance.oneOf([chance.whole(1, 400) / 8, chance.share() * 60, `${chance.whole(1, 40)}' 6"`, "9.8 m"]),
  in: (chance) => chance.oneOf([chance.whole(1, 200) / 8, chance.share() * 30, '4"', "75 mm", "1' 2\""]),
  share: (chance) => chance.oneOf([chance.share(), "8%", 0.1, 0]),
  count: (chance) => chance.whole(0, 5),
  stone: (chance) => chance.oneOf(["river rock", "Pea-Gravel", 1.35, chance.share() * 3]),
  soil: (chance) => chance.oneOf(["loam", "blasted rock", 0.3]),
  "width rule": (chance) => chance.oneOf(["simpson", "trapezoid"]),
  "yes or no": (chance) => chance.oneOf([true, false, "yes"]),
  date: (chance) => chance.oneOf([46_083, chance.whole(1, 90_000), "2026-03-02"]),
  degrees: (chance) => chance.oneOf([0, 45, 90, chance.share() * 360]),
};
const otherwise = (chance: Chance) => chance.oneOf([chance.whole(0, 40), chance.share() * 50, "12.5"]);

const fine = (kind: Kind, chance: Chance): unknown => (FINE[kind] ?? otherwise)(chance);

/** One value for one cell: mostly fine, else hostile. */
const cell = (kind: Kind, chance: Chance, odd: number): unknown =>
  chance.onceIn(odd) ? chance.oneOf(HOSTILE) : fine(kind, chance);

/** Something for an argument; `odd` says how rarely it is hostile. */
export function valueFor({ name, kind, many, fallback }: DeclaredArgument, chance: Chance, odd: number): unknown {
  if (fallback !== undefined && chance.onceIn(3)) return chance.oneOf([undefined, null, ""]);
  if (chance.onceIn(odd)) return chance.onceIn(4) ? rangeOf(name, kind, chance, 2) : chance.oneOf(HOSTILE);
  // A bed has two sides of a kind.
  if (name.endsWith("_sides") && !chance.onceIn(8)) return chance.whole(0, 2);
  return many ? rangeOf(name, kind, chance, odd * 3) : fine(kind, chance);
}

/** A range of cells of the shape that its argument takes, or of another. It is frozen: no function may change it. */
function rangeOf(name: string, kind: Kind, chance: Chance, odd: number): unknown {
  if (chance.onceIn(60)) return frozen(chance.list(0, 300, () => chance.list(0, 3, () => cell(kind, chance, odd))));
  if (name === "points") return frozen(chance.onceIn(3) ? anyPoints(chance, odd) : roundMiddle(chance, odd));
  if (name === "cut_outs" && kind === "ft")
    return frozen(
      chance.list(0, 3, () => [
        chance.share() * 20,
        chance.share() * 10,
        cell("ft", chance, odd),
        chance.oneOf(["", 2]),
      ]),
    );
  return frozen(chance.list(0, 8, () => [cell(kind, chance, odd)]));
}

const anyPoints = (chance: Chance, odd: number) =>
  chance.list(0, 9, () => [
    chance.onceIn(odd) ? chance.oneOf(HOSTILE) : chance.whole(-8, 8),
    chance.onceIn(odd) ? chance.oneOf(HOSTILE) : chance.whole(-8, 8),
  ]);

/** Points round a middle, which mostly do not cross. */
function roundMiddle(chance: Chance, odd: number): unknown[][] {
  const radii = chance.list(3, 12, () => chance.whole(8, 120) / 4);
  const rows: unknown[][] = radii.map((radius, place) => {
    const turn = (2 * Math.PI * place) / radii.length;
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
  if (chance.onceIn(odd)) rows[chance.whole(0, rows.length - 1)]![chance.whole(0, 1)] = chance.oneOf(HOSTILE);
  return rows;
}

const frozen = (rows: unknown[][]): unknown => Object.freeze(rows.map((row) => Object.freeze(row)));
