/** Every worksheet function by its id. */
export * from "./listed/functions";
