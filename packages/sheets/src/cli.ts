#!/usr/bin/env node
import { readText, writeWhole } from "@thrum/plan/files";
import { run } from "./command/run.js";

process.exitCode = run(process.argv.slice(2), {
  read: readText,
  write: writeWhole,
  print: (content) => process.stdout.write(content),
  complain: (text) => process.stderr.write(text),
  isScreen: process.stdout.isTTY,
});
