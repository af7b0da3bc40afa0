import { bytesOf } from "../../spreadsheet/base64";
import { HostError } from "./error";
import type { HostSession } from "./session";

/**
 * Hands a workbook's file to the person, where the host would open it in a window of its own: the practice workbook
 * has room for one. It is called as it calls itself, or `Workbook 1` and so on.
 *
 * @param base64 an .xlsx file.
 * @throws HostError where it is none.
 */
export async function createWorkbook(session: HostSession, base64: string | undefined): Promise<void> {
  const { fileTitle } = await import(/* webpackChunkName: "files" */ "../../xlsx/read/package");
  const file = decoded(base64 ?? "");
  const title = titleOf(file, fileTitle);
  session.workbooksCreated += 1;
  const name = nameOfFile(title) || `Workbook ${session.workbooksCreated}`;
  session.handOver({ name: `${name}.xlsx`, bytes: file });
}

function decoded(base64: string): Uint8Array<ArrayBuffer> {
  try {
    return bytesOf(base64);
  } catch {
    return new Uint8Array();
  }
}

function titleOf(file: Uint8Array, fileTitle: (file: Uint8Array) => string): string {
  try {
    return fileTitle(file);
  } catch {
    throw new HostError("InvalidArgument", "Excel.createWorkbook");
  }
}

/** Without what a file's name cannot hold on one system or another. */
function nameOfFile(title: string): string {
  return title
    .replace(/[\\/:*?"<>|\p{Cc}]/gu, " ")
    .replace(/\s+/g, " ")
    .replace(/^[. ]+|[. ]+$/g, "")
    .slice(0, 100);
}
