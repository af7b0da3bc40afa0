// @ts-check
import { parseArgs } from "node:util";
import { serve } from "../serve.mjs";

const FIRST_PORT = 8080;
const PORTS_TO_TRY = 20;

/**
 * The options of `npm start` and `npm run dev`.
 *
 * @param {string} command for what is said, such as "npm start".
 * @param {readonly string[]} given such as ["--port", "8081", "--open"].
 * @returns {{ open: boolean, port: number | undefined }}
 * @throws {Error} in words for the person.
 */
export function readOptions(command, given) {
  const how = `Use: ${command} -- [--open] [--port 8081].`;
  /** @type {{ open?: boolean, port?: string }} */
  let values;
  try {
    ({ values } = parseArgs({
      args: [...given],
      options: { open: { type: "boolean" }, port: { type: "string" } },
    }));
  } catch (error) {
    throw new Error(`${error instanceof Error ? error.message.split(". ")[0] : error}. ${how}`);
  }
  const port = values.port === undefined ? undefined : Number(values.port);
  if (port !== undefined && !(Number.isInteger(port) && port >= 0 && port < 65536))
    throw new Error(`"${values.port}" isn't a port. ${how}`);
  return { open: values.open ?? false, port };
}

/**
 * Serves a folder at the port that was asked for, or at the first free one from 8080 on: what a person typed is kept by
 * the browser for one address, so the address should be the same the next time.
 *
 * @param {string} folder
 * @param {number | undefined} port
 * @param {() => Promise<unknown>} [until] awaited before each answer.
 */
export async function serveAt(folder, port, until) {
  const ports = port === undefined ? Array.from({ length: PORTS_TO_TRY }, (_, index) => FIRST_PORT + index) : [port];
  for (const candidate of ports) {
    try {
      return await serve(folder, { port: candidate, until });
    } catch (error) {
      if (/** @type {NodeJS.ErrnoException} */ (error).code !== "EADDRINUSE") throw error;
    }
  }
  throw new Error(
    port === undefined
      ? `The ports ${FIRST_PORT} to ${FIRST_PORT + PORTS_TO_TRY - 1} are all in use. Give another one: --port 9000.`
      : `Port ${port} is in use. Give another one, or none.`,
  );
}

/**
 * Says where the practice workbook is, opens it if asked, and stops cleanly at Ctrl+C.
 *
 * @param {{ origin: string, close: () => Promise<void> }} server
 * @param {{ open: boolean }} options
 * @param {() => Promise<unknown>} [stop] what else to stop.
 */
export async function announce({ origin, close }, { open }, stop = async () => {}) {
  const address = `${origin}/practice.html`;
  console.log(`\nPractice workbook: ${address}\n(Ctrl+C stops it.)`);
  for (const signal of ["SIGINT", "SIGTERM"]) {
    process.once(signal, async () => {
      await Promise.all([close(), stop()]);
      process.exit(0);
    });
  }
  if (open) {
    const { default: openBrowser } = await import("open");
    await openBrowser(address);
  }
}

/**
 * Runs a command, and ends in words where it fails.
 *
 * @param {() => Promise<void>} command
 */
export async function run(command) {
  try {
    await command();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  }
}
