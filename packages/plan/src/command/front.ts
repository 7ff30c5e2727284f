import { isatty } from "node:tty";
import { readText } from "./read-text.js";
import { isSameFile } from "./same-file.js";
import { codeOf, trouble } from "./trouble.js";
import { FileTrouble } from "./world.js";
import type { World } from "./world.js";
import { writeAll } from "./write-all.js";
import { writeWhole } from "./write-whole.js";

const [STANDARD_OUTPUT, STANDARD_ERROR] = [1, 2];
const FILE_TROUBLE = 4;

/** Lines without anything that could move a cursor or turn the reading round. */
function fitForScreen(text: string): string {
  return text.replace(/(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, " ");
}

function print(content: string | Uint8Array): void {
  try {
    writeAll(STANDARD_OUTPUT, typeof content === "string" ? fitForScreen(content) : content);
  } catch (error) {
    throw trouble("printed whole", "The answer", error);
  }
}

function complain(text: string): void {
  try {
    writeAll(STANDARD_ERROR, fitForScreen(text));
  } catch (error) {
    // Nobody is left to tell; the exit code still says it.
    if (codeOf(error) === null) throw error;
  }
}

/** Runs a command on this machine and leaves its exit code. */
export async function front(command: (args: readonly string[], world: World) => Promise<number>): Promise<void> {
  const isScreen = isatty(STANDARD_OUTPUT);
  const world: World = { read: readText, write: writeWhole, isSameFile, print, complain, isScreen };
  try {
    process.exitCode = await command(process.argv.slice(2), world);
  } catch (error) {
    if (!(error instanceof FileTrouble)) throw error;
    complain(`${error.message}\n`);
    process.exitCode = FILE_TROUBLE;
  }
}
