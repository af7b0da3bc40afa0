import type { AstExpression, BinaryOperator, CallExpression, ReferenceIdentifier } from "@borgar/fx";
import { inParentheses } from "../../functions/native/arithmetic";
import { nativeForms } from "../../functions/native/forms";
import { BLANK, type Constant, type Given, NoNative } from "../../functions/native/given";
import type { Reading } from "../../functions/native/textReading";
import { closed, NO_VALUE, type Worked } from "../../functions/native/worked";
import { must } from "../../quantities/must";
import { Problem } from "../../quantities/problem";
import { kindOfCall, ownFunction } from "./formula";
import type { Found, References } from "./references";
import type { SheetArea } from "./region";
import { PERCENT, STRENGTH, UNARY } from "./strength";
import type { CellReader } from "./taped";

/** Writes one formula again, with every call of ours as ordinary arithmetic. */
export class Translation {
  /** Cells that the formula reads by itself, and not as a function's argument. */
  readonly read: Found[] = [];
  /** Cells of which it asks by itself whether they are 0, which no text is. */
  readonly askedForZero: Found[] = [];

  constructor(
    private readonly at: SheetArea,
    private readonly references: References,
    private readonly cells: CellReader,
  ) {}

  /**
   * The formula in the copy, without its "=".
   *
   * @param strength how tightly what stands around it binds; 0 where nothing does.
   * @throws NoNative where it has no ordinary form.
   */
  text(node: AstExpression, strength = 0): string {
    switch (node.type) {
      case "Literal":
      case "ErrorLiteral":
        return node.raw;
      case "ReferenceIdentifier":
        return this.reference(node);
      case "ArrayExpression":
        return `{${node.elements.map((row) => row.map((one) => this.text(one)).join(",")).join(";")}}`;
      case "UnaryExpression":
        return this.unary(node.operator, must(node.arguments[0]), strength);
      case "BinaryExpression": {
        const asked = this.askedFor(node.operator, node.arguments);
        if (asked !== undefined) return STRENGTH[node.operator] < strength ? `(${asked})` : asked;
        const own = STRENGTH[node.operator];
        const [left, right] = node.arguments;
        const text = this.text(must(left), own) + node.operator + this.text(must(right), own + 1);
        return own < strength || node.operator === "," ? `(${text})` : text;
      }
      case "CallExpression":
        return this.called(node, strength);
      default:
        throw new NoNative("it defines names within the formula (LET or LAMBDA)");
    }
  }

  /** Whether a cell is blank or 0; a number in place of its text is as little blank as the text was. */
  private askedFor(operator: BinaryOperator, [left, right]: readonly AstExpression[]): string | undefined {
    if ((operator !== "=" && operator !== "<>") || left?.type !== "ReferenceIdentifier") return undefined;
    if (right?.type !== "Literal" || (right.value !== "" && right.value !== 0)) return undefined;
    const before = this.read.length;
    const text = `${this.reference(left)}${operator}${right.raw}`;
    const found = this.read.splice(before);
    if (right.value === 0) this.askedForZero.push(...found);
    return text;
  }

  private unary(operator: string, inner: AstExpression, strength: number): string {
    if (operator === "%" || operator === "#") {
      const text = this.text(inner, PERCENT) + operator;
      return PERCENT < strength ? `(${text})` : text;
    }
    // Arithmetic gives one value anyway.
    if (operator === "@" && isOwn(inner)) return this.text(inner, strength);
    const text = operator + this.text(inner, UNARY);
    return UNARY < strength ? `(${text})` : text;
  }

  private reference(node: ReferenceIdentifier): string {
    const found = this.references.find(node, this.at);
    if (found) this.read.push(found);
    const text = this.references.written(node, this.at);
    if (text === undefined) throw new NoNative(`${node.value} belongs to a table that isn't there`);
    return text;
  }

  private called({ callee, arguments: given }: CallExpression, strength: number): string {
    if (callee.type !== "Identifier" || /^(?:_xlfn\.)?(?:LET|LAMBDA)$/i.test(callee.name))
      throw new NoNative("it defines names within the formula (LET or LAMBDA)");
    const id = ownFunction(callee.name);
    if (id === undefined) return `${callee.name}(${given.map((one) => (one ? this.text(one) : "")).join(",")})`;
    const worked = this.own(id, given);
    const text = closed(worked);
    return strength > 0 && worked.layers.length === 0 ? inParentheses(text) : text;
  }

