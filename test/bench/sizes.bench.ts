import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { gzipSync } from "node:zlib";
import type { Table } from "./table";

const DIST = resolve(process.env.DIST ?? "dist");

/** What loads with every workbook, with its budget in kilobytes; and what is fetched with the practice page. */
const FILES: readonly { readonly file: string; readonly when: string; readonly most?: number }[] = [
  { file: "functions.js", when: "with every workbook", most: 26 },
  { file: "pane.js", when: "with the pane", most: 60 },
  { file: "pane.css", when: "with the pane" },
  { file: "functions.json", when: "once, by the host" },
  { file: "practice.js", when: "with the practice page" },
];

const packed = (path: string) => gzipSync(readFileSync(path), { level: 9 }).length / 1000;
const rounded = (kilobytes: number) => Number(kilobytes.toFixed(1));

/** What the built files weigh as they are sent. */
export async function bench(): Promise<Table> {
  if (!existsSync(join(DIST, "functions.js"))) throw new Error(`${DIST} holds no build. Run: npm run build`);
  const rows: Record<string, string | number>[] = FILES.map(({ file, when, most }) => ({
    file,
    "kB packed": rounded(packed(join(DIST, file))),
    "may be": most ?? "",
    loads: when,
  }));
  const folder = (name: string) => readdirSync(join(DIST, name)).map((file) => packed(join(DIST, name, file)));
  const chunks = folder("chunks");
  const help = readdirSync(join(DIST, "help"), { withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ name }) => packed(join(DIST, "help", name)));
  const sum = (sizes: readonly number[]) => rounded(sizes.reduce((total, size) => total + size, 0));
  rows.push({ file: `chunks/ (${chunks.length})`, "kB packed": sum(chunks), "may be": "", loads: "when first needed" });
  rows.push({ file: `help/ (${help.length})`, "kB packed": sum(help), "may be": "", loads: "page by page" });
  const claims = FILES.flatMap(({ file, when, most }) =>
    most === undefined
      ? []
      : [
          {
            what: `${file}, which loads ${when}`,
            measured: rounded(packed(join(DIST, file))),
            most,
            unit: "kB",
            how: "packed with gzip; the build fails if it's over",
          },
        ],
  );
  return { title: "Size of the build, packed with gzip", rows, claims };
}
