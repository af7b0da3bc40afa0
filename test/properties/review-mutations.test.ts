import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Finding } from "../../src/review/finding";
import { reviewAtOnce } from "../../src/review/review";
import { callFunction } from "../callFunction";
import { factsOf, knowledge, type WorkbookInput } from "../reviewWorkbook";
import { bedsAcross } from "./review-workbooks/bedsAcross";
import { jobRows } from "./review-workbooks/jobRows";
import { messy } from "./review-workbooks/messy";
import { ours } from "./review-workbooks/ours";
import { type Field, type Planted, randomFrom, type Spot, slips } from "./review-workbooks/plant";
import { sections } from "./review-workbooks/sections";

const SEED = 20260302;
/** Enough for each kind of mistake to be planted some twenty times; PLANTS asks for more. */
const PLANTS = Number(process.env.PLANTS ?? 400);

/** Two of the case folders, which were written to be read and not to be planted in. */
const written = (name: string) => (): WorkbookInput =>
  JSON.parse(readFileSync(new URL(`./review-cases/${name}/input.json`, import.meta.url), "utf8"));
const jobsAbove = written("jobs-summed-at-the-top");
const metric = written("metric-measures");

const fields: Readonly<Record<string, Field>> = Object.fromEntries(
  Object.entries({ ours: () => ours(1), jobRows, sections, bedsAcross, jobsAbove, metric }).map(([name, make]) => {
    const input = make();
    return [name, { input, facts: factsOf(input) }];
  }),
);

describe("a clean workbook is told it is clean", () => {
  test.each(Object.entries({ ours, jobRows, sections, bedsAcross }))("%s", (_, make) => {
    expect(reviewAtOnce(factsOf(make()), knowledge, { call: callFunction }).findings).toEqual([]);
  });
});

test("a sheet that is messy and right is asked questions at most", () => {
  const { findings } = reviewAtOnce(factsOf(messy()), knowledge, { call: callFunction });
  expect(findings.filter(({ level }) => level !== "question")).toEqual([]);
});

interface Tally {
  planted: number;
  found: number;
  falseAlarms: number;
  echoes: number;
  missed: string[];
}

test("of mistakes planted at random at least 95 in 100 of each kind are found, and little else", () => {
  const random = randomFrom(SEED);
  const tallies = new Map<string, Tally>(
    Object.keys(slips).map((name) => [name, { planted: 0, found: 0, falseAlarms: 0, echoes: 0, missed: [] }]),
  );
  const falseByRule = new Map<string, number>();
  const jobs = Object.keys(slips).flatMap((slip) => Object.keys(fields).map((field) => ({ slip, field })));
  const able = new Set(jobs);
  let planted = 0;
  while (planted < PLANTS) {
    for (const job of able) {
      if (planted >= PLANTS) break;
      const one = plantOne(job, random);
      if (!one) {
        able.delete(job);
        continue;
      }
      planted++;
      const tally = tallies.get(job.slip)!;
      tally.planted++;
      const { findings } = reviewAtOnce(factsOf(one.input), knowledge, { call: callFunction });
      const mine = findings.filter((finding) => isAbout(one, finding));
      if (mine.some(({ rule }) => slips[job.slip]!.rules.includes(rule))) tally.found++;
      else
        tally.missed.push(
          `${job.field} ${one.at
            .map(({ row, column }) => `R${row + 1}C${column + 1}`)
            .slice(0, 2)
            .join()} ${one.at[0] && one.input.sheets[one.at[0].sheet]!.rows[one.at[0].row]![one.at[0].column]} ${mine.map(({ rule }) => rule)}`,
        );
      for (const finding of findings) {
        if (finding.level === "question" || mine.includes(finding)) continue;
        tally.falseAlarms++;
        falseByRule.set(finding.rule, (falseByRule.get(finding.rule) ?? 0) + 1);
        if (process.env.SHOW) console.log(job.slip, job.field, JSON.stringify(one.at[0]), finding.rule, finding.seen);
      }
    }
  }
  const line = (cells: readonly (string | number)[]) =>
    cells.map((cell, place) => (place === 0 ? String(cell).padEnd(44) : String(cell).padStart(8))).join("");
  console.log(
    [
      line(["slip planted", "planted", "found", "recall", "false"]),
      ...[...tallies].map(([name, { planted: count, found, falseAlarms }]) =>
        line([name, count, found, `${Math.round((found / count) * 1000) / 10}%`, falseAlarms]),
      ),
      `false alarms by rule: ${[...falseByRule].map(([rule, count]) => `${rule} ${count}`).join(", ") || "none"}`,
      ...(process.env.SHOW
        ? [...tallies].flatMap(([name, { missed }]) => missed.map((one) => `missed ${name}: ${one}`))
        : []),
    ].join("\n"),
  );
  const falseAlarms = [...falseByRule.values()].reduce((sum, one) => sum + one, 0);
  expect(falseAlarms).toBeLessThan(PLANTS / 100);
  for (const [name, { planted: count, found }] of tallies) {
    expect(count, name).toBeGreaterThan(0);
    expect(found / count, name).toBeGreaterThanOrEqual(0.95);
  }
}, 600_000);

function plantOne({ slip, field }: { slip: string; field: string }, random: () => number): Planted | undefined {
  for (let attempt = 0; attempt < 12; attempt++) {
    const planted = slips[slip]!.plant(fields[field]!, random);
    if (planted) return planted;
  }
  return undefined;
}

/** Whether a finding points to a planted cell, or tells of it. */
function isAbout({ input, at }: Planted, { places, related }: Finding): boolean {
  const holds = ({ sheet, row, column }: Spot) =>
    [...places, ...related].some(
      (place) =>
        place.sheet === input.sheets[sheet]!.name &&
        row >= place.row &&
        row < place.row + place.rows &&
        column >= place.column &&
        column < place.column + place.columns,
    );
  return at.some(holds);
}
