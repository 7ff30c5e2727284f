import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isUnit } from "../../engine/quantity/index.js";
import * as direct from "../direct-counts.js";
import * as indirect from "../indirect-counts.js";
import { ambiguous, SPELLINGS, systems } from "./count-names.js";
import { countSystemFrom, countSystemReading } from "./count-system-from.js";

describe("the name of a count system", () => {
  it.each([
    ["cotton", indirect.cottonCount],
    ["Ne", indirect.cottonCount],
    [" Nm ", indirect.metricCount],
    ["tex", direct.tex],
    ["den", direct.denier],
    ["yd/lb", indirect.yardsPerPound],
    ["Galashiels  cut", indirect.galashielsCut],
    ["alloa of 240", indirect.alloaOf240],
    ["old denier", direct.oldEnglishDenier],
    ["lb/spyndle", direct.juteCount],
    ["woollen cut", indirect.woollenCut],
    ["Dewsbury", indirect.yardsPerOunce],
    ["grains per 20 yards", direct.grainsPer20Yards],
  ])("%j is read", (name, system) => {
    expect(countSystemFrom(name)).toBe(system);
  });

  it.each([
    ["denier", "oldEnglishDenier (3 oz to 832000 yd)"],
    ["lea", "linenCount (300 yd to 1 lb)"],
    ["Cuts", "galashielsCut (300 yd to 24 oz)"],
    ["skein", "yorkshireSkein (1536 yd to 6 lb)"],
    ["grain", "grainsPer120Yards (1 gr to 120 yd)"],
    ["hank", "worstedCount (560 yd to 1 lb)"],
    ["spindle", "juteCount (1 lb to 14400 yd)"],
    ["Alloa", "alloaOf480 (480 yd to 1 lb)"],
    ["asbestos", "britishAsbestosCount (50 yd to 1 lb)"],
    ["silk", "dramSilk (1 dr to 1000 yd)"],
  ])("%j means two things and is refused with what it may mean", (name, candidate) => {
    const found = countSystemReading(name);
    expect(found.ok ? "read" : found.faults[0].code).toBe("ambiguous");
    expect(found.ok ? "" : found.faults[0].remedy).toContain(candidate);
  });

  it.each(["", "furlong", "20 tex", "toString", "constructor", "x".repeat(61), 20, null, undefined])(
    "%j is refused as none",
    (name) => {
      const found = countSystemReading(name as never);
      expect(found.ok ? "read" : found.faults[0].code).toMatch(/^(unknown-unit|too-long|wrong-kind|missing)$/u);
    },
  );

  it("is known for every system there is", () => {
    expect(new Set(systems())).toEqual(new Set([...Object.values(direct), ...Object.values(indirect)]));
  });

  it("of every system is read by its own name, unless that means another system too", () => {
    for (const system of systems()) {
      expect(isUnit(system)).toBe(true);
      if (Object.hasOwn(ambiguous(), system.name)) continue;
      expect(countSystemFrom(system.name)).toBe(system);
    }
  });

  it("is spelt in ways that lead to one system, never to two", () => {
    const known = new Set(systems().map(({ name }) => name));
    const spellings = Object.entries(SPELLINGS).flatMap(([name, texts]) => {
      expect(known).toContain(name);
      return texts.map((text) => [text, name] as const);
    });
    expect(new Set(spellings.map(([text]) => text)).size).toBe(spellings.length);
    for (const [text, name] of spellings) expect(countSystemFrom(text).name).toBe(name);
    for (const meanings of Object.values(ambiguous())) expect(meanings.length).toBeGreaterThan(1);
  });

  it("in any text gives a system or a typed refusal", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), (text) => {
        const found = countSystemReading(text);
        if (!found.ok) expect(found.faults[0].code).toMatch(/^(unknown-unit|unreadable|ambiguous)$/u);
      }),
    );
  });
});
