import { closeSync, fsyncSync, linkSync, openSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
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
  EEXIST: "it exists already. Choose another name, or add --replace",
};

function trouble(doing: string, path: string, error: unknown): FileTrouble {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  if (code === "") throw error;
  return new FileTrouble(`${shownText(path)} cannot be ${doing}: ${REASONS[code] ?? code}.`);
}

/** The text of a file, or of standard input for "-". */
export function readText(path: string): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path === "-" ? STANDARD_INPUT : path));
  } catch (error) {
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

/** Writes beside the target first: the name appears only once the whole of it stands on the disk. */
export function writeWhole(path: string, content: string | Uint8Array, existing: "keep" | "replace"): void {
  const draft = join(dirname(path), `.${basename(path)}.${String(process.pid)}.draft`);
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
