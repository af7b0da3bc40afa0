/** The file that the workbook was opened from, as it was; a later way of keeping it has a later version. */
export interface KeptFile {
  readonly version: 1;
  /** Also with the workbook, so that no other file is taken for its own. */
  readonly id: string;
  readonly bytes: Uint8Array;
}

export function keptFile(bytes: Uint8Array): KeptFile {
  return { version: 1, id: crypto.randomUUID(), bytes };
}

/** Whether what was kept is a file. */
export function isKeptFile(kept: unknown): kept is KeptFile {
  if (typeof kept !== "object" || kept === null) return false;
  const { version, id, bytes } = kept as Partial<KeptFile>;
  return version === 1 && typeof id === "string" && bytes instanceof Uint8Array;
}
