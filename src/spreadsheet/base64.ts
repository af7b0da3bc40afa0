const PART = 0x8000;

/** Bytes as base64 text, a part at a time, since a call takes only so many arguments. */
export function base64Of(bytes: Uint8Array): string {
  let text = "";
  for (let start = 0; start < bytes.length; start += PART) {
    text += String.fromCharCode(...bytes.subarray(start, start + PART));
  }
  return btoa(text);
}

/** @throws where it is no base64 text. */
export function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
}
