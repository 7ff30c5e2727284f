import { inches } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import { faultsText, faultText } from "./fault.js";
import type { Fault } from "./fault.js";
import { checkedJob } from "./checked-job.js";
import { readJob } from "./read-job.js";

function faultsOf(text: string): readonly Fault[] {
  const reading = readJob(text);
  return reading.ok ? [] : reading.faults;
}

const saidOf = (text: string): readonly string[] => faultsOf(text).map(faultText);

describe("what cannot be planned", () => {
  // The sentences of the law: figures and their order are held, words may be bettered.
  it.each([
    [
      "thrum: 1\nstripes: [24 plum,\n  17 plum + pink]",
      "line 3, stripes[1]: expected whole hands of plum + pink, received 17. Which thread is left out of the last pass? Write 16 plum + pink, 1 plum.",
    ],
    [
      "yarns:\n  natural:\n    count: 8/2 cotton",
      'line 3, yarns.natural.count: expected a count of one reading, received "8/2 cotton". It has two readings: 2-ply of 8 cotton (3360 yd per lb), 8-ply of 2 cotton (210 yd per lb). Write one of them.',
    ],
    [
      "cloth:\n  takeUp: 8 %",
      'line 2, cloth.takeUp: expected a loss, received "8 %". Write 8 % lost, or two measures: 21 in to 19 1/2 in.',
    ],
    [
      "yarns:\n  plum:\n    sold: [8 oz, 1 lb]\n    onHand: 2 cones",
      "line 4, yarns.plum.onHand: expected packages of one size, received 2 cones. Of which size? sold lists 8 oz and 1 lb. Write the mass.",
    ],
    ["oldWrap: { ends: 3 }", "line 1, oldWrap: expected a key of a job, received oldWrap. Did you mean oldWarp?"],
    [
      "yarns: { indigo: {} }\nstripes:\n  - 24 indgo",
      'line 3, stripes[0]: expected the name of a yarn, received "indgo". Did you mean indigo?',
    ],
    [
      "groups: 3\ngroups: 4",
      "line 2, groups: expected every key once, received groups on line 1 and line 2. Keep one.",
    ],
  ])("%j is said so", (text, sentence) => {
    expect(saidOf(text)).toEqual([sentence]);
  });

  it.each([
    ["warp: { length: 16 }", "warp.length", "16 in, or 16 cm"],
    ['warp: { length: "1,5 cm" }', "warp.length", "Write 1.5 cm"],
    ["warp: { length: -3 in }", "warp.length", "minus"],
    ["cloth: { sett: 20 }", "cloth.sett", "20 per inch, or 20 per cm"],
    ["cloth: { sett: 18 ppi }", "cloth.sett", "ends stand here"],
    ["cloth: { sett: 18 picks per inch }", "cloth.sett", "ends stand here"],
    ["weft: { allowance: 5 % }", "weft.allowance", "5 % added"],
    ["costs: { others: 14.50 }", "costs.others", "currency"],
    ["costs: { others: 14 EUR, hourlyRate: 5 GBP }", "costs.others", "in GBP"],
    ["cloth: { takeUp: 35 cm to 40 cm }", "cloth.takeUp", "longer than the first"],
    ["stripes: [24 sea, green]", "stripes[1]", "comma parts runs"],
    ["stripes: [24 natural: dark]", "stripes[0]", "in quotes, or without"],
    ["weft: { stripes: [12 madder, natural] }", "weft.stripes[1]", "comma parts runs"],
    ["stripes: []", "stripes", "Leave the key out"],
    ["stripes: [the rest a, the rest b]", "stripes[1]", "number of one"],
    ["stripes: [{ repeat: 3, of: [the rest a] }]", "stripes[0].of[0]", "Within a repeat"],
    ["stripes: [{ mirror: [3 a] }]", "stripes[0]", "once or twice"],
    ["loom: { sley: { mirror: [2], middle: once } }", "loom.sley", "brackets"],
    ["stripes: [24 in red]", "stripes[0]", "is a unit"],
    ["yarns: { others: {} }", "yarns.others", "something else"],
    ["yarns: { a: { count: 3 cut in all } }", "yarns.a.count", "galashielsCut"],
    ["yarns: { a: { count: 2-ply of 40 denier } }", "yarns.a.count", "turinDenier"],
    ["yarns: { a: { count: 2-ply of 80 tex in all } }", "yarns.a.count", "finished thread"],
    ["yarns: { a: { count: 16/16 cotton } }", "yarns.a.count", "two readings"],
    ["yarns: { a: { count: 2/8 cotton } }", "yarns.a.count", "210 yd per lb"],
    ["yarns: { a: { onHand: 1 1/2 cones } }", "yarns.a.onHand", "no size"],
    ["yarns: { a: { fibre: 70 % silk + 20 % wool } }", "yarns.a.fibre", "90 %"],
    ["yarns: { a: {}, b: {} }\nstripes: [4 a + b]\nloom: { sley: { a: 2, others: 3 } }", "stripes[0]", "same number"],
    ["yarns: { a: {} }\nloom: { sley: { b: 2 } }", "loom.sley.b", "Write a"],
    ["yarns: { a: {} }\nweft: blue", "weft", "Write a"],
    ["yarns: { a: {} }\nbetweenPieces: 4 picks of blue", "betweenPieces", "Write a"],
    ["oldWarp: { ends: 9, faults: [{ end: 10, is: one too many }] }", "oldWarp.faults[0]", "as they were counted"],
    ["oldWarp: { ends: 9, faults: [{ after: 10, is: broken }] }", "oldWarp.faults[0]", "as they were counted"],
    ["oldWarp: { faults: [{ end: 1, is: one too many }] }", "oldWarp.faults[0].end", "from 2"],
    ["oldWarp: { faults: [{ after: 1, is: lost }] }", "oldWarp.faults[0]", "broken"],
    ["oldWarp: { faults: [{ after: 1, is: empty heddle }] }", "oldWarp.faults[0].shaft", "Add shaft"],
    [
      "oldWarp: { faults: [{ end: 4, is: one too many }, { end: 4, is: in another dent, dent: 3 }] }",
      "oldWarp.faults[1]",
      "Keep the one",
    ],
    [
      "loom: { threading: [1, 2, 3, 4] }\noldWarp: { faults: [{ end: 4, is: on another shaft, shaft: 5 }] }",
      "oldWarp.faults[0]",
      "shaft",
    ],
    [
      "loom: { sley: 2, room: { after: { dents: 4 } } }\noldWarp: { ends: 9, faults: [{ end: 4, is: in another dent, dent: 10 }] }",
      "oldWarp.faults[0]",
      "dent",
    ],
    [
      "pieces: [{ number: as many as the warp gives }, { number: as many as the yarn gives }]",
      "pieces[1].number",
      "but one",
    ],
    ["pieces: [{ atLoom: 3 in, finishedLength: 4 in }]", "pieces[0].atLoom", "finished length"],
    ["thrum: 2", "thrum", "Write 1"],
    ["join: { knots: in front of reed }", "join.knots", "in front of the reed"],
  ])("%j is refused with its place and what to write", (text, path, remedy) => {
    const said = saidOf(text);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(/^line \d, /u);
    expect(said[0]).toContain(`, ${path}: expected `);
    expect(said[0]).toContain(remedy);
  });

  it.each([
    ["a: &x 1"],
    ["a: *x"],
    ["a: !!str 1"],
    ["thrum: 1\n---\nthrum: 1"],
    ["a: [1"],
    ["hello"],
    ["[1]"],
    ["title: a: b"],
  ])("%j is no job file, which is one fault", (text) => {
    expect(saidOf(text)).toHaveLength(1);
  });

  it("is told all at once, in the order of the lines", () => {
    const text = "groups: 0\nloom:\n  reed: ten\n  sley: two\nstripes: [3 in red, x]\ncloth: { takeUp: 5 % }";
    expect(faultsOf(text).map(({ line }) => line)).toEqual([1, 3, 4, 5, 5, 6]);
  });

  it("may be left out: nothing is required", () => {
    for (const text of ["", "# only a remark", "{}", "loom:\nyarns:\nstripes:", "loom: {}"])
      expect(saidOf(text)).toEqual([]);
  });

  it("tells a colour that fell behind a remark", () => {
    const reading = readJob("yarns:\n  rust:\n    seen: #8e3b32");
    expect(reading.ok && reading.told.map(faultText)).toEqual([
      'line 3, yarns.rust.seen: expected a colour, received nothing. In quotes: "#8e3b32"; after # stands a remark.',
    ]);
  });
});

