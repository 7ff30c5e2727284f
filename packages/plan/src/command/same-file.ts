import { fstatSync, statSync } from "node:fs";
import { codeOf, trouble } from "./trouble.js";

function identity(path: string): string {
  const { dev, ino } = path === "-" ? fstatSync(0, { bigint: true }) : statSync(path, { bigint: true });
  return `${String(dev)} ${String(ino)}`;
}

/** Whether two paths lead to one file, "-" being what standard input is read from; a path that leads nowhere is none. */
export function isSameFile(one: string, other: string): boolean {
  try {
    return identity(one) === identity(other);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return false;
    throw trouble("looked up", other, error);
  }
}
