/** A worker thread: a block of lines comes in, what it comes to goes back. */
import { parentPort } from "node:worker_threads";
import { computeBatch } from "./batch.js";

parentPort?.on("message", (text: string) => parentPort?.postMessage(computeBatch(text)));
