import { HostError } from "./error";
import { fileTitle, isZip } from "./fileTitle";
import type { HostSession } from "./session";

/**
 * Hands a workbook's file to the person, where the host would open it in a window of its own: the practice workbook
 * has room for one. It is called as it calls itself, or `Workbook 1` and so on.
 *
 * @param base64 an .xlsx file.
 * @throws HostError where it is none.
 */
export async function createWorkbook(session: HostSession, base64: string | undefined): Promise<void> {
  const file = decoded(base64 ?? "");
  if (!isZip(file)) throw new HostError("InvalidArgument", "Excel.createWorkbook");
  session.workbooksCreated += 1;
  const name = nameOfFile((await fileTitle(file)) ?? "") || `Workbook ${session.workbooksCreated}`;
  session.handOver({ name: `${name}.xlsx`, bytes: file });
}

function decoded(base64: string): Uint8Array<ArrayBuffer> {
  try {
    return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  } catch {
    return new Uint8Array();
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
