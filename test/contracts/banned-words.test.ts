import { readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");

/** Phrases that no American estimator would say, with what to say instead. */
const BANNED: readonly (readonly [phrase: RegExp, say: string])[] = [
  [/\btake (?:it |this |them |the \w+ )?back\b/i, "undo"],
  [/\btaken back\b/i, "undone"],
  [/\bmend(?:s|ed)?\b/i, "fix"],
  [/\blet it be\b/i, "ignore"],
  [/\bstands? in no\b/i, "isn't in the list"],
  [/\barrived as\b/i, "can't read … as …"],
  [/\bwhich is no number\b/i, "can't read … as a number"],
  [/\blaw of the place\b/i, "your state's rule"],
  [/\bat most apart\b/i, "spacing, max"],
  [/\bperson-h(?:ours?)?\b/i, "labor hours"],
  [/\bbarrow run\b|\bbarrow and spread\b/i, "wheelbarrow distance, wheelbarrow and spread"],
  [/\bborder run\b/i, "edging"],
  [/\bsmallest (?:job charge|stone order)\b/i, "minimum charge, minimum stone order"],
  [/\bwished\b/i, "start date, options"],
  [/\bdeeds?\b/i, "action"],
  [/\breckon(?:s|ed|ing)?\b/i, "work out, calculate"],
  [/\bsomebody\b|\banybody\b/i, "someone, anyone, you"],
  [/\bis told\b|\bare told\b/i, "the pane says"],
  [/\btaken for granted\b/i, "assumptions"],
  [/\blies so\b/i, "is too"],
  [/\bso that their\b/i, "so the"],
  [/\bis no (?:working day|number|date|length|version)\b/i, "isn't a …"],
  [/\bstands? (?:behind|at|on|there|beside|below|above)\b/i, "is"],
  [/\bmeanwhile\b/i, "just, at the same time"],
  [/\bnobody\b|\beverybody\b/i, "no one, everyone"],
  [/\banew\b/i, "again"],
  [/\b(?:labor|actual) h\b/i, "hr"],
];

/** The rooms whose words this holds: all they say can be read on a screen, a sheet, or a page of the help. */
const ROOMS = [
  "quantities",
  "functions",
  "layout",
  "review",
  "headings",
  "help",
  "packaging",
  "pane",
  "sheets",
  "workbook",
  "practice",
];

/** What says a banned phrase because people or workbooks say it. */
const EXCUSED: Readonly<Record<string, string>> = {
  "quantities/bed/olderTexts.ts": "labels that older workbooks have",
  "headings/roles.ts": "headings that people write",
  "headings/units.ts": "units that people write",
  "functions/each/haulHours.ts": "a kind of argument, which no screen shows",
  "review/formula/dimension.ts": "a kind of argument, which no screen shows",
};

const files = readdirSync(join(ROOT, "src"), { recursive: true, encoding: "utf8" })
  .filter((name) => ROOMS.some((room) => name.startsWith(`${room}/`)))
  .filter((name) => /\.(?:tsx?|mjs|html)$/.test(name) && !name.includes(".test.") && !(name in EXCUSED));

/** Every text of a file that a person can see: prose of a page, or what is in quotes. Labels are the screens' own. */
function textsOf(name: string, content: string): string[] {
  if (name.endsWith(".html")) return [content.replace(/<b>.*?<\/b>|<[^>]*>/gs, "").replace(/\s+/g, " ")];
  const source = ts.createSourceFile(name, content, ts.ScriptTarget.ES2022, true);
  const found: string[] = [];
  const visit = (node: ts.Node) => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    if (
      ts.isStringLiteralLike(node) ||
      ts.isTemplateHead(node) ||
      ts.isTemplateMiddleOrTemplateTail(node) ||
      ts.isJsxText(node)
    )
      found.push(node.text.replace(/\s+/g, " "));
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const bannedIn = (texts: readonly string[]): string[] =>
  texts.flatMap((text) =>
    BANNED.flatMap(([phrase, say]) => {
      const [found] = phrase.exec(text) ?? [];
      return found === undefined ? [] : [`“${found}” in “${text.slice(0, 80)}”: say ${say}`];
    }),
  );

describe("no text on a screen, a sheet, or a page of the help sounds translated", () => {
  test.each(files)("src/%s", (name) => {
    expect(bannedIn(textsOf(name, readFileSync(join(ROOT, "src", name), "utf8")))).toEqual([]);
  });

  test("the README", () => {
    expect(bannedIn([readFileSync(join(ROOT, "README.md"), "utf8").replace(/\*\*.*?\*\*/g, "")])).toEqual([]);
  });
});

test("a banned phrase is found in a text, and comments are left alone", () => {
  expect(bannedIn(textsOf("a.ts", '/* Somebody reckons. */ const a = "Mend the cell.";'))).toHaveLength(1);
  expect(bannedIn(textsOf("a.tsx", "const a = <b>Take it\n  back</b>;"))).toHaveLength(1);
  expect(bannedIn(textsOf("a.html", "<p>What stands\nbehind it</p>"))).toHaveLength(1);
});

test("every excuse is for a file that needs it", () => {
  const idle = Object.keys(EXCUSED).filter(
    (name) => bannedIn(textsOf(name, readFileSync(join(ROOT, "src", name), "utf8"))).length === 0,
  );
  expect(idle).toEqual([]);
});
