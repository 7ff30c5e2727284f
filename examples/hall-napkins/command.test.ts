import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";

const COMMAND = "node_modules/@thrum/plan/dist/cli.js";
const here = { cwd: "examples/hall-napkins", encoding: "utf8" } as const;
const thrum = (args: readonly string[], input = ""): ReturnType<typeof spawnSync> =>
  spawnSync(process.execPath, [COMMAND, ...args], { ...here, input });

describe("thrum, as it is installed", () => {
  it("prints what the program of the example prints", () => {
    const { status, stdout, stderr } = thrum(["plan", "job.yaml"]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toBe(spawnSync(process.execPath, ["plan.mjs", "job.yaml"], here).stdout);
  });

  it("reads the job from a pipe", () => {
    const { status, stdout } = thrum(["check", "-"], "thrum: 2");
    expect({ status, stdout }).toEqual({ status: 1, stdout: "" });
  });

  it("says nothing when the reader of the pipe has seen enough", () => {
    const pipe = `"$0" ${COMMAND} plan job.yaml --as json | head -1`;
    const { stdout, stderr } = spawnSync("sh", ["-c", pipe, process.execPath], here);
    expect({ stdout, stderr }).toEqual({ stdout: "{\n", stderr: "" });
  });
});
