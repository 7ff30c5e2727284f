// The built command on a machine that misbehaves: full disks, closed pipes, folders one may not write in, sudden ends.
import { spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { describeWith } from "#ci/program.js";

const CLI = resolve("packages/plan/dist/cli.js");
const SHEETS = resolve("packages/sheets/dist/cli.js");
const FILES = resolve("packages/plan/dist/files.js");
const JOB = resolve("examples/jobs/2-hall-napkins.yaml");

const folder = mkdtempSync(join(tmpdir(), "thrum-machine-"));
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});
const place = (name: string): string => {
  mkdirSync(join(folder, name));
  return join(folder, name);
};

interface Ended {
  readonly code: number | null;
  readonly said: string;
}

/** A line of shell in a folder of its own; what the command said is on standard error. */
function shell(line: string, cwd: string): Ended {
  const quoted = { THRUM: CLI, SHEETS, JOB, NODE: process.execPath };
  const { status, stderr } = spawnSync("bash", ["-c", line], {
    cwd,
    encoding: "utf8",
    env: { ...process.env, ...quoted },
  });
  return { code: status, said: stderr };
}

/** Told in one or two sentences, never as a stack, and never with a code of the machine alone. */
function told({ code, said }: Ended, words: string): void {
  expect(said).toContain(words);
  expect(said).not.toMatch(/\n {4}at |Error:/u);
  expect(code).toBe(4);
}

const COMMANDS = [
  ["thrum", '"$NODE" "$THRUM" plan "$JOB"'],
  ["thrum-sheets", '"$NODE" "$SHEETS" "$JOB"'],
] as const;

describe.each(COMMANDS)("%s", (name, command) => {
  const cwd = place(name);

  it.skipIf(!existsSync("/dev/full"))("says that the disk is full", () => {
    told(shell(`${command} > /dev/full`, cwd), "the disk is full");
  });

  it("says that a limit of the size of files cut the answer short", () => {
    told(shell(`ulimit -f 8; ${command} > cut`, cwd), "a file may not grow so large here");
  });

  it("says that its reader went away, or has written all before that", () => {
    const { code, said } = shell(`${command} | head -c 1 > first; exit "\${PIPESTATUS[0]}"`, cwd);
    if (code === 0) expect(said).toBe("");
    else told({ code, said }, "has stopped reading");
    told(shell(`${command} | (exec 0<&-; sleep 1); exit "\${PIPESTATUS[0]}"`, cwd), "has stopped reading");
  });

  it("writes all into a pipe, however slowly it is read", () => {
    const slow =
      "process.stdin.pause(); setTimeout(() => process.stdin.resume(), 300); let n = 0; process.stdin.on('data', (d) => (n += d.length)); process.stdin.on('end', () => console.error(n));";
    const whole = spawnSync("bash", ["-c", command], {
      env: { ...process.env, NODE: process.execPath, THRUM: CLI, SHEETS, JOB },
    }).stdout.length;
    const { code, said } = shell(`${command} | "$NODE" -e "${slow}"`, cwd);
    expect({ code, read: Number(said) }).toEqual({ code: 0, read: whole });
  });

  describeWith("Python 3", (python) => {
    it("waits for a job that comes slowly through a pipe that does not wait", () => {
      const slow =
        "import os, subprocess, sys, time; r, w = os.pipe(); os.set_blocking(r, False); " +
        "asked = subprocess.Popen(['bash', '-c', sys.argv[1]], stdin=r); text = open(sys.argv[2], 'rb').read(); " +
        "[(time.sleep(0.4), os.write(w, part)) for part in (text[:100], text[100:])]; os.close(w); sys.exit(asked.wait())";
      const asked = `${command.replace('"$JOB"', "-")} > slow`;
      const { code, said } = shell(`"${python}" -c "${slow}" '${asked}' "$JOB"`, cwd);
      expect({ code, said }).toEqual({ code: 0, said: "" });
      expect(lstatSync(join(cwd, "slow")).size).toBeGreaterThan(5000);
    });
  });

  it("never writes over the job, by whatever name it is given", () => {
    const job = readFileSync(JOB, "utf8");
    writeFileSync(join(cwd, "job.yaml"), job);
    symlinkSync("job.yaml", join(cwd, "soft.yaml"));
    linkSync(join(cwd, "job.yaml"), join(cwd, "hard.yaml"));
    for (const to of ["job.yaml", "./job.yaml", "soft.yaml", "hard.yaml"]) {
      told(shell(`${command.replace('"$JOB"', "job.yaml")} --to ${to} --replace`, cwd), "is the job file itself");
    }
    told(shell(`${command.replace('"$JOB"', "-")} --to job.yaml --replace < job.yaml`, cwd), "is the job file itself");
    expect(readFileSync(join(cwd, "job.yaml"), "utf8")).toBe(job);
  });

  it("replaces what a link leads to, and keeps who may read it", () => {
    writeFileSync(join(cwd, "real"), "older", { mode: 0o600 });
    symlinkSync("real", join(cwd, "link"));
    expect(shell(`${command} --to link --replace`, cwd)).toEqual({ code: 0, said: "" });
    expect(lstatSync(join(cwd, "link")).isSymbolicLink()).toBe(true);
    expect(lstatSync(join(cwd, "real")).mode & 0o777).toBe(0o600);
    expect(lstatSync(join(cwd, "real")).size).toBeGreaterThan(1000);
  });

  it("leaves devices, pipes and folders what they are", () => {
    mkdirSync(join(cwd, "sub"));
    spawnSync("mkfifo", [join(cwd, "fifo")]);
    for (const to of ["/dev/null", "fifo", "sub"])
      told(shell(`${command} --to ${to} --replace`, cwd), "is no ordinary file");
    told(shell(`${command} --to /dev/stdout --replace > out`, cwd), "is where the output goes");
    expect(lstatSync(join(cwd, "fifo")).isFIFO()).toBe(true);
  });

  it("stands a left-over draft and a folder that may not be written in", () => {
    writeFileSync(join(cwd, ".thrum.1.draft"), "left by one that was killed");
    expect(shell(`${command} --to plan`, cwd)).toEqual({ code: 0, said: "" });
    const closed = place(`${name}-closed`);
    chmodSync(closed, 0o500);
    // The root user may write in it all the same.
    if (process.getuid?.() === 0) return;
    told(shell(`${command} --to plan`, closed), "it may not be opened");
    expect(readdirSync(closed)).toEqual([]);
  });

  it("writes where a file has one name only, and still keeps what stands there", () => {
    const preload = join(cwd, "no-links.cjs");
    writeFileSync(
      preload,
      'const fs = require("node:fs"); fs.linkSync = () => { throw Object.assign(new Error("no links"), { code: "EPERM" }); }; require("node:module").syncBuiltinESMExports();',
    );
    const without = command.replace('"$NODE"', '"$NODE" --require ./no-links.cjs');
    expect(shell(`${without} --to one-name`, cwd)).toEqual({ code: 0, said: "" });
    const first = readFileSync(join(cwd, "one-name"));
    expect(first.length).toBeGreaterThan(1000);
    told(shell(`${without} --to one-name`, cwd), "it exists already");
    expect(readFileSync(join(cwd, "one-name"))).toEqual(first);
    expect(readdirSync(cwd).filter((one) => one.endsWith(".draft"))).toEqual([".thrum.1.draft"]);
  });

  it("puts no escape of a terminal on any stream", () => {
    writeFileSync(join(cwd, "rude.yaml"), `${readFileSync(JOB, "utf8")}\n"\\e]0;owned\\a\\e[2J\\u202e": 3\n`);
    for (const rude of ["rude.yaml", "$'\\e[2J'"]) {
      const line = command.replace('"$JOB"', rude);
      const { stdout, stderr } = spawnSync("bash", ["-c", line], {
        cwd,
        encoding: "utf8",
        env: { ...process.env, NODE: process.execPath, THRUM: CLI, SHEETS, JOB },
      });
      expect(stderr).not.toBe("");
      expect(stdout + stderr).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
    }
  });
});

