import ts from "typescript";

/** What the docstring of a worksheet function says, part by part. */
export interface FunctionDoc {
  readonly id: string;
  readonly about: string;
  readonly arguments: readonly { readonly name: string; readonly about: string }[];
  readonly returns: string;
  readonly example: string;
  readonly source: string;
  /** Ids of the functions named under `@see`. */
  readonly related: readonly string[];
}

/**
 * The docstrings of the worksheet functions in a file, in their order. A part that is not there is "", so that the
 * test which asks for it can say which.
 *
 * @param name the file's name, for the compiler's messages.
 * @param text what stands in it.
 */
export function docstringsOf(name: string, text: string): FunctionDoc[] {
  const file = ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true);
  return file.statements.flatMap((statement) => {
    if (!ts.isFunctionDeclaration(statement)) return [];
    const comments = ts.getJSDocCommentsAndTags(statement).filter(ts.isJSDoc);
    const parts = partsOf(comments.at(-1)?.getText() ?? "");
    const id = first(parts, "customfunction").split(" ")[0]!;
    return id === "" ? [] : [docOf(id, parts)];
  });
}

interface Part {
  readonly tag: string;
  readonly text: string;
}

/** The parts of a comment: what stands before the first tag under "", and each tag with the lines that follow it. */
function partsOf(comment: string): Part[] {
  const lines = comment
    .replace(/^\/\*\*|\*\/$/g, "")
    .split("\n")
    .map((line) => line.replace(/^\s*\*? ?/, "").trim());
  const parts: { tag: string; lines: string[] }[] = [{ tag: "", lines: [] }];
  for (const line of lines) {
    const [, tag, rest] = /^@(\w+)\s*(.*)$/.exec(line) ?? [];
    if (tag !== undefined) parts.push({ tag, lines: [rest!] });
    else parts.at(-1)!.lines.push(line);
  }
  return parts.map(({ tag, lines: all }) => ({ tag, text: all.join(" ").trim() }));
}

function docOf(id: string, parts: readonly Part[]): FunctionDoc {
  return {
    id,
    about: first(parts, ""),
    arguments: parts.filter(({ tag }) => tag === "param").map(({ text }) => argumentOf(text)),
    returns: first(parts, "returns"),
    example: first(parts, "example"),
    source: first(parts, "source"),
    related: [...first(parts, "see").matchAll(/BED\.([A-Z0-9_]+)/g)].map(([, related]) => related!),
  };
}

const first = (parts: readonly Part[], wanted: string) => parts.find(({ tag }) => tag === wanted)?.text ?? "";

function argumentOf(text: string): { name: string; about: string } {
  const [name, ...about] = text.split(" ");
  return { name: name!, about: about.join(" ") };
}
