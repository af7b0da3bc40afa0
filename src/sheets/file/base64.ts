const PART = 0x8000;

/** Bytes as base64 text, a part at a time, since a call takes only so many arguments. */
export function base64Of(bytes: Uint8Array): string {
  let text = "";
  for (let start = 0; start < bytes.length; start += PART) {
    text += String.fromCharCode(...bytes.subarray(start, start + PART));
  }
  return btoa(text);
}
