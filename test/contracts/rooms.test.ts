import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, test } from "vitest";

const SRC = resolve(import.meta.dirname, "../../src");

/** Who may import whom; what stands nowhere here may not be imported. A room may always import itself. */
const allowed: Readonly<Record<string, readonly string[]>> = {
  quantities: [],
  // Addresses of cells, and what holds for any formula or file, whoever writes it.
  spreadsheet: [],
  // .xlsx files as data, whoever reads or writes them.
  xlsx: ["spreadsheet"],
  // How people write headings and labels, for all who read them.
  headings: ["quantities"],
  functions: ["quantities", "layout", "headings"],
  layout: ["quantities"],
  sheets: ["quantities", "spreadsheet", "xlsx", "headings"],
  workbook: ["sheets", "spreadsheet"],
  // Explain shows what the functions declare, and the check may use their arithmetic.
  review: ["functions", "layout", "quantities", "headings", "spreadsheet"],
  pane: ["workbook", "sheets", "layout", "review", "quantities", "headings", "spreadsheet"],
  practice: ["spreadsheet", "xlsx"],
  // Made in the build, and loaded by nothing: it may ask all that it writes about.
  help: ["functions", "layout", "quantities", "sheets", "review", "spreadsheet"],
};

/** Single folders and files of a room that another room may import, where it may not import the rest. */
const allowedFolders: Readonly<Record<string, readonly string[]>> = {
  // The ordinary form of each function is declared with it.
  sheets: ["functions/native", "functions/declarations"],
  // The build looks up the guide's page of each screen.
  help: ["pane/screens"],
};

/** Rooms that must load in a host without a screen, so they may import no package either. */
const bare = ["quantities"];

interface Import {
  readonly from: string;
  readonly what: string;
  readonly typeOnly: boolean;
}

function importsOf(file: string): Import[] {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true);
  const found: Import[] = [];
  const visit = (node: ts.Node) => {
    if ((ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) && node.moduleSpecifier) {
      const typeOnly = ts.isImportDeclaration(node) ? node.importClause?.isTypeOnly === true : node.isTypeOnly;
      found.push({ from: file, what: (node.moduleSpecifier as ts.StringLiteral).text, typeOnly });
    }
    if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [what] = node.arguments;
      if (what && ts.isStringLiteral(what)) found.push({ from: file, what: what.text, typeOnly: false });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Why an import is forbidden; undefined where it is allowed. */
function fault({ from, what, typeOnly }: Import): string | undefined {
  const room = roomOf(from);
  const name = relative(SRC, from);
  if (!what.startsWith(".")) {
    return bare.includes(room)
      ? `${name} imports the package ${what}; ${room} imports nothing outside its room.`
      : undefined;
  }
  const path = relative(SRC, resolve(dirname(from), what));
  const target = path.split("/")[0] ?? "";
  if (target === room || allowed[room]?.includes(target)) return undefined;
  if (allowedFolders[room]?.some((part) => path === part || path.startsWith(`${part}/`))) return undefined;
  // review may take types from anywhere, and nothing else.
  if (room === "review" && typeOnly && target in allowed) return undefined;
  // What is read for a check has the shape that the check asks for.
  if (room === "workbook" && typeOnly && target === "review") return undefined;
  return `${name} imports ${what}; ${room} may not import ${target}.`;
}

function roomOf(path: string): string {
  return relative(SRC, path).split("/")[0] ?? "";
}

const sources = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.tsx?$/.test(name) && !/\.test\.tsx?$/.test(name))
  .map((name) => join(SRC, name));

describe("the rooms of the house", () => {
  test("every source file is in a room", () => {
    expect(sources.map(roomOf).filter((room) => !(room in allowed))).toEqual([]);
    expect(sources.length).toBeGreaterThan(20);
  });

  test("no file imports from a room it may not know", () => {
    expect(
      sources
        .flatMap(importsOf)
        .map(fault)
        .filter((text) => text !== undefined),
    ).toEqual([]);
  });

  test("a forbidden import is found", () => {
    const from = join(SRC, "quantities/area.ts");
    expect(fault({ from, what: "../sheets/plan", typeOnly: false })).toMatch(/quantities may not import sheets/);
    expect(fault({ from, what: "preact", typeOnly: false })).toMatch(/imports the package preact/);
    expect(fault({ from: join(SRC, "review/a.ts"), what: "../sheets/plan", typeOnly: false })).toMatch(
      /review may not/,
    );
    const plain = join(SRC, "sheets/plain/a.ts");
    expect(fault({ from: plain, what: "../../functions/native/forms", typeOnly: false })).toBeUndefined();
    for (const what of ["../../functions/areas", "../../functions/nativeness", "../../functions/native/../read"])
      expect(fault({ from: plain, what, typeOnly: true })).toMatch(/sheets may not import functions/);
    const help = join(SRC, "help/a.ts");
    expect(fault({ from: help, what: "../pane/screens", typeOnly: false })).toBeUndefined();
    expect(fault({ from: help, what: "../pane/App", typeOnly: false })).toMatch(/help may not import pane/);
    expect(fault({ from: join(SRC, "practice/a.ts"), what: "../pane/App", typeOnly: true })).toMatch(
      /practice may not/,
    );
    expect(fault({ from: join(SRC, "pane/App.tsx"), what: "../sheets/plan", typeOnly: false })).toBeUndefined();
  });
});
