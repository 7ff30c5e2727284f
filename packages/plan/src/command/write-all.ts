import { writeSync } from "node:fs";
import { whenReady } from "./waiting.js";

/** Writes all of it: a disk that is nearly full takes a part and says so only in the count. */
export function writeAll(file: number, content: string | Uint8Array): void {
  const bytes = typeof content === "string" ? new TextEncoder().encode(content) : content;
  let written = 0;
  while (written < bytes.length) {
    written += whenReady(() => writeSync(file, bytes, written, bytes.length - written));
  }
}
