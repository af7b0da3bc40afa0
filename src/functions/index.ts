/*
 * Every worksheet function by its id. The files it gives on stand in `files.json`, too, whose docstrings become the
 * host's help; a test holds the two together.
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
