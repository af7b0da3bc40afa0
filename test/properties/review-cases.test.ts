import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Scope } from "../../src/review/facts";
import type { Finding } from "../../src/review/finding";
import { reviewAtOnce } from "../../src/review/review";
import { rules } from "../../src/review/rules";
import { callFunction } from "../callFunction";
import { factsOf, knowledge, type WorkbookInput } from "../reviewWorkbook";

/*
 * Small workbooks, each with what a check has to find in it and nothing else: a folder a case, input.json and
 * expected.json. The numbers in the expected words were worked out by hand; what each case is about is in it.
 */
const CASES = new URL("./review-cases/", import.meta.url);

interface Case extends WorkbookInput {
  readonly about: string;
  readonly scope?: Scope;
}

interface Expected {
  readonly findings: readonly {
    readonly rule: string;
    readonly level: string;
    readonly where: string;
    readonly seen: string;
    /** What each cell would hold after the fix. */
    readonly fix?: Readonly<Record<string, string | number>>;
  }[];
  readonly unchecked?: readonly string[];
}

const read = <Kind>(name: string, file: string): Kind =>
  JSON.parse(readFileSync(new URL(`${name}/${file}`, CASES), "utf8"));
const names = readdirSync(CASES).sort();

describe.each(names)("%s", (name) => {
  const input = read<Case>(name, "input.json");
  const expected = read<Expected>(name, "expected.json");
  const { findings, unchecked } = reviewAtOnce(factsOf(input), knowledge, {
    call: callFunction,
    ...(input.scope && { scope: input.scope }),
  });

  test(input.about, () => {
    expect(findings.map(told)).toEqual(expected.findings);
    if (expected.unchecked) expect(unchecked.map(({ what, where }) => `${what}: ${where}`)).toEqual(expected.unchecked);
  });
});

test("every rule has a case that shows it", () => {
  const shown = new Set(
    names.flatMap((name) => read<Expected>(name, "expected.json").findings.map(({ rule }) => rule)),
  );
  expect(rules.map(({ id }) => id).filter((id) => !shown.has(id))).toEqual([]);
});

function told({ rule, level, where, seen, fix }: Finding): Expected["findings"][number] {
  const changes = (fix ?? []).map(({ sheet, row, column, after }) => [
    `${sheet}!${String.fromCharCode(65 + column)}${row + 1}`,
    after,
  ]);
  return { rule, level, where, seen, ...(fix && { fix: Object.fromEntries(changes) }) };
}
