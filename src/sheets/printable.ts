/** Text without signs that no name may hold: control signs but spaces, and halves of letters. */
export function withoutUnprintable(text: string): string {
  return text.replace(/[^\P{Cc}\s]|\p{Cs}/gu, "");
}

/** The beginning of a text, at most so many characters long, without half a letter or a space at its end. */
export function cut(text: string, characters: number): string {
  return text
    .slice(0, characters)
    .replace(/\p{Cs}$/u, "")
    .trim();
}
