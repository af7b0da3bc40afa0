import { saveFile } from "../saveFile";

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** Has the browser save a workbook, for a host that opens none. */
export function download(file: Uint8Array, name: string): void {
  saveFile(new Blob([new Uint8Array(file)], { type: XLSX }), `${name}.xlsx`);
}
