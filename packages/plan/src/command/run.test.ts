import { mkdirSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";

import { HELP } from "./help.js";
import { readText } from "./read-text.js";
import { run } from "./run.js";
import { isSameFile } from "./same-file.js";
import { writeWhole } from "./write-whole.js";

const JOB = "examples/jobs/2-hall-napkins.yaml";
const text = readFileSync(JOB, "utf8");

function lineWith(key: string): string {
  return String(text.split("\n").findIndex((line) => line.includes(key)) + 1);
}

interface Ran {
  readonly code: number;
  readonly printed: string;
  readonly complained: string;
}

function ran(...args: readonly string[]): Ran {
  const [printed, complained]: [string[], string[]] = [[], []];
  const code = run(args, {
    read: readText,
    write: writeWhole,
    isSameFile,
    print: (words) => printed.push(String(words)),
    complain: (words) => complained.push(words),
    isScreen: false,
  });
  return { code, printed: printed.join(""), complained: complained.join("") };
}

function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), "thrum-"));
  for (const [name, words] of Object.entries(files)) writeFileSync(join(folder, name), words);
  return folder;
}

describe("the command", () => {
  it("teaches itself when asked for nothing, in 80 columns", () => {
    for (const args of [[], ["help"], ["--help"], ["plan", "-h"]]) {
      expect(ran(...args)).toEqual({ code: 0, printed: HELP, complained: "" });
    }
    for (const line of HELP.split("\n")) expect(line.length, line).toBeLessThanOrEqual(80);
  });

  it("begins a job to fill in, and writes the one after it into her own lines", () => {
    const begun = ran("new");
    expect(begun).toMatchObject({ code: 0, complained: "" });
    // Every line of a value says what it is.
    const lines = begun.printed.split("\n").filter((line) => line.includes(": ") && !line.trimStart().startsWith("#"));
    const bare = lines.filter((line) => !line.includes(" # ")).map((line) => line.trim().split(":")[0]);
    expect(bare).toEqual(["of", "natural", "madder", "indigo", "yarn"].filter((key) => bare.includes(key)));
    const folder = folderWith({
      "job.yaml": `${begun.printed}found: { takeUp: 21 in to 2 in, waste: { behind: 17 in } }\n`,
    });
    const after = ran("next", join(folder, "job.yaml"));
    expect(after.code).toBe(0);
    expect(after.complained).toMatch(/^Take-up would be 90\.5 %/u);
    expect(after.printed).toContain(
      "  wasteBehind: 17 in # was 18 in; and behind the last; the old warp stands in for one of the two, which, the knots decide\n",
    );
    expect(ran("check", join(folderWith({ "next.yaml": after.printed }), "next.yaml")).code).toBe(0);
    expect(ran("next", join(folderWith({ "bad.yaml": "reed: 10" }), "bad.yaml")).code).toBe(1);
  });

  it("tells whether the figures of a printed page agree, or which lines cannot be read", () => {
    const folder = folderWith({
      "page.txt": "# towels\nsett: 24 per inch\nwidthInReed: 22 in\nends: 180 # as printed\n",
      "wrong.txt": "sett: 24 in\nwidthInRead: 22 in\n\nabout 30 ends\npicks: 3\npicks: 4\nwarpCost: 5 dollars\n",
      "empty.txt": "# nothing\n",
    });
    // 22 × 24 = 528; 180 ÷ 8 = 22.5 in, 180 ÷ 24 = 7.5 in: 22 and 7 where whole inches are printed.
    const told = ran("reconcile", join(folder, "page.txt"));
    expect(told).toMatchObject({ code: 0, complained: "" });
    expect(told.printed.split("\n").slice(0, 2)).toEqual([
      "Warp ends, all of them: 180 is printed, the other figures give 528.",
      "All would agree if warp ends, all of them were 528 where 180 is printed; or if sett were 8 ends/in where 24 ends/in is printed; or if width in the reed were 7 in where 22 in is printed.",
    ]);
    const wrong = ran("reconcile", join(folder, "wrong.txt"));
    expect(wrong).toMatchObject({ code: 1, printed: "" });
    expect(wrong.complained.split("\n").slice(1)).toEqual([
      'line 1: expected sett with per inch or per cm, received "in". Write per inch or per cm behind the number.',
      'line 2: expected a figure of a printed project, received "widthInRead". Did you mean widthInReed?',
      'line 4: expected figure: number unit, received "about 30 ends". Write such as warpLength: 5 2/3 yd.',
      "line 6: expected every figure once, received picks a second time. Keep one.",
      'line 7: expected cost of the warp yarn with three capitals of a currency, received "dollars". Write three capitals of a currency behind the number.',
      "",
    ]);
    expect(ran("reconcile", join(folder, "empty.txt")).code).toBe(1);
    expect(ran("reconcile").code).toBe(2);
  });

  it("prints the plan as text, or all its data as JSON", () => {
    const plain = ran("plan", JOB);
    expect(plain).toMatchObject({ code: 0, complained: "" });
    expect(plain.printed).toContain("\nWidth in the reed: 18 3/8 in.\n");
    const data = JSON.parse(ran("plan", JOB, "--as", "json").printed) as {
      readonly figures: { readonly loom: { readonly widthInReed: unknown } };
    };
    // 368 ends, two to the dent, in 10 dents to the inch.
    expect(data.figures.loom.widthInReed).toMatchObject({
      value: { dimension: "length", value: "18.4", unit: "inches" },
    });
  });

  it("says that a job has no faults, or tells all of them and plans nothing", () => {
    expect(ran("check", JOB)).toEqual({ code: 0, printed: `${JOB}: no faults\n`, complained: "" });
    const folder = folderWith({ "job.yaml": text.replace("number: 9", "number: 0").replace("On: left", "On: up") });
    for (const verb of ["check", "plan"]) {
      const { code, printed, complained } = ran(verb, join(folder, "job.yaml"));
      expect({ code, printed }).toEqual({ code: 1, printed: "" });
      const [head, ...faults] = complained.trim().split("\n");
      expect(head).toMatch(/job\.yaml: 2 faults$/u);
      expect(faults.map((fault) => fault.split(":")[0])).toEqual([
        `line ${lineWith("endOneOn:")}, loom.endOneOn`,
        `line ${lineWith("number:")}, pieces[0].number`,
      ]);
    }
  });

  it("counts very many faults, and tells fifty of them", () => {
    const folder = folderWith({ "job.yaml": ":\n".repeat(49_000) });
    const lines = ran("check", join(folder, "job.yaml")).complained.trimEnd().split("\n");
    const faults = Number(/(\d+) faults$/u.exec(lines[0] ?? "")?.[1]);
    // Each line but the first names its key again, and one fault says that the key is none of a job.
    expect(faults).toBe(49_000);
    expect(lines).toHaveLength(52);
    expect(lines[1]).toContain("received no name on line 1");
    expect(lines.at(-1)).toBe("… and 48950 more.");
  });

  it("prints a plan that cannot be woven, whole, and says so in its exit code", () => {
    const folder = folderWith({ "job.yaml": text.replace("cloth:", "cloth:\n  threading: [1, 2, 3]") });
    const { code, printed, complained } = ran("plan", join(folder, "job.yaml"));
    expect(code).toBe(3);
    expect(complained).toContain("does not fit");
    expect(printed).toContain("\nSTRIPES\n368 ends, from end 1:\n");
  });

  it.each([
    [["plam", JOB], 'There is no "plam". Was plan meant?'],
    [["plan"], "Which job file?"],
    [["plan", JOB, JOB], "One job file at a time."],
    [["plan", JOB, "--as", "jsn"], 'There is no form "jsn". Was json meant?'],
    [["plan", JOB, "--replace"], "--replace goes with --to FILE"],
    [["plan", JOB, "--to", "-"], "leave it out"],
    [["plan", JOB, "--to", ""], "--to needs the name of a file."],
    [["check", JOB, "--to", "x"], "--to goes with plan and compare only."],
    [["compare", JOB, JOB, "--without", "workings"], "--without goes with plan only."],
    [["plan", JOB, "--without", "working"], 'Nothing called "working" can be left out. Was workings meant?'],
    [["plan", JOB, "--without", "workings", "--as", "json"], "the data are always whole"],
    [["compare", "-", "-"], "Standard input can be read only once."],
    [["plan", JOB, "--loud"], "--loud"],
    [["plan", "\u001b[2J", "x"], "One job file at a time."],
  ])("does not guess what %j means", (args, says) => {
    const { code, printed, complained } = ran(...args);
    expect({ code, printed }).toEqual({ code: 2, printed: "" });
    expect(complained).toContain(says);
  });

  it("names a file that cannot be read, without a control character", () => {
    const folder = folderWith({ "latin1.yaml": "" });
    writeFileSync(join(folder, "latin1.yaml"), Uint8Array.of(0xe9, 0x0a));
    for (const path of [join(folder, "none.yaml"), folder, join(folder, "latin1.yaml"), "\u001b[2J", "a\u0000b"]) {
      const { code, printed, complained } = ran("plan", path);
      expect({ code, printed }).toEqual({ code: 4, printed: "" });
      expect(complained).not.toMatch(/(?!\n)\p{Cc}/u);
    }
  });
});

