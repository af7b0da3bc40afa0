import { resolve } from "node:path";

/** What was built. Two builds side by side: `npm run build -- --to …`, then DIST=… for the tests. */
export const DIST = resolve(process.env.DIST ?? resolve(import.meta.dirname, "../dist"));
