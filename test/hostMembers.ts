import { readFileSync } from "node:fs";
import { relative, resolve } from "node:path";
import ts from "typescript";

/** A requirement set of the host, such as ExcelApi 1.14. */
export interface RequirementSet {
  readonly name: string;
  readonly version: string;
}

/** A place in the sources that uses a member of the host. */
export interface Use {
  /** Such as `Range.getSpillParent`. */
  readonly member: string;
  /** The set that first has it; undefined for what every host has. */
  readonly set: RequirementSet | undefined;
  /** Such as `src/workbook/look.ts:12`. */
  readonly at: string;
  /** Sets that were asked for with `isSetSupported` on the way to this place. */
  readonly guards: readonly RequirementSet[];
}

export interface HostUses {
  readonly uses: readonly Use[];
  /** What is loaded and could not be looked up: a name that the host does not have, or one that is no plain text. */
  readonly unread: readonly string[];
}

const ROOT = resolve(import.meta.dirname, "..");
const HOST_TYPES = /[\\/]@types[\\/]office-js[\\/]/;

/**
 * Every use of a member of the host in some sources, with the requirement set that the host's own type package names
 * for it: properties and methods, names in `load("values,format/fill/color")`, and the keys of what is handed over.
 *
 * @param files paths from the project's folder.
 * @param planted further sources by path, which are in no file.
 */
