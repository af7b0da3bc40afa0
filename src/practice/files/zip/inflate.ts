import { mostUnpackedBytes } from "../limits";
import { FileTrouble } from "../trouble";

/** Counts what comes out of one file, all parts together. */
export class Allowance {
  private left = mostUnpackedBytes;

  /** @throws FileTrouble where more has come out than a workbook needs. */
  take(bytes: number): void {
    this.left -= bytes;
    if (this.left >= 0) return;
    const megabytes = mostUnpackedBytes / 1e6;
    throw new FileTrouble(
      `The file is too large: unpacked, it is more than ${megabytes} MB. Open a smaller part of it, saved as a file of its own.`,
    );
  }
}

/**
 * Unpacks the bytes of one part, and stops as soon as more comes out than is allowed.
 *
 * @throws FileTrouble where too much comes out; a TypeError where the bytes are no packed ones.
 */
export async function inflated(packed: Uint8Array<ArrayBuffer>, allowance: Allowance): Promise<Uint8Array> {
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  const reader = stream.getReader();
  const pieces: Uint8Array[] = [];
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return joined(pieces);
    try {
      allowance.take(value.length);
    } catch (trouble) {
      await reader.cancel();
      throw trouble;
    }
    pieces.push(value);
  }
}

/** Packs bytes as a zip file does. */
export async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array> {
  const stream = new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

export function joined(pieces: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
