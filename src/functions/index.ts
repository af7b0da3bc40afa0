/*
 * The entry of functions.js. The build appends the calls that tell the host about each function to the files
 * themselves; `files.json` lists them once, for the build and for the tests.
 */
export * from "./areas";
export * from "./barrowing";
export * from "./cutting";
export * from "./dates";
export * from "./digging";
export * from "./edges";
export * from "./edging";
export * from "./fabric";
export * from "./fabricLists";
export * from "./layouts";
export * from "./prices";
export * from "./stone";
export * from "./tape";