describe("a plan written into a file", () => {
  it("is the very text that would be printed, and leaves nothing beside it", () => {
    const folder = folderWith({});
    expect(ran("plan", JOB, "--to", join(folder, "plan.txt"))).toEqual({ code: 0, printed: "", complained: "" });
    expect(readFileSync(join(folder, "plan.txt"), "utf8")).toBe(ran("plan", JOB).printed);
    expect(readdirSync(folder)).toEqual(["plan.txt"]);
  });

  it("takes no other file's place unless asked to", () => {
    const folder = folderWith({ "plan.txt": "the older plan" });
    const file = join(folder, "plan.txt");
    const kept = ran("plan", JOB, "--to", file);
    expect(kept.code).toBe(4);
    expect(kept.complained).toContain("it exists already. Choose another name, or add --replace.");
    expect(readFileSync(file, "utf8")).toBe("the older plan");
    expect(ran("plan", JOB, "--to", file, "--replace").code).toBe(0);
    expect(readFileSync(file, "utf8")).toContain("Striped napkins");
    expect(readdirSync(folder)).toEqual(["plan.txt"]);
  });

  it("never takes the place of the job it was made from, by any path", () => {
    const folder = folderWith({ "job.yaml": text });
    for (const to of [join(folder, "job.yaml"), join(folder, ".", "job.yaml")]) {
      const { code, complained } = ran("plan", join(folder, "job.yaml"), "--to", to, "--replace");
      expect(code).toBe(4);
      expect(complained).toContain("is the job file itself");
    }
    expect(readFileSync(join(folder, "job.yaml"), "utf8")).toBe(text);
  });

  it("is not begun where it cannot stand", () => {
    const folder = folderWith({});
    mkdirSync(join(folder, "sub"));
    expect(ran("plan", JOB, "--to", join(folder, "none", "plan.txt")).code).toBe(4);
    expect(ran("plan", JOB, "--to", join(folder, "sub"), "--replace").code).toBe(4);
    expect(ran("plan", JOB, "--to", join(folder, "n".repeat(300))).code).toBe(4);
    expect(readdirSync(folder)).toEqual(["sub"]);
  });
});