export function hostUses(files: readonly string[], planted: Readonly<Record<string, string>> = {}): HostUses {
  const program = programOf(files, planted);
  const checker = program.getTypeChecker();
  const uses: Use[] = [];
  const unread: string[] = [];
  const wanted = new Set([...files, ...Object.keys(planted)].map((file) => resolve(ROOT, file)));
  for (const source of program.getSourceFiles()) {
    if (!wanted.has(resolve(source.fileName))) continue;
    const at = (node: ts.Node) => {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      return `${relative(ROOT, source.fileName)}:${line + 1}`;
    };
    const note = (symbol: ts.Symbol | undefined, node: ts.Node) => {
      const declared = symbol && hostDeclaration(symbol);
      if (!declared) return;
      uses.push({ ...described(declared), at: at(node), guards: guardsAround(node, checker) });
    };
    const visit = (node: ts.Node): void => {
      if (ts.isPropertyAccessExpression(node)) note(checker.getSymbolAtLocation(node.name), node);
      if (ts.isBindingElement(node)) note(boundProperty(node, checker), node);
      if (ts.isObjectLiteralExpression(node)) for (const key of keysOf(node, checker)) note(key.symbol, key.node);
      if (ts.isCallExpression(node) && isLoad(node, checker)) {
        for (const loaded of loadedBy(node, checker)) {
          if (typeof loaded === "string") unread.push(`${at(node)} loads ${loaded}`);
          else note(loaded, node);
        }
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return { uses, unread };
}

export function programOf(files: readonly string[], planted: Readonly<Record<string, string>>): ts.Program {
  const config = ts.readConfigFile(resolve(ROOT, "tsconfig.json"), ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent({ ...config.config, include: [], files: [] }, ts.sys, ROOT);
  const host = ts.createCompilerHost(options, true);
  const texts = new Map(Object.entries(planted).map(([path, text]) => [resolve(ROOT, path), text]));
  const { fileExists, readFile, getSourceFile } = host;
  host.fileExists = (path) => texts.has(path) || fileExists(path);
  host.readFile = (path) => texts.get(path) ?? readFile(path);
  host.getSourceFile = (path, version, ...rest) => {
    const text = texts.get(path);
    return text === undefined ? getSourceFile(path, version, ...rest) : ts.createSourceFile(path, text, version, true);
  };
  const names = [...files.map((file) => resolve(ROOT, file)), ...texts.keys()];
  return ts.createProgram(names, { ...options, types: ["office-js", "custom-functions-runtime"] }, host);
}

export const hostDeclaration = (symbol: ts.Symbol): ts.Declaration | undefined =>
  symbol.declarations?.find((declaration) => HOST_TYPES.test(declaration.getSourceFile().fileName));

function described(declaration: ts.Declaration): Pick<Use, "member" | "set"> {
  const name = ts.getNameOfDeclaration(declaration)?.getText() ?? "";
  for (let holder: ts.Node = declaration; !ts.isSourceFile(holder); holder = holder.parent) {
    const set = setOf(holder);
    if (set) return { member: memberName(declaration, name), set };
  }
  return { member: memberName(declaration, name), set: undefined };
}

/** Without the interfaces that only say how something is loaded or written, which repeat the members of the object. */
function memberName({ parent }: ts.Declaration, name: string): string {
  const holder = "name" in parent && parent.name ? (parent.name as ts.Node).getText() : "";
  const object = holder.replace(/(?:LoadOptions|UpdateData|CollectionData|Data)$/, "");
  return object === "" ? name : `${object}.${name}`;
}

/** The set that the comment of a declaration names. */
function setOf(node: ts.Node): RequirementSet | undefined {
  const text = ts
    .getJSDocCommentsAndTags(node)
    .map((comment) => comment.getText())
    .join("\n");
  const [, name, version] =
    /\[Api set: (\S+) (BETA|[\d.]+)/.exec(text) ??
    /\*\*Requirement set\*\*: \{@link [^|]*\| (\w+) ([\d.]+)\}/.exec(text) ??
    [];
  return name === undefined || version === undefined ? undefined : { name, version };
}

function boundProperty(node: ts.BindingElement, checker: ts.TypeChecker): ts.Symbol | undefined {
  if (!ts.isObjectBindingPattern(node.parent)) return undefined;
  const name = node.propertyName ?? node.name;
  return ts.isIdentifier(name) ? checker.getTypeAtLocation(node.parent).getProperty(name.text) : undefined;
}

/** The keys of an object that is handed to the host, as the host's types know them. */
function keysOf(node: ts.ObjectLiteralExpression, checker: ts.TypeChecker) {
  const type = checker.getContextualType(node);
  if (!type) return [];
  return node.properties.flatMap((property) => {
    const name = property.name && ts.isIdentifier(property.name) ? property.name.text : undefined;
    const symbol = name === undefined ? undefined : checker.getPropertyOfType(checker.getNonNullableType(type), name);
    return symbol ? [{ symbol, node: property }] : [];
  });
}

function isLoad(node: ts.CallExpression, checker: ts.TypeChecker): boolean {
  if (!ts.isPropertyAccessExpression(node.expression) || node.expression.name.text !== "load") return false;
  const symbol = checker.getSymbolAtLocation(node.expression.name);
  return symbol !== undefined && hostDeclaration(symbol) !== undefined;
}

/** What a call of `load` asks for; text where the host has no such property, or what is asked is not written there. */
function loadedBy(node: ts.CallExpression, checker: ts.TypeChecker): (ts.Symbol | string)[] {
  const { expression } = node.expression as ts.PropertyAccessExpression;
  const receiver = checker.getNonNullableType(checker.getTypeAtLocation(expression));
  return node.arguments.flatMap((argument) => {
    if (ts.isObjectLiteralExpression(argument)) return [];
    const parts = ts.isArrayLiteralExpression(argument) ? [...argument.elements] : [argument];
    return parts.flatMap((part) => {
      const type = checker.getTypeAtLocation(part);
      const texts = (type.isUnion() ? type.types : [type]).map((one) =>
        one.isStringLiteral() ? one.value : undefined,
      );
      return texts.flatMap((text) => {
        if (text === undefined) return [`what is not written there: ${part.getText()}`];
        return text.split(",").flatMap((path) => alongPath(receiver, path.trim(), node, checker));
      });
    });
  });
}

function alongPath(from: ts.Type, path: string, node: ts.Node, checker: ts.TypeChecker): (ts.Symbol | string)[] {
  const found: (ts.Symbol | string)[] = [];
  let type = from;
  for (const step of path.split("/")) {
    const element = checker.getIndexTypeOfType(type, ts.IndexKind.Number);
    const symbol = checker.getPropertyOfType(checker.isArrayType(type) && element ? element : type, step);
    if (!symbol) return [...found, `${path}, which the host does not have`];
    found.push(symbol);
    type = checker.getNonNullableType(checker.getTypeOfSymbolAtLocation(symbol, node));
  }
  return found;
}

/** The sets that are asked for on the way to a place: around it, or before it with a way out. */
function guardsAround(node: ts.Node, checker: ts.TypeChecker): RequirementSet[] {
  const guards: RequirementSet[] = [];
  for (let inner = node; inner.parent; inner = inner.parent) {
    const outer = inner.parent;
    if (ts.isIfStatement(outer) && inner === outer.thenStatement) guards.push(...askedFor(outer.expression, checker));
    if (ts.isConditionalExpression(outer) && inner === outer.whenTrue)
      guards.push(...askedFor(outer.condition, checker));
    const isAnd = ts.isBinaryExpression(outer) && outer.operatorToken.kind === ts.SyntaxKind.AmpersandAmpersandToken;
    if (isAnd && inner === outer.right) guards.push(...askedFor(outer.left, checker));
    if (ts.isBlock(outer))
      for (const before of outer.statements.slice(0, outer.statements.indexOf(inner as ts.Statement)))
        if (ts.isIfStatement(before) && leaves(before.thenStatement) && isNot(before.expression))
          guards.push(...askedFor(before.expression.operand, checker));
  }
  return guards;
}

const isNot = (node: ts.Expression): node is ts.PrefixUnaryExpression =>
  ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken;

function leaves(statement: ts.Statement): boolean {
  const last = ts.isBlock(statement) ? statement.statements.at(-1) : statement;
  return last !== undefined && (ts.isReturnStatement(last) || ts.isThrowStatement(last));
}

/** The sets that must be there for a condition to hold: its own call, each part of an "and", or a name for one. */
function askedFor(condition: ts.Expression, checker: ts.TypeChecker): RequirementSet[] {
  if (ts.isParenthesizedExpression(condition)) return askedFor(condition.expression, checker);
  if (ts.isBinaryExpression(condition) && condition.operatorToken.kind === ts.SyntaxKind.AmpersandAmpersandToken)
    return [...askedFor(condition.left, checker), ...askedFor(condition.right, checker)];
  if (ts.isIdentifier(condition)) {
    const declared = checker.getSymbolAtLocation(condition)?.valueDeclaration;
    const value = declared && ts.isVariableDeclaration(declared) ? declared.initializer : undefined;
    return value ? askedFor(value, checker) : [];
  }
  if (!ts.isCallExpression(condition) || !ts.isPropertyAccessExpression(condition.expression)) return [];
  const [name, version] = condition.arguments;
  const isAsked = condition.expression.name.text === "isSetSupported";
  if (!isAsked || !name || !version || !ts.isStringLiteral(name) || !ts.isStringLiteral(version)) return [];
  return [{ name: name.text, version: version.text }];
}

/** Whether the sets that are there have one that is wanted. */
export function includes(there: readonly RequirementSet[], wanted: RequirementSet): boolean {
  return there.some(({ name, version }) => name === wanted.name && newness(version) >= newness(wanted.version));
}

/** Versions in their order; what is not released yet is newer than everything. */
export function newness(version: string): number {
  const [major = 0, minor = 0] = version.split(".").map(Number);
  return Number.isNaN(major) ? Number.POSITIVE_INFINITY : major * 1000 + minor;
}

/** The sets that the manifest asks of a host: it is not installed where one is missing. */
export function declaredSets(manifest = resolve(ROOT, "manifest.xml")): RequirementSet[] {
  const text = readFileSync(manifest, "utf8");
  return [...text.matchAll(/<Set Name="(\w+)" MinVersion="([\d.]+)"\/>/g)].map(([, name, version]) => ({
    name: name!,
    version: version!,
  }));
}
