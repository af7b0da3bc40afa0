import { spawn } from "node:child_process";
import { availableParallelism } from "node:os";
import { resolve } from "node:path";

/*
 * The whole check: format, lint, and types beside the build, each of which keeps one core busy, and then all tests.
 * What follows `npm test --` goes to the test runner.
 */

/**
 * Runs a program of the project.
 *
 * @param quiet whether to show what it says only once it's done.
 * @returns whether it went well.
 */
function run(command, given, quiet = false) {
  const child = spawn(command, given, {
    cwd: resolve(import.meta.dirname, ".."),
    stdio: ["inherit", quiet ? "pipe" : "inherit", quiet ? "pipe" : "inherit"],
    shell: process.platform === "win32",
  });
  const said = [];
  child.stdout?.on("data", (part) => said.push(part));
  child.stderr?.on("data", (part) => said.push(part));
  return new Promise((done) => {
    child.on("error", (error) => {
      console.error(error);
      done(false);
    });
    child.on("close", (code) => {
      process.stdout.write(Buffer.concat(said));
      done(code === 0);
    });
  });
}

const first = await Promise.all([run("npm", ["run", "check"], true), run("npm", ["run", "build"])]);
const given = process.argv.slice(2);
// One more than there are cores: the browser's tests wait for the browser half of the time.
const workers = given.some((one) => one.startsWith("--maxWorkers"))
  ? []
  : [`--maxWorkers=${availableParallelism() + 1}`];
const tests = ["vitest", "run", "--config", "test/vitest.config.ts", ...workers, ...given];
process.exitCode = first.every(Boolean) && (await run("npx", tests)) ? 0 : 1;
