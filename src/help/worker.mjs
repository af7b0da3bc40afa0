import { parentPort, workerData } from "node:worker_threads";
import { describe } from "./describe.mjs";

parentPort.postMessage(await describe(workerData));
