import { closeSync, openSync, readSync } from "node:fs";
import { shownText } from "../text/clean.js";
import { trouble } from "./trouble.js";
import { whenReady } from "./waiting.js";
import { FileTrouble } from "./world.js";

const STANDARD_INPUT = 0;

/** Far more than a job file may hold: what has no end, such as a device, is not read to it. */
const MOST_BYTES = 1_000_000;

function bytesOf(file: number): Uint8Array {
  const bytes = new Uint8Array(MOST_BYTES + 1);
  let filled = 0;
  for (let read = -1; read !== 0 && filled < bytes.length; filled += read) {
    read = whenReady(() => readSync(file, bytes, filled, bytes.length - filled, null));
  }
  return bytes.subarray(0, filled);
}

function readWhole(path: string): Uint8Array {
  if (path === "-") return bytesOf(STANDARD_INPUT);
  const file = openSync(path, "r");
  try {
    return bytesOf(file);
  } finally {
    closeSync(file);
  }
}

/** The text of a file, or of standard input for "-". */
export function readText(path: string): string {
  try {
    const bytes = readWhole(path);
    if (bytes.length > MOST_BYTES) throw new FileTrouble(`${shownText(path)} is far too long for a job file.`);
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch (error) {
    if (error instanceof FileTrouble) throw error;
    if (error instanceof TypeError) throw new FileTrouble(`${shownText(path)} is not text in UTF-8.`);
    throw trouble("read", path, error);
  }
}
