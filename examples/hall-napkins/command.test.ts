import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";

const COMMAND = "node_modules/@thrum/plan/dist/cli.js";
const JOB = "../jobs/2-hall-napkins.yaml";
const here = { cwd: "examples/hall-napkins", encoding: "utf8" } as const;
const thrum = (args: readonly string[], input = ""): ReturnType<typeof spawnSync> =>
  spawnSync(process.execPath, [COMMAND, ...args], { ...here, input });

describe("thrum, as it is installed", () => {
  it("prints what the program of the example prints", () => {
    const { status, stdout, stderr } = thrum(["plan", JOB]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toBe(spawnSync(process.execPath, ["plan.mjs", JOB], here).stdout);
  });

  it("reads the job from a pipe", () => {
    const { status, stdout } = thrum(["check", "-"], "thrum: 2");
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
  });

  it("says that a pipe was closed before the whole plan had gone through", () => {
    const pipe = `"$0" ${COMMAND} plan ${JOB} --as json | head -c 1`;
    const { stdout, stderr } = spawnSync("sh", ["-c", pipe, process.execPath], here);
    expect({ stdout, stderr }).toEqual({
      stdout: "{",
      stderr: "The answer cannot be printed whole: whatever read it has stopped reading.\n",
    });
  });
});
