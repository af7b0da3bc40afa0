import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const TIME_LIMIT_MS = 120_000;

/** Recalculates every formula when a file is opened, whatever results it holds: 0 is "always". */
const ALWAYS_RECALCULATE = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** Whether a second spreadsheet program, LibreOffice, is on this machine. */
export function hasLibreOffice(): boolean {
  try {
    execFileSync("soffice", ["--version"], { stdio: "ignore", timeout: TIME_LIMIT_MS });
    return true;
  } catch {
    return false;
  }
}

/** Has LibreOffice open .xlsx files, work every formula out again and save them; gives the saved files in the same order. */
export function recalculated(files: readonly Uint8Array[]): Uint8Array[] {
  return converted(files, "xlsx");
}

/** Has LibreOffice print .xlsx files with the results that they hold; gives PDF files in the same order. */
export function printed(files: readonly Uint8Array[]): Uint8Array[] {
  return converted(files, "pdf");
}

function converted(files: readonly Uint8Array[], to: "xlsx" | "pdf"): Uint8Array[] {
  const folder = mkdtempSync(join(tmpdir(), "bedrow-recalculate-"));
  try {
    const user = join(folder, "profile", "user");
    mkdirSync(user, { recursive: true });
    if (to === "xlsx") writeFileSync(join(user, "registrymodifications.xcu"), ALWAYS_RECALCULATE);
    const paths = files.map((bytes, index) => {
      const path = join(folder, `file${index}.xlsx`);
      writeFileSync(path, bytes);
      return path;
    });
    const out = join(folder, "out");
    const profile = `-env:UserInstallation=${pathToFileURL(join(folder, "profile"))}`;
    execFileSync("soffice", [profile, "--headless", "--convert-to", to, "--outdir", out, ...paths], {
      stdio: "ignore",
      timeout: TIME_LIMIT_MS,
    });
    return paths.map((_, index) => readFileSync(join(out, `file${index}.${to}`)));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
