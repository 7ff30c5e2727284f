import { closeSync, fsyncSync, linkSync, openSync, readSync, realpathSync, renameSync, rmSync } from "node:fs";
import { writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { shownText } from "../text/clean.js";
import { FileTrouble } from "./world.js";

const STANDARD_INPUT = 0;

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EACCES: "it may not be opened",
  EPERM: "this is not permitted here",
  EISDIR: "it is a folder",
  ENOTDIR: "a part of its path is no folder",
  ENOSPC: "the disk is full",
  EROFS: "nothing may be written there",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "its links lead round in a circle",
  EEXIST: "it exists already. Choose another name, or add --replace",
};

function trouble(doing: string, path: string, error: unknown): FileTrouble {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "") throw error;
  return new FileTrouble(`${shownText(path)} cannot be ${doing}: ${REASONS[code] ?? code}.`);
}

/** Far more than a job file may hold: what has no end, such as a device, is not read to it. */
const MOST_BYTES = 1_000_000;

function bytesOf(file: number): Uint8Array {
  const bytes = new Uint8Array(MOST_BYTES + 1);
  let filled = 0;
  for (let read = -1; read !== 0 && filled < bytes.length; filled += read) {
    read = readSync(file, bytes, filled, bytes.length - filled, null);
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

function writeThrough(path: string, content: string | Uint8Array): void {
  const file = openSync(path, "wx");
  try {
    writeFileSync(file, content);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Whether two paths lead to one file; a path that leads nowhere is none. */
export function isSameFile(one: string, other: string): boolean {
  try {
    return realpathSync(one) === realpathSync(other);
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return false;
    throw trouble("looked up", other, error);
  }
}

/** Writes beside the target first: the name appears only once the whole of it stands on the disk. */
export function writeWhole(path: string, content: string | Uint8Array, existing: "keep" | "replace"): void {
  const draft = join(dirname(path), `.thrum.${String(process.pid)}.draft`);
  try {
    writeThrough(draft, content);
    // Unlike renaming, linking fails where the name is taken, and leaves no moment in between.
    if (existing === "keep") linkSync(draft, path);
    else renameSync(draft, path);
  } catch (error) {
    throw trouble("written", path, error);
  } finally {
    rmSync(draft, { force: true });
  }
}