describe("text from the job", () => {
  it("never reaches the terminal as a control character, in text or in JSON", () => {
    const rude = fc.string({
      unit: fc.constantFrom("a", "\u001b", "\u0007", "\u009b", "\u202e", "\u2028", "$(x)", "<"),
    });
    fc.assert(
      fc.property(rude, rude, (title, note) => {
        const folder = folderWith({
          "job.yaml": text
            .replace(/^title: .*/mu, () => `title: ${JSON.stringify(`t${title}`)}`)
            .replace(/^note: .*/mu, () => `note: ${JSON.stringify(`n${note}`)}`),
        });
        for (const form of ["text", "json"]) {
          const { printed, complained } = ran("plan", join(folder, "job.yaml"), "--as", form);
          expect(printed + complained).not.toMatch(/(?!\n)[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
          if (form === "json" && printed !== "") {
            expect(JSON.parse(printed)).toMatchObject({
              job: { title: expect.stringMatching(/^t/u) as string, note: expect.stringMatching(/^n/u) as string },
            });
          }
        }
      }),
      { numRuns: 40 },
    );
  });
});

describe("two plans compared", () => {
  const other = (): string => join(folderWith({ "other.yaml": text.replace("number: 9", "number: 7") }), "other.yaml");

  it("are a page or data too, and go into a file", () => {
    const second = other();
    expect(ran("compare", JOB, second, "--as", "html").printed).toContain("<h1>Two plans side by side</h1>");
    const data = JSON.parse(ran("compare", JOB, second, "--as", "json").printed) as readonly {
      readonly label: string;
    }[];
    expect(data.map(({ label }) => label)).toContain("warp to wind");
    const file = join(folderWith({}), "differences.html");
    expect(ran("compare", JOB, second, "--as", "html", "--to", file)).toEqual({ code: 0, printed: "", complained: "" });
    expect(ran("compare", JOB, second, "--to", second, "--replace").code).toBe(4);
  });
});

it("leaves the workings out on request, in text and on the page", () => {
  for (const form of ["text", "html"]) {
    expect(ran("plan", JOB, "--as", form).printed.toUpperCase()).toContain("WORKINGS AND SOURCES");
    expect(ran("plan", JOB, "--as", form, "--without", "workings").printed.toUpperCase()).not.toContain(
      "WORKINGS AND SOURCES",
    );
  }
});
