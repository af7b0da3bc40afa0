// The file itself, so that the names of the functions are in it once.
import * as functions from "./entry";

/*
 * What functions.js runs: tells the host about every function at once, by the id that functions.json describes it
 * under. The functions stay reachable by name, for an explanation that calls one again.
 */
for (const [id, called] of Object.entries(functions)) CustomFunctions.associate(id, called);
// A mark for whoever measures; a host may run functions where there is no page and no clock.
globalThis.performance?.mark?.("Bedrow functions ready");

export * from "./index";
