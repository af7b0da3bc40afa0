import ts from "typescript";

/** What these keys, attributes, and variables hold is shown even when it is one small word, such as a unit. */
const SHOWN_KEYS =
  /^(?:label|note|unit|title|text|heading|hint|placeholder|what|why|todo|seen|matters|says?|words?|singular|plural|each)$/;

/** What these attributes hold is never shown. */
const HIDDEN_ATTRIBUTES =
  /^(?:class|id|for|type|role|scope|name|href|src|key|d|fill|stroke|transform|viewBox|xmlns|style|inputMode|autocomplete|aria-(?!label$|description$).*)$/;

/** What looks like words and is code: a style sheet, a selector, a path of a drawing, a formula, an address, a pattern. */
const CODE =
  /^(?:[\p{Lu}\d.]+ ){3}|^[=#.[/<]\S|[{;]\s*[\w-]+\s*:|^[MLZ] ?[\d{]|^https?:|^[A-Z]{1,3}\$?\d|=>|&&|^[\w-]+\.\w+$|^(?:--|data-|image\/|text\/|application\/)/u;

/** Words rather than a name in code: two words, or one that starts a sentence. */
const isWords = (text: string) =>
  /[\p{L}]{2}/u.test(text) && !CODE.test(text) && (/\s/.test(text) || /^[A-Z][a-z]/.test(text));

/** The texts of a file that a person can see, in its order, each in one line, with `{…}` for what is filled in. */
export function shownTexts(name: string, content: string): string[] {
  return name.endsWith(".html") ? textsOfPage(content) : textsOfCode(name, content);
}

function textsOfPage(page: string): string[] {
  const blocks = page
    .replace(/<(style|script)\b.*?<\/\1>|<!--.*?-->|<!doctype[^>]*>/gis, "")
    .replace(/\b(?:title|aria-label|placeholder|alt)="([^"]*)"[^>]*>/g, ">\n$1\n")
    .split(
      /<\/?(?:p|h\d|li|ul|ol|dl|dt|dd|t[dhr]|table|thead|tbody|div|section|main|header|label|button|figcaption|figure|summary|details|title|head|body|html)\b[^>]*>|\n(?=[^<]*\n)/i,
    );
  return blocks.map((block) => oneLine(block.replace(/<[^>]*>/g, ""))).filter((text) => /[\p{L}]{2}/u.test(text));
}

function textsOfCode(name: string, content: string): string[] {
  const source = ts.createSourceFile(name, content, ts.ScriptTarget.ES2022, true);
  const found: string[] = [];
  /** What was read as part of the sentence around it. */
  const read = new Set<ts.Node>();

  const add = (text: string, shown: boolean) => {
    if (/<\/?[a-z][^<>]*>/.test(text)) return void found.push(...textsOfPage(text));
    const line = oneLine(text);
    const words = line.replace(/\{[^{}]*\}/g, (filled) => filled.replace(/[^|{}]*/g, " ")).trim();
    if (shown ? /\p{L}/u.test(line) : isWords(words) && isWords(line)) found.push(line);
  };

  const visit = (node: ts.Node, shown: boolean): void => {
    if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isJsxAttribute(node) && HIDDEN_ATTRIBUTES.test(node.name.getText(source))) return;
    if (!read.has(node)) {
      if (isElement(node) && hasOwnWords(node)) add(inWords(node), true);
      else if (ts.isStringLiteralLike(node) && !isName(node)) add(node.text, shown);
      else if (ts.isTemplateExpression(node)) add(inWords(node), shown);
    }
    const inside = isShownKey(node, source) || (shown && isPassedOn(node));
    ts.forEachChild(node, (child) => visit(child, inside));
  };

  /** What a person reads here: the words, those that are chosen from, and a name for whatever else is filled in. */
  const inWords = (node: ts.Node): string => {
    read.add(node);
    if (ts.isStringLiteralLike(node) || ts.isJsxText(node)) return node.text;
    if (isElement(node)) return node.children.map(inWords).join("");
    if (ts.isJsxSelfClosingElement(node)) return "";
    if (ts.isJsxExpression(node)) return node.expression ? inWords(node.expression) : "";
    if (ts.isParenthesizedExpression(node)) return inWords(node.expression);
    if (ts.isTemplateExpression(node))
      return node.head.text + node.templateSpans.map((span) => inWords(span.expression) + span.literal.text).join("");
    if (ts.isConditionalExpression(node))
      return `{${[node.whenTrue, node.whenFalse].map((one) => inWords(one).replace(/^\{([^{}]*)\}$/, "$1")).join("|")}}`;
    if (ts.isIdentifier(node)) return `{${node.text}}`;
    if (ts.isPropertyAccessExpression(node)) return `{${node.name.text}}`;
    read.delete(node);
    return "{…}";
  };

  visit(source, false);
  return found;
}

const isElement = (node: ts.Node): node is ts.JsxElement | ts.JsxFragment =>
  ts.isJsxElement(node) || ts.isJsxFragment(node);

const hasOwnWords = (node: ts.JsxElement | ts.JsxFragment) =>
  node.children.some((child) => ts.isJsxText(child) && /\p{L}/u.test(child.text));

/** Whether a literal names something in the code: a key, a member, what a value is compared with. */
function isName(node: ts.StringLiteralLike): boolean {
  const parent = node.parent;
  if (ts.isBinaryExpression(parent))
    return /^[!=<>]/.test(parent.operatorToken.getText()) || parent.operatorToken.kind === ts.SyntaxKind.InKeyword;
  if (ts.isPropertyAssignment(parent)) return parent.name === node && !isWords(node.text);
  return ts.isElementAccessExpression(parent) || ts.isCaseClause(parent) || ts.isLiteralTypeNode(parent);
}

function isShownKey(node: ts.Node, source: ts.SourceFile): boolean {
  if (ts.isPropertyAssignment(node) || ts.isJsxAttribute(node) || ts.isVariableDeclaration(node))
    return SHOWN_KEYS.test(node.name.getText(source));
  return false;
}

/** What a shown value is chosen or joined from is shown, too. */
const isPassedOn = (node: ts.Node) =>
  ts.isConditionalExpression(node) ||
  ts.isParenthesizedExpression(node) ||
  ts.isJsxExpression(node) ||
  ts.isAsExpression(node) ||
  ts.isArrayLiteralExpression(node) ||
  (ts.isBinaryExpression(node) && /^(?:\?\?|\|\||\+|&&)$/.test(node.operatorToken.getText()));

const oneLine = (text: string) => text.replace(/[\s\p{Cc}]+/gu, " ").trim();
