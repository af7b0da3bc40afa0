import type { HandedFile } from "../host/session";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Gives a file to the person, as the browser gives downloads. */
export function handOver({ name, bytes }: HandedFile): void {
  const address = URL.createObjectURL(new Blob([bytes], { type: XLSX }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser reads it after the click has come back.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
