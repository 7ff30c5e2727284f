import { shownText } from "../text/clean.js";
import { FileTrouble } from "./world.js";

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EACCES: "it may not be opened",
  EPERM: "this is not permitted here",
  EISDIR: "it is a folder",
  ENOTDIR: "a part of its path is no folder",
  ENOSPC: "the disk is full",
  EDQUOT: "your share of the disk is full",
  EFBIG: "a file may not grow so large here",
  EROFS: "nothing may be written there",
  EIO: "the disk or the line to it failed",
  EPIPE: "whatever read it has stopped reading",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "its links lead round in a circle",
  EEXIST: "it exists already. Choose another name, or add --replace",
};

/** The code of a failure of the machine; null for any other error. */
export function codeOf(error: unknown): string | null {
  return error instanceof Error && "code" in error ? String(error.code) : null;
}

/** A failure of the machine in one sentence; any other error goes on as it is. */
export function trouble(doing: string, path: string, error: unknown): FileTrouble {
  const code = codeOf(error);
  if (code === null) throw error;
  return new FileTrouble(`${shownText(path)} cannot be ${doing}: ${REASONS[code] ?? `the machine says ${code}`}.`);
}