  /** A call of ours as arithmetic. */
  private own(id: string, given: readonly (AstExpression | null)[]): Worked {
    const form = nativeForms[id];
    if (!form) throw new NoNative(`BED.${id} isn't a function this version has`);
    if ("none" in form) throw new NoNative(`BED.${id} has no ordinary form: ${form.none}`);
    try {
      return form.build(form.takes.map((reading, place) => this.given(given[place] ?? null, reading)));
    } catch (reason) {
      if (!(reason instanceof Problem)) throw reason;
      // What is typed into the formula is refused, so it gives the same error here.
      return { text: reason.kind === "name" ? "NA()" : NO_VALUE, layers: [], least: "anything" };
    }
  }

  private given(node: AstExpression | null, reading: Reading): Given {
    if (node === null) return BLANK;
    switch (node.type) {
      case "Literal":
        return { kind: "constant", value: node.value };
      case "ArrayExpression":
        return { kind: "list", rows: node.elements.map((row) => row.map(constantOf)) };
      case "ReferenceIdentifier":
        return this.givenReference(node, reading);
      case "UnaryExpression":
        return this.givenUnary(node.operator, must(node.arguments[0]), node, reading);
      case "BinaryExpression":
        return this.givenBinary(node.operator, node);
      case "CallExpression":
        return this.givenCall(node, reading);
      default:
        return { kind: "number", text: this.text(node), layers: [], least: "anything" };
    }
  }

  private givenReference(node: ReferenceIdentifier, reading: Reading): Given {
    const found = this.references.find(node, this.at);
    if (!found) {
      if (node.kind === "beam") throw new NoNative(`${node.value} takes whole rows or columns`);
      return { kind: "unknown", text: this.reference(node) };
    }
    if (found.rows * found.columns === 1) return this.cells.cell(found, reading);
    this.cells.range(found, reading);
    return { kind: "range", range: found.range };
  }

  private givenUnary(operator: string, inner: AstExpression, node: AstExpression, reading: Reading): Given {
    if (operator === "#") throw new NoNative(`${this.text(node)} is a list that spills`);
    const given = this.given(inner, reading);
    if (operator === "@") return given;
    if (given.kind === "constant" && typeof given.value === "number") {
      const { value } = given;
      return { kind: "constant", value: operator === "%" ? value / 100 : operator === "-" ? -value : value };
    }
    refuseSeveral(given);
    return { kind: "number", text: this.text(node), layers: [], least: "anything" };
  }

  private givenBinary(operator: BinaryOperator, node: AstExpression & { type: "BinaryExpression" }): Given {
    if (STRENGTH[operator] >= STRENGTH[","]) throw new NoNative(`${this.text(node)} may be several cells`);
    this.refuseLists(node);
    const text = this.text(node);
    if (operator === "&") return { kind: "text", text };
    if (STRENGTH[operator] === STRENGTH["="]) return { kind: "truth", text };
    return { kind: "number", text, layers: [], least: "anything" };
  }

  private givenCall(node: CallExpression, reading: Reading): Given {
    const { callee } = node;
    const id = callee.type === "Identifier" ? ownFunction(callee.name) : undefined;
    if (id !== undefined) return { kind: "number", ...this.own(id, node.arguments) };
    const before = this.read.length;
    const text = this.text(node);
    const kind = callee.type === "Identifier" ? kindOfCall(callee.name) : "unknown";
    if (kind === "number") return { kind, text, layers: [], least: "anything" };
    if (kind === "unknown") for (const found of this.read.slice(before)) this.cells.through(found, reading);
    return { kind, text };
  }

  /** Arithmetic on several cells at once gives several results, which no argument of one cell takes. */
  private refuseLists(node: AstExpression): void {
    if (node.type === "ArrayExpression") throw new NoNative(`${this.text(node)} is several values`);
    if (node.type === "ReferenceIdentifier") {
      const found = this.references.find(node, this.at);
      if (found && found.rows * found.columns > 1) throw new NoNative(`${node.value} is several cells`);
    }
    if (node.type === "UnaryExpression" || node.type === "BinaryExpression")
      for (const one of node.arguments) this.refuseLists(one);
  }
}

function isOwn(node: AstExpression): boolean {
  return (
    node.type === "CallExpression" && node.callee.type === "Identifier" && ownFunction(node.callee.name) !== undefined
  );
}

function constantOf(node: AstExpression): Constant {
  if (node.type === "Literal") return node.value;
  throw new NoNative("a list in the formula holds more than numbers and text");
}

function refuseSeveral(given: Given): void {
  if (given.kind === "range" || given.kind === "list") throw new NoNative("several values are worked with at once");
}
