import { spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { setTimeout as sleep } from "node:timers/promises";

const ROOT = resolve(import.meta.dirname, "../..");
/** For what a slow machine may take; nothing here tests how long it takes. */
const PATIENT_MS = 300_000;
const POLL_MS = 50;

/** A copy of the repository as a clone has it, after `npm ci` and before anything else. */
export interface Copy {
  readonly folder: string;
  /** What a text file in it says; "" where there is none. */
  read(file: string): string;
  remove(): void;
}

/** A command that runs in a copy, with its output in a file there. */
export interface Running {
  /** The address that it printed, once it has. */
  readonly address: Promise<string>;
  /** What it has printed so far. */
  output(): string;
  /** Seconds of processor time that it and everything it started have used. */
  cpuSeconds(): number;
  /** Its exit code, once it has ended by itself. */
  readonly ended: Promise<number | null>;
  /** Presses Ctrl+C, and waits until it and everything it started are gone. */
  stop(): Promise<number | null>;
}

/**
 * Copies what is in the repository or will be: everything that `.gitignore` doesn't name.
 *
 * @param root the project's folder.
 */
export function copyRepository(root = ROOT): Copy {
  const folder = mkdtempSync(join(tmpdir(), "newcomer-"));
  const ignored = readFileSync(join(root, ".gitignore"), "utf8")
    .split("\n")
    .map((line) => line.replaceAll("/", ""));
  for (const name of readdirSync(root))
    if (name !== ".git" && !ignored.includes(name)) cpSync(join(root, name), join(folder, name), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  const read = (file: string) => (existsSync(join(folder, file)) ? readFileSync(join(folder, file), "utf8") : "");
  return { folder, read, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/**
 * The command with which the README starts the practice workbook, in its own words.
 *
 * @param readme its text.
 * @returns without the installing, which the copy has behind it.
 */
export function readmeCommand(readme: string): string {
  const line = readme.split("\n").find((one) => one.includes("# the practice workbook"));
  const [command = ""] = (line ?? "").split("#");
  if (!/^npm ci && \S/.test(command)) throw new Error("The README doesn't say how to start the practice workbook.");
  return command.replace("npm ci && ", "").trim();
}

/**
 * Runs a command the way a person does who keeps its output.
 *
 * @param copy where it runs.
 * @param command such as "npm start".
 * @param log the file for its output, in the copy.
 */
export function runIn({ folder, read }: Copy, command: string, log: string): Running {
  // In a session of its own, so that all it starts can be found, and ended.
  const shell = spawn("sh", ["-c", `${command} > ${log} 2>&1`], { cwd: folder, detached: true, stdio: "ignore" });
  const session = shell.pid!;
  const ended = once(shell, "exit").then(([code]) => code as number | null);
  let over = false;
  void ended.then(() => {
    over = true;
  });
  const output = () => read(log);
  const address = until(() => {
    const found = /^Practice workbook: (http\S+)$/m.exec(output())?.[1];
    if (!found && over) throw new Error(`\`${command}\` ended without an address:\n${output()}`);
    return found;
  });
  // Whoever doesn't ask for it isn't told that there was none.
  address.catch(() => {});
  const stop = async () => {
    signal(session, "SIGINT");
    const left = await until(() => processesOf(session).length === 0 || undefined, 30_000).catch(() => undefined);
    if (!left) signal(session, "SIGKILL");
    return ended;
  };
  return { address, output, ended, stop, cpuSeconds: () => sum(processesOf(session).map((one) => one.cpuSeconds)) };
}

/**
 * Looks again and again until there is something.
 *
 * @param look gives undefined as long as there is nothing.
 */
export async function until<T>(look: () => T | undefined | Promise<T | undefined>, mostMs = PATIENT_MS): Promise<T> {
  const end = Date.now() + mostMs;
  while (Date.now() < end) {
    const found = await look();
    if (found !== undefined) return found;
    await sleep(POLL_MS);
  }
  throw new Error(`Waited ${mostMs / 1000} s for ${look} in vain.`);
}

function signal(session: number, name: NodeJS.Signals): void {
  try {
    process.kill(-session, name);
  } catch {
    // All of it has ended already.
  }
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/** Ticks of the processor's clock a second, on every Linux there is. */
const TICKS = 100;

/**
 * The processes of a session, by Linux's list of all; elsewhere none are found.
 *
 * @see `man 5 proc_pid_stat`: after the name in parentheses come state, ppid, pgrp, session (4th), and utime, stime,
 *   cutime, cstime (12th to 15th); the last two are those of children that have ended.
 */
function processesOf(session: number): { readonly cpuSeconds: number }[] {
  if (!existsSync("/proc/self/stat")) return [];
  return readdirSync("/proc")
    .filter((name) => /^\d+$/.test(name))
    .flatMap((pid) => {
      try {
        const stat = readFileSync(`/proc/${pid}/stat`, "utf8");
        const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
        if (Number(fields[3]) !== session || fields[0] === "Z") return [];
        return [{ cpuSeconds: sum(fields.slice(11, 15).map(Number)) / TICKS }];
      } catch {
        return [];
      }
    });
}
