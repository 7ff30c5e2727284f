import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { faultText } from "./fault.js";
import { readJob } from "./read-job.js";

const napkins = readFileSync("examples/hall-napkins/job.yaml", "utf8");

function faultsOf(text: string): readonly string[] {
  const reading = readJob(text);
  return reading.ok ? [] : reading.faults.map(faultText);
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
    const asJson = `{"thrum": 1, "title": "x"}`;
    expect(faultsOf(asJson).length).toBeGreaterThan(5);
  });

  it("tells all its faults at once, each with its line, path and remedy", () => {
    const faulty = napkins
      .replace("ends: 368", "ends: 368.5")
      .replace("finishedLength: 16 in", "finishedLength: 16")
      .replace("8 % lost", "8 %")
      .replace("hemEachEnd", "hemEachSide")
      .replace("endOneOn: left", "endOneOn: top");
    const faults = faultsOf(faulty);
    expect(faults).toContain("line 11, oldWarp.ends: expected a whole number of ends, 1 or more, received 368.5.");
    expect(faults).toContain('line 8, loom.endOneOn: expected "left" or "right", received "top".');
    expect(faults.some((text) => text.includes("pieces.hemEachSide") && text.includes("Was hemEachEnd meant?"))).toBe(
      true,
    );
    expect(faults.some((text) => text.includes("pieces.hemEachEnd") && text.includes("received nothing"))).toBe(true);
    expect(faults.some((text) => text.includes("pieces.finishedLength") && text.includes("27 in"))).toBe(true);
    expect(faults.some((text) => text.includes("newWarp.takeUp") && text.includes("9 % lost"))).toBe(true);
    expect(faults).toHaveLength(6);
  });

  it.each([
    ["a negative length", "finishedLength: 16 in", "finishedLength: -16 in"],
    ["a length of nothing", "finishedLength: 16 in", "finishedLength: 0 in"],
    ["a length with two readings", "finishedLength: 16 in", "finishedLength: 1/2 16 in"],
    ["a mass for a length", "finishedLength: 16 in", "finishedLength: 16 oz"],
    ["a number that is none", "ends: 368", "ends: .nan"],
    ["a number without end", "ends: 368", "ends: .inf"],
    ["a text for a number", "ends: 368", 'ends: "368"'],
    ["a loss of all there is", "8 % lost", "100 % lost"],
    ["a stripe without ends", "colour: madder, ends: 40", "colour: madder, ends: 0"],
    ["a colour without a yarn", "colour: madder, ends: 40", "colour: saffron, ends: 40"],
    ["no stripes at all", "repeat: 3", "repeat: 0"],
    [
      "a yarn that no stripe uses",
      "  madder: {",
      "  scarlet: { count: 1, system: tex, plies: 1, counted: single, onHand: 0 g, package: 1 g }\n  madder: {",
    ],
    ["a chain too short for its stripe", "mostEndsInChain: 140", "mostEndsInChain: 100"],
    ["more threads together than a chain has ends", "threadsTogether: 2", "threadsTogether: 400"],
    ["a weaver who turns away from the knots", "weaverFaces: back of the loom", "weaverFaces: front of the loom"],
    ["another version of the form", "thrum: 1", "thrum: 2"],
    ["an unknown key", "title:", "colour: red\ntitle:"],
    ["a key written twice", "title:", "thrum: 1\ntitle:"],
    ["an alias", "note: Madder", "note: *x # Madder"],
  ])("with %s is refused", (_, from, to) => {
    expect(faultsOf(changed(from, to)).length).toBeGreaterThan(0);
  });

  it("that is no job, empty, endless or hostile is answered with faults, never with a crash", () => {
    const hostile = [
      "",
      "[]",
      "3",
      "{",
      "a: b: c",
      "\u0000",
      "x".repeat(200_000),
      "__proto__: { thrum: 1 }",
      "&a [*a]",
      "!!js x",
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
});
