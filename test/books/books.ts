export { compareBook } from "./compareBook";
export { readBook } from "./readBook";
