const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

const KEPT_MS = 60_000;

/** Has the browser save a file, for a host that opens none. */
export function download(file: Uint8Array, name: string): void {
  const address = URL.createObjectURL(new Blob([new Uint8Array(file)], { type: XLSX }));
  const link = document.createElement("a");
  link.href = address;
  link.download = `${name}.xlsx`;
  link.click();
  // The browser has to have read it by then.
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}
