// Tests that need a program which npm does not install: not run where it is absent, failed under THRUM_REQUIRE=all.
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";
import { describe, it } from "vitest";

/** Programs that tests ask for, with the commands they are known by. */
const commands = {
  "LibreOffice Calc": ["soffice", "libreoffice"],
  Chromium: ["chromium-headless-shell", "chromium", "chromium-browser"],
  Poppler: ["pdftohtml"],
  Jupyter: ["jupyter"],
  "GNU units": ["units"],
  "Python 3": ["python3"],
} as const;

export type Program = keyof typeof commands;

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Full path of a program, or undefined when none of its commands is on PATH. */
function pathOf(program: Program): string | undefined {
  const folders = (process.env["PATH"] ?? "").split(delimiter).filter((folder) => folder !== "");
  return commands[program].flatMap((command) => folders.map((folder) => join(folder, command))).find(isExecutable);
}

/** A group of tests that gets the path of the program it needs. */
export function describeWith(program: Program, tests: (path: string) => void): void {
  const path = pathOf(program);
  if (path !== undefined) {
    describe(program, () => {
      tests(path);
    });
  } else if (process.env["THRUM_REQUIRE"] === "all") {
    it(`needs ${program}`, () => {
      throw new Error(`${program} is required but none of ${commands[program].join(", ")} is on PATH`);
    });
  } else {
    // The tests are still declared, so that the tally counts each of them as not run.
    describe.skip(`${program} (absent)`, () => {
      tests("");
    });
  }
}
