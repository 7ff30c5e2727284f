import { describe, expect, it } from "vitest";
import { faultText } from "./fault.js";
import type { JobReading } from "./checked-job.js";
import { checkedJob } from "./checked-job.js";
import { readJob } from "./read-job.js";
import { exactSize } from "./run-size.js";
import { readStripes } from "./read-stripes.js";

const CONTROL = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u;

function saidOf(reading: JobReading): readonly string[] {
  return reading.ok ? [] : reading.faults.map(faultText);
}

function secondsOf(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

describe("a hostile file", () => {
  it("with keys that are groups is one fault, however deep", () => {
    for (const deep of [24, 28, 40, 5000]) {
      const text = `${"? ".repeat(deep)}1`;
      expect(
        secondsOf(() => {
          expect(saidOf(readJob(text))).toHaveLength(1);
        }),
      ).toBeLessThan(5);
    }
  });

  it("with groups in groups is refused before they are composed", () => {
    const deep = 817;
    const [said] = saidOf(readJob(`${"{a: ".repeat(deep)}x\n  y${"}".repeat(deep)}`));
    expect(said).toContain("at most 64 deep");
  });

  it.each(["]", "{}", "[]", '"', "[", "{", "- ", ":\n", "a: b\n", "? ", "'", "a: [", "&a ", "!a ", "k:\n "])(
    "of %j over and over is read in a time that grows with its length alone",
    (piece) => {
      const time = (length: number): number =>
        secondsOf(() => readJob(piece.repeat(Math.floor(length / piece.length))));
      time(2000);
      // Twenty times the length: 20 times the time is linear, 400 times quadratic.
      expect(time(99_000)).toBeLessThan(Math.max(60 * time(4950), 4));
    },
  );

  it("with mirrors in mirrors is counted exactly before anything is laid out", () => {
    const mirrored = (deep: number): string =>
      deep === 0 ? "1 a, 1 b, 1 c" : `{ mirror: [${mirrored(deep - 1)}], middle: once }`;
    expect(saidOf(readJob(`stripes: [${mirrored(20)}]`))[0]).toContain("lists at most 8 deep");
    const repeated = (deep: number): string => (deep === 0 ? "1 a" : `{ repeat: 20000, of: [${repeated(deep - 1)}] }`);
    expect(saidOf(readJob(`stripes: [${repeated(6)}]`))[0]).toContain("at most 20000 ends");
    expect(readJob("stripes: [20000 a]").ok).toBe(true);
    expect(saidOf(readJob("stripes: [20000 a, 1 b]"))[0]).toContain("received 20001");
    // Once in the middle: 9000 + 2000 + 9000; written as 1000 + 1000 of one yarn it is the same stripe.
    expect(readJob("stripes: [{ mirror: [9000 a, 2000 b], middle: once }]").ok).toBe(true);
    expect(readJob("stripes: [{ mirror: [9000 a, 1000 b, 1000 b], middle: once }]").ok).toBe(true);
    expect(saidOf(readJob("stripes: [{ mirror: [9000 a, 2001 b], middle: once }]"))[0]).toContain("received 20001");
    expect(saidOf(readJob("stripes: [{ mirror: [9000 a, 1001 b], middle: twice }]"))[0]).toContain("received 20002");
  });

  it("sends no control character to a screen", () => {
    const hostile = "\\e]0;owned\\a\\e[2J\\u202eX";
    const texts = [
      `yarns: { "${hostile}": { count: "${hostile}" } }\nstripes: ["3 ${hostile}", "${hostile}"]`,
      `"${hostile}": "${hostile}"`,
      `yarns: { a: {} }\nstripes: ["3 ${hostile}"]\nweft: { stripes: "b${hostile}" }`,
      `join: { knots: "${hostile}" }\ncosts: { others: "${hostile}" }\noldWarp: { faults: [{ is: "${hostile}" }] }`,
      "a: &\u001b[2J 1",
      "\u001b]0;owned\u0007: [",
    ];
    for (const text of texts) {
      const said = saidOf(readJob(text));
      expect(said.length).toBeGreaterThan(0);
      for (const sentence of said) expect(sentence).not.toMatch(CONTROL);
    }
  });

  it.each([
    ["madder", "madder "],
    ["café", "cafe\u0301"],
    ["indigo", "indi\u200bgo"],
    ["Indigo", "indigo"],
    ["ﬁne", "fine"],
  ])("with the names %j and %j, which are one on paper, is refused", (one, other) => {
    const said = saidOf(readJob(`yarns: { ${JSON.stringify(one)}: {}, ${JSON.stringify(other)}: {} }`));
    expect(said).toHaveLength(1);
    expect(said[0]).toContain("told apart on paper");
  });

  it("gives no other meaning to its numbers", () => {
    expect(saidOf(readJob("%YAML 1.1\n---\noldWarp: { ends: 0560 }"))[0]).toContain("without directives");
    const reading = readJob("oldWarp: { ends: 0560 }");
    expect(reading.ok && reading.value.oldWarp?.ends).toBe(560);
    expect(saidOf(readJob("loom:\n  <<: { sley: 2 }"))[0]).toContain("a merge");
  });

  it("names yarns as it likes without touching a prototype", () => {
    const reading = readJob(
      "yarns: { __proto__: { fibre: wool }, constructor: {} }\nstripes: [3 __proto__, 4 constructor]",
    );
    expect(reading.ok && Object.keys(reading.value.yarns ?? {})).toEqual(["__proto__", "constructor"]);
    expect(saidOf(readJob("__proto__: 3"))).toHaveLength(1);
    expect(saidOf(readJob("toString: 3"))).toHaveLength(1);
  });

  it("is no text, or too long, and is one fault", () => {
    for (const text of [undefined, null, 3, {}, "a".repeat(100_001)]) expect(saidOf(readJob(text))).toHaveLength(1);
  });
});

describe("hostile data", () => {
  const cyclic: Record<string, unknown> = {};
  cyclic["stripes"] = [cyclic];
  let deep: unknown[] = [];
  for (let level = 0; level < 20_000; level += 1) deep = [{ repeat: 1, of: deep }];
  const revoked = Proxy.revocable({}, {});
  revoked.revoke();

  it.each<readonly [string, unknown]>([
    ["what holds itself", cyclic],
    ["20,000 lists in one another", { stripes: deep }],
    [
      "a trap",
      new Proxy(
        {},
        {
          ownKeys: () => {
            throw new Error("trap");
          },
        },
      ),
    ],
    ["a revoked trap", revoked.proxy],
    [
      "a getter that throws",
      {
        get title(): string {
          throw new Error("trap");
        },
      },
    ],
    ["a function", () => 1],
    ["null", null],
    ["nothing", undefined],
    ["a map", new Map()],
    ["a date", { title: new Date(0) }],
    ["a symbol", { title: Symbol("a") }],
    ["a list without end", { stripes: new Array(4_294_967_295) }],
  ])("as %s is a fault, never an error", (_, value) => {
    expect(saidOf(checkedJob(value))).toHaveLength(1);
  });
});

describe("stripes alone", () => {
  it("are read in brackets or without, one a line or on one", () => {
    const wanted = readStripes("[24 natural, 6 plum + pink, { repeat: 2, of: [3 a] }]");
    expect(wanted.ok).toBe(true);
    for (const text of [
      "24 natural, 6 plum + pink, { repeat: 2, of: [3 a] }",
      "24 natural\n6 plum + pink\n{ repeat: 2, of: [3 a] }",
      "- 24 natural\n- 6 plum + pink\n- repeat: 2\n  of: 3 a",
    ]) {
      expect(readStripes(text)).toEqual(wanted);
    }
    const refused = readStripes("24 natural, 7 plum + pink");
    expect(refused.ok ? [] : refused.faults.map(({ path }) => path)).toEqual([[1]]);
    expect(readStripes("").ok).toBe(false);
  });

  it("are counted as one lays them out", () => {
    const laid = exactSize(
      [
        { mirror: [5, 3], middle: "once" },
        { repeat: 4, of: [2] },
      ],
      (size) => ({ size, of: null, turned: null }),
    );
    expect(laid).toBe(5 + 3 + 5 + 8);
  });
});
