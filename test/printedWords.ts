import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { hasLibreOffice } from "./recalculate";

/** A word on a printed page, in points from the page's upper left corner. */
export interface PrintedWord {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PrintedPage {
  readonly width: number;
  readonly height: number;
  readonly words: readonly PrintedWord[];
}

/** Whether this machine can print, and read what it printed: LibreOffice, and pdftotext of poppler-utils. */
export function canPrint(): boolean {
  try {
    execFileSync("pdftotext", ["-v"], { stdio: "ignore" });
    return hasLibreOffice();
  } catch {
    return false;
  }
}

/** Long documents have many words. */
const MOST_BYTES = 64 << 20;

/** The pages of a PDF file, with each word where it is printed. */
export function pagesOf(pdf: Uint8Array): PrintedPage[] {
  const folder = mkdtempSync(join(tmpdir(), "bedrow-print-"));
  try {
    const path = join(folder, "file.pdf");
    writeFileSync(path, pdf);
    const xml = execFileSync("pdftotext", ["-bbox", path, "-"], { encoding: "utf8", maxBuffer: MOST_BYTES });
    return [...xml.matchAll(/<page width="([\d.]+)" height="([\d.]+)">(.*?)<\/page>/gs)].map(
      ([, width, height, inside = ""]) => ({ width: Number(width), height: Number(height), words: wordsIn(inside) }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const WORD = /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/g;
const ENTITIES: Readonly<Record<string, string>> = {
  "&amp;": "&",
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&apos;": "'",
};

function wordsIn(xml: string): PrintedWord[] {
  return [...xml.matchAll(WORD)].map(([, left, top, right, bottom, text = ""]) => ({
    text: text.replace(/&\w+;/g, (entity) => ENTITIES[entity] ?? entity),
    left: Number(left),
    right: Number(right),
    top: Number(top),
    bottom: Number(bottom),
  }));
}

/** Of a word's height, what its letters take: the rest is room between lines. */
const LETTERS = 0.55;
/** Points by which letters may reach into one another's room, such as in italics. */
const TOUCH = 1;

/** Pairs of words that are printed over one another. */
export function overlapping({ words }: PrintedPage): string[] {
  const boxes = words.map((word) => {
    const spare = ((word.bottom - word.top) * (1 - LETTERS)) / 2;
    return { ...word, top: word.top + spare, bottom: word.bottom - spare };
  });
  return boxes.flatMap((one, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (other) =>
          Math.min(one.right, other.right) - Math.max(one.left, other.left) > TOUCH &&
          Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > TOUCH,
      )
      .map((other) => `${one.text} / ${other.text}`),
  );
}
