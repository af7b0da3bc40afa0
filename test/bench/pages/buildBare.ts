import { copyFile, mkdtemp, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import webpack, { type Configuration } from "webpack";

const NAMES = ["bareWhole", "bareCore"] as const;

/** As large as the grid is on the practice page, beside its pane, in the window that the benchmark opens. */
const GRID_SIZE = "width:930px;height:740px";

const page = (script: string) => `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>Grid</title><link rel="stylesheet" href="univer.css">
<script src="${script}.js" defer></script></head>
<body style="margin:0"><div id="practice-grid" style="${GRID_SIZE}"></div></body>
</html>`;

/**
 * Builds the bare pages in a folder of their own, with the project's own settings for pages, so that nothing but what
 * is in them differs.
 *
 * @param dist the project's build, for the grid's style.
 * @returns the folder.
 */
export async function buildBare(dist: string): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), "bare-grid-"));
  const { default: config } = (await import(pathToFileURL(resolve("webpack.config.js")).href)) as {
    default: (env: object, given: object) => Configuration;
  };
  const settings = config({}, { mode: "production" });
  const entry = Object.fromEntries(NAMES.map((name) => [name, resolve(`test/bench/pages/${name}.ts`)]));
  await new Promise<void>((done, failed) => {
    webpack(
      { ...settings, entry, plugins: [], output: { path: folder, filename: "[name].js", publicPath: "auto" } },
      (error, stats) => {
        if (error || !stats || stats.hasErrors()) failed(error ?? new Error(stats?.toString("errors-only")));
        else done();
      },
    );
  });
  for (const name of NAMES) await writeFile(join(folder, `${name}.html`), page(name));
  await copyFile(join(dist, "univer.css"), join(folder, "univer.css"));
  return folder;
}
