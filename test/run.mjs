import { spawn } from "node:child_process";
import { availableParallelism } from "node:os";
import { resolve } from "node:path";

/*
 * The whole check: the build and then all tests, with format, lint, and types beside them, since those keep one core
 * busy for longer than the build does. What follows `npm test --` goes to the test runner.
 */

/**
 * Runs a program of the project.
 *
 * @param output where its output goes; `pipe` keeps it.
 * @returns whether it succeeded, and the output that was kept.
 */
function run(command, given, output = "inherit") {
  const child = spawn(command, given, {
    cwd: resolve(import.meta.dirname, ".."),
    stdio: ["inherit", output, output],
    shell: process.platform === "win32",
  });
  const kept = [];
  child.stdout?.on("data", (part) => kept.push(part));
  child.stderr?.on("data", (part) => kept.push(part));
  return new Promise((done) => {
    child.on("error", (error) => {
      console.error(error);
      done({ passed: false, kept: "" });
    });
    child.on("close", (code) => done({ passed: code === 0, kept: Buffer.concat(kept) }));
  });
}

async function buildAndTest() {
  if (!(await run("npm", ["run", "build"])).passed) return false;
  const given = process.argv.slice(2);
  // One more than there are cores: the browser's tests wait for the browser half of the time.
  const workers = given.some((one) => one.startsWith("--maxWorkers"))
    ? []
    : [`--maxWorkers=${availableParallelism() + 1}`];
  return (await run("npx", ["vitest", "run", "--config", "test/vitest.config.ts", ...workers, ...given])).passed;
}

const [check, passed] = await Promise.all([run("npm", ["run", "check"], "pipe"), buildAndTest()]);
// Among what the tests print, nobody would see it.
if (!check.passed) process.stdout.write(check.kept);
process.exitCode = check.passed && passed ? 0 : 1;
