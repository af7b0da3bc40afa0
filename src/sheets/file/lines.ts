import { must } from "../../quantities/must";

/** A text in lines of at most so many characters, for cells that cannot grow with what is in them. */
export function inLines(text: string, characters: number): string[] {
  const lines = [""];
  for (const word of text.split(" ")) {
    const line = must(lines.at(-1));
    if (line === "") lines[lines.length - 1] = word;
    else if (line.length + 1 + word.length <= characters) lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}