const mounted = place("small");
const isSmall = spawnSync("mount", ["-t", "tmpfs", "-o", "size=16k", "tmpfs", mounted]).status === 0;
afterAll(() => {
  if (isSmall) spawnSync("umount", [mounted]);
});

describe.skipIf(!isSmall)("a disk of 16 kB (needs the right to mount one)", () => {
  it.each(COMMANDS)("%s writes the answer whole or tells, and keeps the older one", (_name, command) => {
    told(shell(`${command} > cut`, mounted), "the disk is full");
    rmSync(join(mounted, "cut"));
    writeFileSync(join(mounted, "plan"), "older");
    told(shell(`${command} --to plan --replace`, mounted), "the disk is full");
    told(shell(`${command} --to other`, mounted), "the disk is full");
    expect(readdirSync(mounted)).toEqual(["plan"]);
    expect(readFileSync(join(mounted, "plan"), "utf8")).toBe("older");
  });
});

describe("a file being replaced", () => {
  it("is the older or the newer one, whole, at whatever moment the program is killed", async () => {
    const cwd = place("killed");
    const file = join(cwd, "plan");
    const contents = ["a", "b"].map((letter) => letter.repeat(400_000));
    const text = `import(${JSON.stringify(FILES)}).then(({ writeWhole }) => {
      const contents = ["a", "b"].map((letter) => letter.repeat(400_000));
      process.stdout.write("ready");
      for (let turn = 0; ; turn += 1) writeWhole(${JSON.stringify(file)}, contents[turn % 2], "replace");
    });`;
    for (let moment = 0; moment < 40; moment += 1) {
      const child = spawn(process.execPath, ["-e", text], { stdio: ["ignore", "pipe", "inherit"] });
      await new Promise((ready) => child.stdout.once("data", ready));
      await new Promise((later) => setTimeout(later, moment));
      const ended = new Promise((done) => child.once("close", done));
      child.kill("SIGKILL");
      await ended;
      if (existsSync(file)) expect(contents).toContain(readFileSync(file, "utf8"));
    }
    expect(contents).toContain(readFileSync(file, "utf8"));
  });
});

it("loads no planner to show its help", () => {
  const { stderr, status } = spawnSync(process.execPath, [CLI, "help"], {
    encoding: "utf8",
    env: { ...process.env, NODE_DEBUG: "esm" },
  });
  expect(status).toBe(0);
  expect(stderr).toContain("cli.js");
  expect(stderr).not.toMatch(/dist\/(?:index|run-[A-Z0-9]+)\.js|node_modules\/yaml/u);
});