describe("values that stay the text they are", () => {
  it("are words, whatever they look like", () => {
    const reading = readJob("title: 1.10\nnote: ~\nyarns:\n  null:\n  no:\n  true:\nstripes: [4 null, 3 no]");
    expect(reading.ok && [reading.value.title, reading.value.note, Object.keys(reading.value.yarns ?? {})]).toEqual([
      "1.10",
      "~",
      ["null", "no", "true"],
    ]);
  });

  it("are numbers and truth values where JSON has them", () => {
    const reading = readJob('{"groups": 24, "oldWarp": {"faults": [{"after": 3, "is": "broken", "mend": false}]}}');
    expect(reading.ok && [reading.value.groups, reading.value.oldWarp?.faults]).toEqual([
      24,
      [{ after: 3, is: "broken", mend: false }],
    ]);
  });
});

describe("a program's job", () => {
  it("holds quantities; a key that is undefined is left out", () => {
    const reading = checkedJob({ title: undefined, warp: { length: inches(200), wasteBehind: undefined } });
    expect(reading.ok && reading.value).toEqual({ warp: { length: inches(200) } });
  });

  it.each([
    ["text for an amount", { warp: { length: "16 in" } }, "warp.length"],
    ["a copy of a quantity", { warp: { length: { dimension: "length", value: "16", unit: "inches" } } }, "warp.length"],
    ["an amount of another kind", { cloth: { sett: inches(20) } }, "cloth.sett"],
    ["a hand that is not whole", { stripes: [{ ends: 3, yarns: ["a", "b"] }] }, "stripes[0]"],
    ["a key too many", { stripes: [{ ends: 3, yarns: ["a"], colour: "red" }] }, "stripes[0]"],
    ["two shapes at once", { loom: { sley: { places: [2], byYarn: { a: 3 } } } }, "loom.sley"],
    ["a number that is none", { groups: Number.NaN }, "groups"],
    ["an unknown key", { groop: 3 }, "groop"],
  ])("is refused for %s, by its path", (_, value, path) => {
    const reading = checkedJob(value);
    expect(reading.ok ? [] : reading.faults.map(faultText)[0]).toContain(`checkedJob({ ${path} }): expected `);
  });
});

describe("very many faults", () => {
  it("are all there for a program; of them fifty are printed", () => {
    const faults = faultsOf(":\n".repeat(40_000));
    expect(faults.length).toBeGreaterThan(39_000);
    const lines = faultsText(faults).split("\n");
    expect(lines).toHaveLength(51);
    expect(lines.at(-1)).toMatch(/^… and \d+ more\.$/u);
    expect(Math.max(...lines.map(({ length }) => length))).toBeLessThan(2002);
  });
});
