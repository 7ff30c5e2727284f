import { randomBytes } from "node:crypto";
import {
  closeSync,
  fchmodSync,
  fstatSync,
  fsyncSync,
  linkSync,
  lstatSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
} from "node:fs";
import type { Stats } from "node:fs";
import { dirname, join } from "node:path";
import { shownText } from "../text/clean.js";
import { codeOf, trouble } from "./trouble.js";
import { FileTrouble } from "./world.js";
import { writeAll } from "./write-all.js";

/** What a file system says of what it does not know, as many sticks, cards and shares know no second name for a file. */
const UNKNOWN_HERE: readonly (string | null)[] = ["EPERM", "ENOTSUP", "EOPNOTSUPP", "ENOSYS", "EMLINK", "EINVAL"];
const PERMISSIONS = 0o777;
const STANDARD_OUTPUT = 1;

function standing(path: string): Stats | null {
  return lstatSync(path, { throwIfNoEntry: false }) ?? null;
}

/** The file that is replaced, which may be what a link leads to; no device, pipe or folder is one. */
function replaced(path: string): { readonly target: string; readonly mode: number | null } {
  if (standing(path) === null) return { target: path, mode: null };
  const target = realpathSync(path);
  const found = standing(target);
  const open = fstatSync(STANDARD_OUTPUT);
  if (found?.ino === open.ino && found.dev === open.dev)
    throw new FileTrouble(`${shownText(path)} is where the output goes: leave --to out.`);
  if (found !== null && !found.isFile())
    throw new FileTrouble(`${shownText(path)} is no ordinary file: give another name.`);
  return { target, mode: found === null ? null : found.mode & PERMISSIONS };
}

/** Who may read it stays as it was, except where the file system has no such thing. */
function keepMode(file: number, mode: number): void {
  try {
    fchmodSync(file, mode);
  } catch (error) {
    if (!UNKNOWN_HERE.includes(codeOf(error))) throw error;
  }
}

function draft(path: string, content: string | Uint8Array, mode: number | null): void {
  const file = openSync(path, "wx");
  try {
    writeAll(file, content);
    if (mode !== null) keepMode(file, mode);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** Takes the name with an empty file, which fails where it is taken, and puts the draft in its place. */
function claimed(from: string, path: string): void {
  closeSync(openSync(path, "wx"));
  try {
    renameSync(from, path);
  } catch (error) {
    rmSync(path, { force: true });
    throw error;
  }
}

/** Gives the draft a name that must be free. Unlike renaming, linking fails where it is taken, with no moment between. */
function named(from: string, path: string): void {
  try {
    linkSync(from, path);
  } catch (error) {
    if (!UNKNOWN_HERE.includes(codeOf(error))) throw error;
    claimed(from, path);
  }
}

/** Writes beside the target first: the name appears only once the whole of it stands on the disk. */
export function writeWhole(path: string, content: string | Uint8Array, existing: "keep" | "replace"): void {
  let beside: string | null = null;
  try {
    const { target, mode } = existing === "keep" ? { target: path, mode: null } : replaced(path);
    // A name nobody else has: numbers of processes come again, and so would a draft left by one that was killed.
    beside = join(dirname(target), `.thrum.${randomBytes(8).toString("hex")}.draft`);
    draft(beside, content, mode);
    if (existing === "keep") named(beside, target);
    else renameSync(beside, target);
  } catch (error) {
    if (error instanceof FileTrouble) throw error;
    throw trouble("written", path, error);
  } finally {
    if (beside !== null) rmSync(beside, { force: true });
  }
}
