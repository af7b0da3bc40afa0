/** The grid's core package alone; by its name, the build bundles it as it does the packages of the practice page. */
export * as core from "@univerjs/core";
export { FUniver } from "@univerjs/core/lib/facade";
export * as sheets from "@univerjs/preset-sheets-core";
export { default as sheetsLocale } from "@univerjs/preset-sheets-core/locales/en-US";
