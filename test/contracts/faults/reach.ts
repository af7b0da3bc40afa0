import { readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import ts from "typescript";
import { hostDeclaration, programOf } from "../../hostMembers";

/** What a function of the sources does with the host, by itself or by what it calls. */
export interface Reach {
  /** Such as `src/workbook/insert.ts`. */
  readonly file: string;
  readonly name: string;
  readonly isExported: boolean;
  /** What takes a context is a part of what another one does. */
  readonly takesContext: boolean;
  /** Whether it runs a batch, by itself or by what it calls. */
  readonly talks: boolean;
  /** Whether it does so by itself. */
  readonly runs: boolean;
  /** Members of the host by which it changes the workbook, such as `Range.formulas`. */
  readonly writes: readonly string[];
}

/** Methods that change nothing that is saved; every other one, and every assignment, does. */
const READS =
  /^(get|load|sync|run$|select$|activate$|suspend|isSetSupported$|track|untrack|toJSON$|remove$|createWorkbook$)/;
/** Handlers of events are added and removed; nothing is saved of them. */
const IS_EVENT = /EventHandlers/;

interface Node {
  readonly file: string;
  readonly name: string;
  readonly isExported: boolean;
  readonly takesContext: boolean;
  readonly calls: Set<ts.Declaration | string>;
  readonly writes: Set<string>;
  talks: boolean;
}

/** Members of its interfaces are found by their names; those of other rooms hold nothing of the host. */
const TALKS = "src/workbook/";
const ROOT = resolve(import.meta.dirname, "../../..");

/** The sources that a workbook is talked to from. */
export function sourcesOf(...rooms: readonly string[]): string[] {
  return rooms.flatMap((room) =>
    readdirSync(join(ROOT, room), { recursive: true, encoding: "utf8" })
      .filter((name) => /\.tsx?$/.test(name) && !/\.test\.tsx?$|\.d\.ts$/.test(name))
      .map((name) => `${room}/${name}`),
  );
}

/**
 * What every function and constant at the top of some files reaches.
 *
 * @param planted further sources by path, which are in no file.
 */
export function reachOf(files: readonly string[], planted: Readonly<Record<string, string>> = {}): Reach[] {
  const program = programOf(files, planted);
  const checker = program.getTypeChecker();
  const wanted = new Map([...files, ...Object.keys(planted)].map((file) => [resolve(ROOT, file), file]));
  const nodes = new Map<ts.Declaration, Node>();
  const byMember = new Map<string, Node[]>();

  const start = (declaration: ts.Declaration, file: string, name: string, isExported: boolean): Node => {
    const node: Node = {
      file,
      name,
      isExported,
      takesContext: /RequestContext/.test(parametersOf(declaration)),
      calls: new Set(),
      writes: new Set(),
      talks: false,
    };
    nodes.set(declaration, node);
    return node;
  };

  const walk = (part: ts.Node, node: Node): void => {
    // A function in an object is reached by the member's name, not by making the object.
    if (isMemberFunction(part)) {
      const member = start(part, node.file, part.name.getText(), false);
      byMember.set(member.name, [...(byMember.get(member.name) ?? []), member]);
      ts.forEachChild(part, (child) => {
        if (child !== part.name) walk(child, member);
      });
      return;
    }
    if (ts.isIdentifier(part)) {
      const symbol = checker.getSymbolAtLocation(part);
      const target = symbol && (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol);
      for (const declaration of target?.declarations ?? []) {
        node.calls.add(declaration);
        const isMember = ts.isPropertySignature(declaration) || ts.isMethodSignature(declaration);
        if (isMember && wanted.get(resolve(declaration.getSourceFile().fileName))?.startsWith(TALKS))
          node.calls.add(part.text);
      }
    }
    if (ts.isCallExpression(part)) noteCall(part, node, checker);
    if (ts.isBinaryExpression(part) && part.operatorToken.kind === ts.SyntaxKind.EqualsToken)
      noteAssigned(part.left, node, checker);
    ts.forEachChild(part, (child) => walk(child, node));
  };

  for (const source of program.getSourceFiles()) {
    const file = wanted.get(resolve(source.fileName));
    if (file === undefined) continue;
    for (const statement of source.statements) {
      const isExported =
        ts.canHaveModifiers(statement) &&
        (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
      const declared = ts.isVariableStatement(statement)
        ? [...statement.declarationList.declarations]
        : ts.isFunctionDeclaration(statement) || ts.isClassDeclaration(statement)
          ? [statement]
          : [];
      for (const one of declared) {
        walk(one, start(one, file, one.name?.getText() ?? "default", isExported));
      }
    }
  }

  const reached = (node: Node): { writes: string[]; talks: boolean } => {
    const seen = new Set<Node>([node]);
    for (const one of seen) {
      for (const call of one.calls) {
        const targets = typeof call === "string" ? (byMember.get(call) ?? []) : [nodes.get(call)];
        for (const target of targets) if (target) seen.add(target);
      }
    }
    const all = [...seen];
    return { writes: [...new Set(all.flatMap(({ writes }) => [...writes]))], talks: all.some(({ talks }) => talks) };
  };
  return [...nodes.values()].map((node) => {
    const { file, name, isExported, takesContext } = node;
    return { file, name, isExported, takesContext, runs: node.talks, ...reached(node) };
  });
}

function isMemberFunction(node: ts.Node): node is ts.PropertyAssignment | ts.MethodDeclaration {
  if (ts.isMethodDeclaration(node)) return ts.isObjectLiteralExpression(node.parent);
  if (!ts.isPropertyAssignment(node)) return false;
  return ts.isArrowFunction(node.initializer) || ts.isFunctionExpression(node.initializer);
}

function parametersOf(declaration: ts.Declaration): string {
  const made = ts.isVariableDeclaration(declaration) ? declaration.initializer : declaration;
  return made && ts.isFunctionLike(made) ? made.parameters.map(({ type }) => type?.getText() ?? "").join(" ") : "";
}

function memberOf(node: ts.Expression, checker: ts.TypeChecker): { holder: string; name: string } | undefined {
  if (!ts.isPropertyAccessExpression(node)) return undefined;
  const symbol = checker.getSymbolAtLocation(node.name);
  const declared = symbol && hostDeclaration(symbol);
  if (!declared) return undefined;
  const { parent } = declared;
  return { holder: "name" in parent && parent.name ? (parent.name as ts.Node).getText() : "", name: node.name.text };
}

function noteCall(call: ts.CallExpression, node: Node, checker: ts.TypeChecker): void {
  const member = memberOf(call.expression, checker);
  if (!member) return;
  if (["run", "createWorkbook"].includes(member.name)) node.talks = true;
  if (IS_EVENT.test(member.holder) || READS.test(member.name)) return;
  node.writes.add(`${member.holder}.${member.name}`);
}

function noteAssigned(target: ts.Expression, node: Node, checker: ts.TypeChecker): void {
  const member = memberOf(target, checker);
  if (member) node.writes.add(`${member.holder}.${member.name}`);
}
