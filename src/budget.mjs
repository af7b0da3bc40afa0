import { gzipSync } from "node:zlib";

const NAME = "Budget";
const BYTES_PER_KILOBYTE = 1000;

/** Fails the build, in words, where a file that loads with every workbook grows past what it may weigh. */
export class Budget {
  /** @param {Readonly<Record<string, number>>} most kilobytes by file, as sent: packed with gzip. */
  constructor(most) {
    this.most = most;
  }

  /** @param {import("webpack").Compiler} compiler */
  apply(compiler) {
    // What is not minified weighs more, and is not what the office loads.
    if (compiler.options.mode !== "production") return;
    const { Compilation, WebpackError } = compiler.webpack;
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      compilation.hooks.processAssets.tap({ name: NAME, stage: Compilation.PROCESS_ASSETS_STAGE_REPORT }, (assets) => {
        for (const [file, most] of Object.entries(this.most)) {
          const trouble = overweight(file, assets[file]?.buffer(), most);
          if (trouble) compilation.errors.push(new WebpackError(trouble));
        }
      });
    });
  }
}

/**
 * What to say about a file that weighs too much; undefined where it does not.
 *
 * @param {string} file
 * @param {Uint8Array | undefined} content
 * @param {number} most in kilobytes.
 */
export function overweight(file, content, most) {
  if (!content)
    return `${file} has a budget of ${most} kB but isn't built. Take it out of webpack.config.js, or build it.`;
  const kilobytes = gzipSync(content, { level: 9 }).length / BYTES_PER_KILOBYTE;
  if (kilobytes <= most) return undefined;
  return (
    `${file} is ${kilobytes.toFixed(2)} kB packed, and the limit is ${most}: it loads with every workbook. ` +
    "Move what isn't needed at first to a chunk of its own, or remove what no one uses."
  );
}
