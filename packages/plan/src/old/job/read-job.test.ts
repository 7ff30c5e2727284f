import { readFileSync } from "node:fs";
import { QuantityError } from "@thrum/maths";
import { describe, expect, it } from "vitest";
import { faultText } from "./fault.js";
import { readJob } from "./read-job.js";

const napkins = readFileSync("examples/hall-napkins/job.yaml", "utf8");

function faultsOf(text: string): readonly string[] {
  const reading = readJob(text);
  return reading.ok ? [] : reading.faults.map(faultText);
}

function pathsOf(text: string): readonly string[] {
  const reading = readJob(text);
  return reading.ok ? [] : reading.faults.map(({ path }) => path);
}

function changed(from: string, to: string): string {
  expect(napkins).toContain(from);
  return napkins.replace(from, to);
}

describe("a job file", () => {
  it("of the napkins is read whole, in YAML and in JSON", () => {
    const reading = readJob(napkins);
    if (!reading.ok) throw new Error(reading.faults.map(faultText).join("\n"));
    expect(reading.job.pieces.finishedLength.value).toBe("16");
    expect(reading.job.pieces.hemEachEnd.value).toBe("0.75");
    expect(reading.job.newWarp.takeUp.unit).toBe("percentLost");
    expect(Object.isFrozen(reading.job.stripes)).toBe(true);
    expect(pathsOf(`{"thrum": 1, "title": "x"}`)).toContain("pieces");
  });

  it("tells all its faults at once, each with its line, path and remedy", () => {
    const faulty = napkins
      .replace("ends: 368", "ends: 368.5")
      .replace("finishedLength: 16 in", "finishedLength: 16")
      .replace("8 % lost", "8 %")
      .replace("hemEachEnd", "hemEachSide")
      .replace("endOneOn: left", "endOneOn: lefft")
      .replace("tieEvery: 40", "tieEvery: 40\n  pegs: 12\n  toString: 1")
      .replace("colour: madder, ends: 40", "colour: mader, ends: 40");
    const faults = faultsOf(faulty);
    expect(faults).toEqual([
      'line 8, loom.endOneOn: expected "left" or "right", received "lefft". Was "left" meant?',
      "line 12, oldWarp.ends: expected a whole number of ends, from 1 to 20000, received 368.5.",
      expect.stringMatching(
        /^line 24, newWarp\.takeUp: expected a percentage lost, such as "9 % lost", received "8 %"/u,
      ),
      expect.stringMatching(/^line 29, pieces\.hemEachEnd: expected the key hemEachEnd, received nothing/u),
      expect.stringMatching(/^line 30, pieces\.finishedLength: expected a length, received 16\. .*27 in/u),
      expect.stringMatching(
        /^line 31, pieces\.hemEachSide: .*received the key "hemEachSide"\. Was hemEachEnd meant\?/u,
      ),
      expect.stringMatching(/^line 41, yarns\.madder: expected a yarn that a stripe or the weft uses/u),
      expect.stringMatching(/^line 47, stripes\[1\]\.mirror\[0\]\.colour: expected one of the yarns/u),
      expect.stringMatching(/^line 59, winding\.pegs: .*received the key "pegs"/u),
      expect.stringMatching(/^line 60, winding\.toString: .*received the key "toString"/u),
    ]);
  });

  const yarn = "{ count: 1, system: tex, plies: 1, counted: single, onHand: 0 g, package: 1 g }";

  it.each([
    ["a negative length", "finishedLength: 16 in", "finishedLength: -16 in", "pieces.finishedLength"],
    ["a length of nothing", "finishedLength: 16 in", "finishedLength: 0 in", "pieces.finishedLength"],
    ["a length with two readings", "finishedLength: 16 in", "finishedLength: 1/2 16 in", "pieces.finishedLength"],
    ["a mass for a length", "finishedLength: 16 in", "finishedLength: 16 oz", "pieces.finishedLength"],
    ["a number that is none", "ends: 368", "ends: .nan", "oldWarp.ends"],
    ["a number without end", "ends: 368", "ends: .inf", "oldWarp.ends"],
    ["a text for a number", "ends: 368", 'ends: "368"', "oldWarp.ends"],
    ["a loss of all there is", "8 % lost", "100 % lost", "newWarp.takeUp"],
    ["a percentage that is added", "8 % lost", "8 % added", "newWarp.takeUp"],
    ["a yarn number of nothing", "count: 14", "count: 0", "yarns.indigo.count"],
    ["a yarn number no yarn has", "count: 14", "count: 1e300", "yarns.indigo.count"],
    ["a stripe without ends", "colour: madder, ends: 40", "colour: madder, ends: 0", "stripes[1].mirror[0].ends"],
    ["a group no times over", "repeat: 3", "repeat: 0", "stripes[1].mirror[1].repeat"],
    ["more ends than a loom holds", "repeat: 3", "repeat: 20000", "stripes"],
    ["a yarn that no stripe uses", "  madder: {", `  scarlet: ${yarn}\n  madder: {`, "yarns.scarlet"],
    ["a yarn by a name a program keeps", "  madder: {", `  constructor: ${yarn}\n  madder: {`, "yarns.constructor"],
    ["a chain too short for its stripe", "mostEndsInChain: 140", "mostEndsInChain: 100", "winding.mostEndsInChain"],
    ["too many threads together", "threadsTogether: 2", "threadsTogether: 400", "winding.threadsTogether"],
    ["a weaver who turns away from the knots", "Faces: back of", "Faces: front of", "loom.weaverFaces"],
    ["another version of the form", "thrum: 1", "thrum: 2", "thrum"],
    ["a blank title", "title: Striped", 'title: " \\u200b" # Striped', "title"],
    ["a key written twice", "title:", "thrum: 1\ntitle:", ""],
    ["an alias", "note: Madder", "note: *x # Madder", ""],
    ["a tag the form does not know", "number: 9", "number: !dozen 9", ""],
  ])("with %s is refused there", (_, from, to, path) => {
    expect(pathsOf(changed(from, to))).toContain(path);
  });

  it("that is no job, empty, endless or hostile is answered with faults, never with a crash", () => {
    const groups = `${"{repeat: 1, of: [".repeat(2000)}{colour: madder, ends: 1}${"]}".repeat(2000)}`;
    const hostile = [
      ...["", "[]", "3", "{", "a: b: c", "\u0000", "x".repeat(200_000), "&a [*a]", "!!js x", "--- 1\n--- 2"],
      ...["__proto__: { thrum: 1 }", "constructor: 1", "[".repeat(50_000), "{a: ".repeat(20_000)],
      changed("stripes:\n", `stripes:\n  - ${groups}\n`),
      changed("repeat: 3", "repeat: 9007199254740991"),
    ];
    for (const text of hostile) expect(faultsOf(text).length, text.slice(0, 20)).toBeGreaterThan(0);
    for (const none of [undefined, null, 3, {}, []]) expect(readJob(none).ok).toBe(false);
    expect(({} as Record<string, unknown>)["thrum"]).toBeUndefined();
  });

  it("echoes what it refuses without its control characters", () => {
    const faults = faultsOf(changed("endOneOn: left", 'endOneOn: "\\e[31mleft\\a"')).join("\n");
    expect(faults).toContain("[31mleft");
    expect(faults).not.toMatch(/\p{Cc}(?<!\n)/u);
  });

  it("has its faults told only if they are faults", () => {
    for (const none of [undefined, null, 3, {}]) expect(() => faultText(none as never)).toThrow(QuantityError);
  });
});
