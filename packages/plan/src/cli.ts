#!/usr/bin/env node
import { isSameFile, readText, writeWhole } from "./command/files.js";
import { run } from "./command/run.js";

// A reader such as head may close the pipe when it has seen enough.
process.stdout.on("error", ({ code }: NodeJS.ErrnoException) => {
  if (code === "EPIPE") return;
  process.stderr.write(`The plan could not be printed whole: ${code ?? "standard output failed"}.\n`);
  process.exitCode = 4;
});

process.exitCode = run(process.argv.slice(2), {
  read: readText,
  write: writeWhole,
  isSameFile,
  print: (text) => process.stdout.write(text),
  complain: (text) => process.stderr.write(text),
});
