#!/usr/bin/env node
import { askedFor } from "./command/arguments.js";
import { front } from "./command/front.js";
import { HELP } from "./command/help.js";

await front(async (args, world) => {
  if (askedFor(args).verb === "help") {
    world.print(HELP);
    return 0;
  }
  // The planner is loaded only where something is planned.
  const { run } = await import("./command/run.js");
  return run(args, world);
});
